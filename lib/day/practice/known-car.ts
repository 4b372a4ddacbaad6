import { phaseNames } from "../../balance/phases.js";
import { standingCar } from "../../balance/standing-car.js";
import type { Car } from "../../car/car.js";
import { applyChange } from "../../change/apply.js";
import type { Change } from "../../change/change.js";
import { baselineOf, standingEffectOf } from "../../change/effect.js";
import { knownBaseline } from "../../change/known-baseline.js";
import { type Cell, cellsOf } from "../debrief/cells.js";
import type { PhaseShifts } from "../plan/sheet-row.js";
import type { VenueCorner } from "../plan/venue.js";

const cells = new WeakMap<Car, Map<string, readonly Cell[]>>();

const alone = (corner: VenueCorner) => ({ name: corner.name, corners: [corner] });

function knownCells(car: Car, corner: VenueCorner): readonly Cell[] {
  const ofCar = cells.get(car) ?? new Map<string, readonly Cell[]>();
  const key = JSON.stringify(corner);
  const known = ofCar.get(key) ?? cellsOf(standingCar(car), alone(corner));
  cells.set(car, ofCar.set(key, known));
  return known;
}

/** How far balance moved from the known car to another in each part of one corner, m/s², above 0 towards the front. */
export function shiftsIn(corner: VenueCorner, known: Car, after: Car): PhaseShifts {
  const was = knownCells(known, corner);
  const is = cellsOf(standingCar(after, known), alone(corner), was);
  const shift = (i: number) => (is[i]?.balance ?? 0) - (was[i]?.balance ?? 0);
  return Object.fromEntries(phaseNames.map((name, i) => [name, shift(i)])) as PhaseShifts;
}

/** A car with a change made, and whether that breaks a limit that held before. */
export interface Made {
  readonly car: Car;
  readonly broken: boolean;
}

/**
 * A car with a change made and the seats put back where they can do it.
 *
 * @param known - the car that the learner knows: its file gave the heights
 * @throws Refusal when the change cannot be made
 */
export function made(change: Change, car: Car, known: Car): Made {
  applyChange(car, change); // refuses before anything is worked out
  const before = car === known ? knownBaseline(known) : baselineOf(standingCar(car, known));
  const effect = standingEffectOf(change, before);
  const { car: after, broken } = effect.putBack ?? effect;
  return { car: after, broken: broken.length > 0 };
}

/** The car of `made` alone. */
export const carWith = (change: Change, car: Car, known: Car): Car => made(change, car, known).car;
