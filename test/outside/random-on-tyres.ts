import { mirrorFrontView } from "../../lib/linkage/front-view.js";
import { frontViewAxle } from "../../lib/linkage/front-view-axle.js";
import { frontViewSwingArm } from "../../lib/linkage/instant-centre.js";
import { rollCentre } from "../../lib/linkage/roll-centre.js";
import type { AxleInRoll, CarInRoll } from "../../lib/load/car-in-roll.js";
import type { ArmsOnTyres, AxleOnTyres, BeamOnTyres, CarOnTyres } from "./car-on-tyres.js";

type Between = (min: number, max: number) => number;

/** What kind of cars to make. */
export interface Kind {
  /** m of the centre of gravity of the body, least and greatest */
  readonly height: readonly [number, number];
  /** share of cars with a beam in front, and of those with one behind */
  readonly beams: readonly [number, number];
}

/** Low to tall cars of a club's paddock, arms or beams, no two alike. */
export const clubCars: Kind = { height: [0.38, 0.6], beams: [0.15, 0.4] };

/** The same up to the height of a van. */
export const lowAndTall: Kind = { height: [0.4, 0.9], beams: [0.15, 0.4] };

/** A random car on tyres of 150 to 300 N/mm and springs of 1.3 to 2.4 Hz. */
export function randomCarOnTyres(between: Between, { height, beams }: Kind): CarOnTyres {
  const sprungMass = between(700, 1300);
  const sprungFrontShare = between(0.45, 0.58);
  const axle = (share: number, beam: number) => {
    const massOnWheel = (sprungMass * share) / 2;
    return between(0, 1) < beam
      ? randomBeam(between, massOnWheel)
      : randomArms(between, massOnWheel);
  };
  return {
    wheelbase: between(2.2, 2.8),
    sprungMass,
    sprungHeight: between(...height),
    sprungFrontShare,
    front: axle(sprungFrontShare, beams[0]),
    rear: axle(1 - sprungFrontShare, beams[1]),
  };
}

const frequency = (between: Between) => 2 * Math.PI * between(1.3, 2.4); // rad/s

function onTyres(between: Between) {
  return {
    track: between(1.35, 1.65),
    tyreStiffness: between(150e3, 300e3),
    rightShare: between(0.5, 0.65),
    unsprungHeight: 0.3,
  };
}

function randomArms(between: Between, massOnWheel: number): ArmsOnTyres {
  const wheels = onTyres(between);
  const [y, z] = [wheels.track / 2 - 0.05, between(0.15, 0.2)];
  return {
    ...wheels,
    kind: "arms",
    unsprungMass: between(50, 110),
    linkage: {
      kind: "double wishbone",
      upperInner: { y: y - between(0.25, 0.35), z: 0.42 - between(0, 0.045) },
      upperOuter: { y, z: 0.42 },
      lowerInner: { y: y - between(0.3, 0.4), z: z + between(-0.01, 0.02) },
      lowerOuter: { y, z },
      wheelCentre: { y: wheels.track / 2, z: 0.3 },
      contactPatch: { y: wheels.track / 2, z: 0 },
    },
    wheelRate: frequency(between) ** 2 * massOnWheel,
    barRollStiffness: between(0, 16e3),
    seats: { left: 0, right: 0 },
  };
}

function randomBeam(between: Between, massOnWheel: number): BeamOnTyres {
  const springs = 0.5 * frequency(between) ** 2 * massOnWheel * between(0.9, 1.2) ** 2;
  return {
    ...onTyres(between),
    kind: "beam",
    unsprungMass: between(70, 130),
    rollStiffness: springs + between(0, 8e3),
    rollCentreHeight: between(0.1, 0.35),
  };
}

/** The same car as the library sees it: roll centres and swing arms drawn, stiffnesses in roll. */
export function inRoll(car: CarOnTyres): CarInRoll {
  const { sprungMass, sprungHeight, sprungFrontShare } = car;
  const [front, rear] = [axleInRoll(car.front), axleInRoll(car.rear)];
  return { sprungMass, sprungHeight, sprungFrontShare, front, rear };
}

function axleInRoll(axle: AxleOnTyres): AxleInRoll {
  const { track, tyreStiffness, unsprungMass, unsprungHeight } = axle;
  const wheels = { track, unsprungMass, unsprungHeight };
  const tyres = { tyreRollStiffness: 0.5 * tyreStiffness * track ** 2 };
  if (axle.kind === "beam") {
    const { rollStiffness, rollCentreHeight } = axle;
    return { ...wheels, ...tyres, rollStiffness, rollCentreHeight };
  }
  const { linkage, wheelRate, barRollStiffness } = axle;
  return {
    ...wheels,
    ...tyres,
    rollStiffness: 0.5 * wheelRate * track ** 2 + barRollStiffness,
    rollCentreHeight: rollCentre(linkage, mirrorFrontView(linkage)).height,
    ownForceShare: track / 2 / frontViewSwingArm(linkage),
    independent: true,
    wheelRate,
    rollCentreMigration: migration(linkage),
  };
}

/** m of roll centre height for each m that both wheels rise. */
function migration(linkage: ArmsOnTyres["linkage"]): number {
  const height = (heave: number) => frontViewAxle(linkage, { heave }).rollCentre.height;
  return (height(-0.001) - height(0.001)) / 0.002;
}
