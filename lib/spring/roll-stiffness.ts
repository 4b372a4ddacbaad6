import { requireInRange } from "../check.js";
import { springsInSeries, wheelRate } from "./rates.js";

/**
 * Roll stiffness of two equal springs at the wheels, N·m/rad.
 *
 * @param rate - N/m at each wheel
 * @param track - m between them
 * @example
 * rollStiffnessOfPair(30e3, 1.5) // → 33750, by hand: ½·30 000·1.5²
 */
export function rollStiffnessOfPair(rate: number, track: number): number {
  requireInRange("rate", rate, 0, Infinity, "N/m");
  requireInRange("track", track, 0.1, 10, "m");
  return 0.5 * rate * track ** 2; // two forces k·φ·t/2 at arms t/2 – Milliken 1995, ch. 16
}

/**
 * Roll stiffness that an anti-roll bar adds to its axle, N·m/rad.
 *
 * @param bar - barRate (N/m of force at each end for each metre the ends move apart), motionRatio
 * (bar end travel over wheel travel), track (m)
 */
export function rollStiffnessOfBar(bar: {
  barRate: number;
  motionRatio: number;
  track: number;
}): number {
  requireInRange("track", bar.track, 0.1, 10, "m");
  return wheelRate(bar.barRate, bar.motionRatio) * bar.track ** 2; // ends apart by i·t·φ
}

/** The springs of one axle, as needed for its roll stiffness. */
export interface RollSprings {
  /** N/m at each wheel, without tyre */
  readonly wheelRate: number;
  /** N·m/rad that the bar adds; 0 for none */
  readonly barRollStiffness: number;
  /** m between the tyre centres */
  readonly track: number;
  /** N/m of each tyre; Infinity for rigid tyres */
  readonly tyreStiffness: number;
  /** m between the springs of a beam axle; the track when left out, as for independent wheels */
  readonly springSpacing?: number;
}

/**
 * Roll stiffness between body and wheels: springs and bar side by side, N·m/rad.
 *
 * @example
 * const axle = { wheelRate: 30e3, barRollStiffness: 10e3, track: 1.5, tyreStiffness: 200e3 };
 * suspensionRollStiffness(axle) // → 43750, by hand: ½·30 000·1.5² + 10 000
 */
export function suspensionRollStiffness(axle: RollSprings): number {
  const springs = rollStiffnessOfPair(axle.wheelRate, axle.springSpacing ?? axle.track);
  return springs + axle.barRollStiffness;
}

/**
 * Roll stiffness between body and road: the suspension on top of the tyres, N·m/rad.
 *
 * @example
 * axleRollStiffness(axle) // → 36627.9, by hand: 43 750 and ½·200 000·1.5² in series
 */
export function axleRollStiffness(axle: RollSprings): number {
  const { tyreStiffness, track } = axle;
  const tyres = tyreStiffness === Infinity ? Infinity : rollStiffnessOfPair(tyreStiffness, track);
  return springsInSeries(suspensionRollStiffness(axle), tyres);
}
