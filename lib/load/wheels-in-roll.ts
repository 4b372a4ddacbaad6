/** How the links of an axle guide its wheels. */
export interface WheelGuide {
  /** m */
  readonly track: number;
  /** wheels that lean with the body, not upright on a beam */
  readonly independent: boolean;
  /** rad of camber for each m of bump travel */
  readonly camberGain: number;
  /** rad of toe-in for each m of bump travel */
  readonly toeGain: number;
  /** rad that a beam turns to the left for each rad of roll on it, right side down */
  readonly rollSteer: number;
}

/**
 * How far both wheels lean to the left in roll, rad.
 *
 * The body takes independent wheels along, camber gain takes them back; a beam rolls on its tyres
 * only, and its links cannot lean its wheels.
 *
 * @param body - rad of the body against the road, above 0 right side down
 * @param suspension - rad of the same between body and wheels
 */
export function leanInRoll(axle: WheelGuide, body: number, suspension: number): number {
  if (!axle.independent) return suspension - body;
  return -body - axle.camberGain * (axle.track / 2) * suspension;
}

/**
 * How far both wheels turn to the left in roll, rad.
 *
 * Of independent wheels the outer one toes in with its bump, the inner one out with its droop; a
 * beam turns as a whole.
 *
 * @param suspension - rad of the body against the wheels, above 0 right side down
 */
export function turnInRoll(axle: WheelGuide, suspension: number): number {
  return (axle.independent ? axle.toeGain * (axle.track / 2) : axle.rollSteer) * suspension;
}
