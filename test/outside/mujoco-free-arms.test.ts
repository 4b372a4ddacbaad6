import { beforeAll, describe, expect, it } from "vitest";
import { mirrorFrontView } from "../../lib/linkage/front-view.js";
import { frontViewSwingArm } from "../../lib/linkage/instant-centre.js";
import { rollCentre } from "../../lib/linkage/roll-centre.js";
import type { CarInRoll } from "../../lib/load/car-in-roll.js";
import { distributeLoadTransfer } from "../../lib/load/distribution.js";
import { type ArmedAxle, type ArmedCar, armedTransfers } from "./free-arms-car.js";
import { type Mechanics, startMechanics } from "./mechanics.js";
import { randomNumbers } from "./random-numbers.js";

const between = randomNumbers(20260711);

/** Arms of a club car on springs of 1.6 to 2.4 Hz; light wheels, so that only the arms decide. */
function randomAxle(massOnWheel: number): ArmedAxle {
  const track = between(1.35, 1.65);
  const [y, z] = [track / 2 - 0.05, between(0.15, 0.2)];
  return {
    linkage: {
      kind: "double wishbone",
      upperInner: { y: y - between(0.25, 0.35), z: 0.42 - between(0, 0.025) },
      upperOuter: { y: y - 0.05, z: 0.42 },
      lowerInner: { y: y - between(0.3, 0.4), z: z + between(0, 0.02) },
      lowerOuter: { y, z },
      wheelCentre: { y: track / 2, z: 0.3 },
      contactPatch: { y: track / 2, z: 0 },
    },
    wheelRate: (2 * Math.PI * between(1.6, 2.4)) ** 2 * massOnWheel,
    barRollStiffness: between(2e3, 16e3),
    unsprungMass: 1,
  };
}

function randomCar(): ArmedCar {
  const sprungMass = between(700, 1300);
  const sprungFrontShare = between(0.45, 0.58);
  return {
    wheelbase: between(2.2, 2.8),
    sprungMass,
    sprungHeight: between(0.38, 0.55),
    sprungFrontShare,
    front: randomAxle((sprungMass * sprungFrontShare) / 2),
    rear: randomAxle((sprungMass * (1 - sprungFrontShare)) / 2),
  };
}

/** The same car as the library sees it: roll centres and swing arms drawn, stiffnesses in roll. */
function inRoll(car: ArmedCar): CarInRoll {
  const axle = ({ linkage, wheelRate, barRollStiffness, unsprungMass }: ArmedAxle) => {
    const track = 2 * linkage.contactPatch.y;
    return {
      track,
      rollStiffness: 0.5 * wheelRate * track ** 2 + barRollStiffness,
      rollCentreHeight: rollCentre(linkage, mirrorFrontView(linkage)).height,
      unsprungMass,
      unsprungHeight: linkage.wheelCentre.z,
      ownForceShare: track / 2 / frontViewSwingArm(linkage),
      independent: true,
    };
  };
  const { sprungMass, sprungHeight, sprungFrontShare } = car;
  return {
    sprungMass,
    sprungHeight,
    sprungFrontShare,
    front: axle(car.front),
    rear: axle(car.rear),
  };
}

const withWheels = (car: ArmedCar, unsprungMass: number): ArmedCar => ({
  ...car,
  front: { ...car.front, unsprungMass },
  rear: { ...car.rear, unsprungMass },
});

let mechanics: Mechanics;
beforeAll(async () => {
  mechanics = await startMechanics();
});

describe("independent arms on stiff tyres, without a roll centre, in a general engine", () => {
  const runs = Array.from({ length: 20 }, () => {
    const car = randomCar();
    return { car, lateralAcceleration: between(0.2, 0.6) * 9.80665 };
  });

  const apart = (car: ArmedCar, lateralAcceleration: number) => {
    const engine = armedTransfers(mechanics, car, lateralAcceleration);
    const library = distributeLoadTransfer(inRoll(car), lateralAcceleration);
    const total = engine.front + engine.rear;
    const [front, rear] = [library.front.total - engine.front, library.rear.total - engine.rear];
    return Math.max(Math.abs(front), Math.abs(rear)) / total;
  };

  it("split the transfer between the axles as the library has it, within 0.15 % of it", () => {
    for (const { car, lateralAcceleration } of runs)
      expect(apart(car, lateralAcceleration)).toBeLessThan(1.5e-3);
  }, 120_000);

  it("do so under real wheels too, whose own side force goes in part through the springs", () => {
    for (const { car, lateralAcceleration } of runs.slice(0, 8))
      expect(apart(withWheels(car, between(50, 110)), lateralAcceleration)).toBeLessThan(1.5e-3);
  }, 120_000);
});
