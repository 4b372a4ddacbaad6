import { requireInRange } from "../check.js";
import { GRAVITY } from "../units.js";
import { type Axles, eachAxle } from "./wheels.js";

/** What the distribution needs to know of one axle. */
export interface AxleInRoll {
  /** m between the tyre centres */
  readonly track: number;
  /** N·m/rad between body and wheels: springs and bar */
  readonly rollStiffness: number;
  /** N·m/rad of both tyres between wheels and road; Infinity when left out: stiff tyres */
  readonly tyreRollStiffness?: number;
  /**
   * share of the side force of the wheels themselves that stays at this axle, the rest rolls the
   * body: 1 when left out, as on a beam; half the track over the swing arm on independent links,
   * below 0 where the wheels lean out more than the body
   */
  readonly ownForceShare?: number;
  /**
   * wheels on links of their own, whose springs press along the leaning body; else a beam, pinned
   * to the body at its roll centre
   */
  readonly independent?: boolean;
  /** N/m at each wheel, without tyre; Infinity when left out: no springs for side force to lift */
  readonly wheelRate?: number;
  /** m above the ground */
  readonly rollCentreHeight: number;
  /** m of roll centre height for each m of travel of both wheels; −1 when left out: fixed to the body */
  readonly rollCentreMigration?: number;
  /** kg of both wheels and what moves with them */
  readonly unsprungMass: number;
  /** m above the ground */
  readonly unsprungHeight: number;
}

/** A car in a steady turn. */
export interface CarInRoll<Axle extends AxleInRoll = AxleInRoll> extends Axles<Axle> {
  /** kg */
  readonly sprungMass: number;
  /** m above the ground, of the sprung mass */
  readonly sprungHeight: number;
  /** share of the sprung mass that the front axle carries, 0–1 */
  readonly sprungFrontShare: number;
  /** N·m/rad of the chassis in torsion between the axles; left out: a stiff chassis */
  readonly torsionStiffness?: number;
  /** N moved from the front axle to the rear one by driving (above 0) or braking; 0 when left out */
  readonly longitudinalTransfer?: number;
}

/** Sprung mass over each axle, kg. */
export function sprungMassOnAxles(car: CarInRoll): Axles<number> {
  const front = car.sprungMass * car.sprungFrontShare;
  return { front, rear: car.sprungMass - front };
}

/**
 * Load on both tyres of each axle, N; never below zero.
 *
 * @example
 * axleLoads(carInRoll(demoCar)).front // → 5505.2, by hand: 561.375·9.80665
 */
export function axleLoads(car: CarInRoll): Axles<number> {
  const sprung = sprungMassOnAxles(car);
  const atRest = eachAxle(car, (axle, end) => (sprung[end] + axle.unsprungMass) * GRAVITY);
  const moved = car.longitudinalTransfer ?? 0;
  const within = Math.min(atRest.front, Math.max(-atRest.rear, moved));
  return { front: atRest.front - within, rear: atRest.rear + within };
}

/** Refuses a car that makes no sense, in one sentence. */
export function requireCarInRoll(car: CarInRoll): void {
  requireInRange("sprung mass", car.sprungMass, 0, 1e5, "kg");
  requireInRange("sprung height", car.sprungHeight, 0, 10, "m");
  requireInRange("sprung front share", car.sprungFrontShare, 0, 1);
  requireInRange("longitudinal transfer", car.longitudinalTransfer ?? 0, -1e6, 1e6, "N");
  if (car.torsionStiffness !== undefined && car.torsionStiffness !== Infinity)
    requireInRange("torsion stiffness", car.torsionStiffness, 1, 1e12, "N·m/rad");
  eachAxle(car, (axle, end) => {
    requireInRange(`${end} track`, axle.track, 0.1, 10, "m");
    requireInRange(`${end} roll stiffness`, axle.rollStiffness, 0, 1e9, "N·m/rad");
    requireTyresInRoll(axle, end);
    requireInRange(`${end} roll centre height`, axle.rollCentreHeight, -2, 2, "m");
    requireInRange(`${end} unsprung mass`, axle.unsprungMass, 0, 1e4, "kg");
    requireInRange(`${end} unsprung height`, axle.unsprungHeight, 0, 2, "m");
  });
}

function requireTyresInRoll({ tyreRollStiffness, ownForceShare }: AxleInRoll, end: string): void {
  if (tyreRollStiffness !== undefined && tyreRollStiffness !== Infinity)
    requireInRange(`${end} roll stiffness of the tyres`, tyreRollStiffness, 1, 1e12, "N·m/rad");
  requireInRange(`${end} share of the wheels' own side force`, ownForceShare ?? 1, -10, 10);
}
