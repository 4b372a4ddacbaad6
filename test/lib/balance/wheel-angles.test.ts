import { expect, test } from "vitest";
import type { HandlingAxle, HandlingCar } from "../../../lib/balance/handling-car.js";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { stanceInTurn } from "../../../lib/balance/stance-in-turn.js";
import type { Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { carFromJson } from "../../../lib/car/file/parse.js";
import { drive } from "../../../lib/transient/drive.js";
import { GRAVITY } from "../../../lib/units.js";
import { beam } from "../linkage/reference-corners.js";
import { momentlessTyre } from "./cars.js";
import { understeerGradientAt } from "./understeer-gradient-at.js";

const degrees = (angle: number) => (angle * 180) / Math.PI;

/** The demo car with a beam behind, the front ends of its trailing links higher by so much, m. */
function onBeam(raised: number): Car {
  const up = ({ body, axle }: typeof beam.leftLink) => ({
    axle,
    body: { ...body, z: body.z + raised },
  });
  const linkage = { ...beam, leftLink: up(beam.leftLink), rightLink: up(beam.rightLink) };
  const { car } = carFromJson({
    ...demoCar,
    rear: { ...demoCar.rear, spring: { ...demoCar.rear.spring, spacing: 1 }, linkage },
  });
  if (car === undefined) throw new Error("a beam under the demo car is a car");
  return car;
}

/** How far the body rolls on its beam for each m/s², rad. */
function rollOnBeam(car: HandlingCar, speed: number): number {
  const at = (ay: number) => stanceInTurn(car, { speed }, ay).rear.suspensionRoll;
  return at(1) - at(0);
}

test.each([0, 0.03, 0.06])(
  "trailing links %s m higher in front take what the rear steers off the understeer gradient",
  (raised) => {
    // In a steady turn each rad that the rear wheels turn outwards is a rad less of steering in
    // front: δ = L/R + K·ay + δr (common practice, no source). Slope of the roll axis: see the
    // tests of the linkage's geometry.
    const car = handlingCarOf(onBeam(raised));
    const straight = { ...car, rear: { ...car.rear, rollSteer: 0 } };
    const fast = { speed: 40 };
    const roll = rollOnBeam(car, 40);
    const rollSteer = -(0.44 + 16 * raised) / 8.12;
    const moved = rollSteer * roll;
    const [now, before] = [car, straight].map((one) => understeerGradientAt(one, fast) ?? NaN);
    expect(before).toBeGreaterThan(0);
    expect(((now ?? NaN) - (before ?? NaN)) / moved).toBeCloseTo(1, 1);
  },
);

test("a drive settles with that roll steer too", () => {
  // δ/r = (L + K·v²)/v, so a change of the gradient moves it by ΔK·v – Wong, ch. 5
  const [speed, steer] = [30, 0.002];
  const car = { ...handlingCarOf(onBeam(0.06)), dragFactor: 0 };
  const straight = { ...car, rear: { ...car.rear, rollSteer: 0 } };
  const perYaw = [car, straight].map(
    (one) =>
      steer / (drive(one, { speed, duration: 4, steer: () => steer }).at(-1)?.yawRate ?? NaN),
  );
  const moved = (-1.4 / 8.12) * rollOnBeam(car, speed) * speed;
  expect(((perYaw[0] ?? NaN) - (perYaw[1] ?? NaN)) / moved).toBeCloseTo(1, 1);
});

test("links along the car that rise steeply enough turn understeer into oversteer", () => {
  // links and bushes that do not give way, tyres without aligning moment: the roll steer alone
  const bare = (axle: HandlingAxle) => ({ ...axle, complianceSteer: 0, tyre: momentlessTyre });
  const gradients = [0, 0.03, 0.06].map((raised) => {
    const car = handlingCarOf(onBeam(raised));
    const stiff = { ...car, front: bare(car.front), rear: bare(car.rear) };
    return understeerGradientAt(stiff, { speed: 40 }) ?? NaN;
  });
  const [level = NaN, rising = NaN, steep = NaN] = gradients.map((one) => degrees(one) * GRAVITY);
  expect(level).toBeGreaterThan(0.1); // ° for each g
  expect(Math.abs(rising)).toBeLessThan(0.05);
  expect(steep).toBeLessThan(-0.15);
});
