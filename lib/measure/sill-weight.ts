import type { Car } from "../car/car.js";
import { Refusal } from "../refusal.js";
import { restOf } from "../statics/rest.js";
import { takenByLeaning } from "../statics/springs-of-car.js";
import { GRAVITY } from "../units.js";
import { curveThrough } from "./curve.js";
import { inQuadrature, type Measured } from "./measured.js";

/** A weight on one sill, and how far the body leaned. */
export interface SillStep {
  /** kg beyond the car as it stood first */
  readonly added: number;
  /** rad that the body leaned to the weight's side */
  readonly lean: Measured;
}

/** How stiff a car is in roll, standing. */
export interface RollStanding {
  /** N·m of the weight for each rad that the body leans, its own weight leaning with it */
  readonly apparent: Measured;
  /** N·m/rad of springs, bars and tyres: what leaning takes off put back */
  readonly stiffness: Measured;
  /** N·m/rad that leaning takes off */
  readonly leaning: number;
  readonly byChance: number;
}

/**
 * Roll stiffness of the whole car between body and road, from weight on one sill and the lean of the
 * body.
 *
 * The body's own weight moves sideways as it leans and helps the weight: that is put back to reach
 * what springs, bars and tyres hold, a fifth of it counting as doubt.
 *
 * @param arm - m of the weight from the middle of the car
 * @throws Refusal for no weight, or where the body did not lean
 */
export function rollStiffnessBySill(
  car: Car,
  arm: Measured,
  steps: readonly SillStep[],
): RollStanding {
  const first = Math.min(...steps.map(({ lean }) => lean.spread));
  const readings = [
    { at: 0, read: { value: 0, spread: first } },
    ...steps.map(({ added, lean }) => ({ at: added * GRAVITY, read: lean })),
  ];
  const { found, byChance } = curveThrough(readings, 1);
  const [, leanPerForce = { value: 0, spread: 0 }] = found;
  if (!(leanPerForce.value > 2 * leanPerForce.spread))
    throw new Refusal("not-determined", "The body did not lean by more than its readings are off.");
  const value = arm.value / leanPerForce.value;
  const share = inQuadrature(arm.spread / arm.value, leanPerForce.spread / leanPerForce.value);
  const apparent = { value, spread: value * share };
  const leaning = takenByLeaning(car);
  const spread = inQuadrature(apparent.spread, LEANING_DOUBT * leaning);
  return { apparent, leaning, stiffness: { value: value + leaning, spread }, byChance };
}

const LEANING_DOUBT = 0.2; // of the leaning: its height is seldom known better

/** What the model says of the same: N·m for each rad that the body leans under weight on one sill. */
export function apparentRollStiffnessOf(car: Car): number {
  const { body } = car;
  const arm = -1e-3; // m by which the body is off: a weight on the right side
  const weighed = { ...car, body: { ...body, leftOfCentre: body.leftOfCentre + arm } };
  const lean = restOf(weighed, car).roll - restOf(car).roll;
  return (-arm * body.mass * GRAVITY) / lean;
}
