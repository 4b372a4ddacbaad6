/** What a tyre is under. */
export interface TyreState {
  /** Vertical load, N, upward on the tyre; at or below zero the wheel is off the ground. */
  readonly load: number;
  /** Inflation pressure above atmosphere, Pa; left out: the tyre's nominal pressure. */
  readonly pressure?: number;
  /**
   * Lean of the wheel to the road, rad, positive when its top leans to the left. Left out: upright.
   *
   * In a left turn a positive lean is into the turn and helps; it is what "negative camber" gives
   * the outer wheel. ISO 8855 calls this inclination and counts it the other way.
   */
  readonly inclination?: number;
}

/** What a tyre is under, with the angle at which it is made to run. */
export interface TyreSlipState extends TyreState {
  /**
   * Angle from the way the tyre travels to the way it points, rad; positive makes a positive force.
   * ISO 8855 counts it the other way.
   */
  readonly slipAngle: number;
}

/** Least and greatest value of one quantity, in SI. */
export interface ValueRange {
  readonly minimum: number;
  readonly maximum: number;
}

/** Where a tyre's figures may be believed. */
export interface TyreRange {
  readonly load: ValueRange;
  readonly pressure: ValueRange;
  readonly inclination: ValueRange;
}

/**
 * One tyre, as seen by an axle or a car. Forces in N, positive to the left (ISO 8855 y).
 *
 * States outside the valid range are answered with the nearest valid state, never with NaN;
 * `outsideValidRange` says when that happens.
 */
export interface Tyre {
  readonly name: string;
  /** Pressure taken when none is given, Pa. */
  readonly nominalPressure: number;
  readonly valid: TyreRange;
  /** Side force at a slip angle, N. */
  sideForce(state: TyreSlipState): number;
  /** Greatest side force to the left at any slip angle, N. */
  peakSideForce(state: TyreState): number;
  /** Slip angle of the greatest side force, rad; 0 for an unloaded tyre. */
  peakSlipAngle(state: TyreState): number;
  /** Rise of side force with slip angle where the force of an upright tyre is zero, N/rad. */
  corneringStiffness(state: TyreState): number;
  /** Rise of load with vertical deflection at the load of the state, N/m; above zero in the air. */
  verticalStiffness(state: TyreState): number;
  /**
   * How far the load squashes the tyre, m; 0 for no load. The one thing not held inside the range
   * of loads: more load always squashes more.
   */
  deflection(state: TyreState): number;
  /** Load of a tyre that is squashed by so many m, N: `deflection` turned round. */
  loadAt(deflection: number, state?: Omit<TyreState, "load">): number;
}
