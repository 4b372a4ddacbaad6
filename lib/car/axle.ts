import type { Sides } from "../load/wheels.js";
import { Refusal } from "../refusal.js";
import { antiRollBarRate } from "../spring/bar.js";
import { rideRate, wheelRate } from "../spring/rates.js";
import {
  axleRollStiffness,
  type RollSprings,
  rollStiffnessOfBar,
} from "../spring/roll-stiffness.js";
import type { AntiRollBar, Axle } from "./car.js";
import { tyreCoefficientsOf, tyreOf } from "./tyres.js";

/** Whether a beam carries both wheels: its springs have a spacing of their own. */
export function isBeamAxle({ spring }: Axle): boolean {
  return spring.spacing !== undefined;
}

/**
 * The mean of left and right.
 *
 * @example
 * meanOf({ left: 1, right: 3 }) // → 2
 */
export function meanOf({ left, right }: Sides<number>): number {
  return (left + right) / 2;
}

/** Rate of a bar in the position it is in, N/m for each metre that its ends move apart. */
export function barRateOf({ positions, position, tube }: AntiRollBar): number {
  const used = positions[position - 1];
  if (used === undefined)
    throw new Refusal(
      "no-bar-rate",
      `bar position is ${position} but must be a whole number from 1 to ${positions.length}.`,
    );
  if (used.rate !== undefined) return used.rate;
  if (used.armLength === undefined || tube === undefined)
    throw new Refusal(
      "no-bar-rate",
      `bar position ${position} must give a rate, or an arm length and a tube.`,
    );
  return antiRollBarRate({ ...tube, armLength: used.armLength });
}

/**
 * Roll stiffness that the bar adds to its axle, N·m/rad; 0 without a bar.
 *
 * @example
 * barRollStiffnessOf(demoCar.front) // → 16422.9, by hand: 22 000·(0.6·1.44)²
 */
export function barRollStiffnessOf({ bar, track }: Axle): number {
  if (bar === undefined) return 0;
  return rollStiffnessOfBar({ barRate: barRateOf(bar), motionRatio: bar.motionRatio, track });
}

/**
 * Stiffness of the spring as the wheel feels it, N/m.
 *
 * @example
 * wheelRateOf(demoCar.front) // → 25350, by hand: 60 000·0.65²
 */
export function wheelRateOf({ spring }: Axle): number {
  return wheelRate(spring.rate, spring.motionRatio);
}

/**
 * Vertical stiffness of one tyre at the mean pressure of the axle and a load in N, N/m.
 *
 * @example
 * tyreStiffnessOf(demoCar.front) // → 215000, what the club tyre is given at 3 kN and 200 kPa
 */
export function tyreStiffnessOf(
  axle: Axle,
  load = tyreCoefficientsOf(axle).FNOMIN, // where none is given: the load it was made for
): number {
  return tyreOf(axle).verticalStiffness({ load, pressure: meanOf(axle.tyre.pressure) });
}

/**
 * Spring and tyre one on the other, N/m at each wheel.
 *
 * @example
 * rideRateOf(demoCar.front) // → 22676.3, by hand: 25 350 and 215 000 N/m in series
 */
export function rideRateOf(axle: Axle): number {
  return rideRate(wheelRateOf(axle), tyreStiffnessOf(axle));
}

/**
 * What the axle holds against roll with, its tyres at a load in N.
 *
 * @example
 * rollSpringsOf(demoCar.front).wheelRate // → 25350, by hand: 60 000·0.65²
 */
export function rollSpringsOf(axle: Axle, load?: number): RollSprings {
  return {
    wheelRate: wheelRateOf(axle),
    barRollStiffness: barRollStiffnessOf(axle),
    track: axle.track,
    tyreStiffness: tyreStiffnessOf(axle, load),
    springSpacing: axle.spring.spacing ?? axle.track,
  };
}

/**
 * Roll stiffness between body and road, N·m/rad: springs and bar on top of the tyres at a load in N.
 * For show: what a car does in roll is the business of `rollEquilibrium`.
 *
 * @example
 * rollStiffnessOf(demoCar.front) // → 35839.6, by hand: 42 705.8 and ½·215 000·1.44² in series
 */
export function rollStiffnessOf(axle: Axle, load?: number): number {
  return axleRollStiffness(rollSpringsOf(axle, load));
}
