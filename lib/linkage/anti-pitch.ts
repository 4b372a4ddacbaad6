import { requireInRange } from "../check.js";

/** What decides how much of the longitudinal load transfer an axle passes through its links. */
export interface AntiPitch {
  /** Forward motion for each metre of rise, m/m: of the patch, or of the centre for shaft drive. */
  readonly forwardPerRise: number;
  /** Share of the braking or driving force that acts on this axle, 0 … 1. */
  readonly forceShare: number;
  /** m, 1 … 5. */
  readonly wheelbase: number;
  /** m, 0.1 … 2. */
  readonly centreOfGravityHeight: number;
  readonly end: "front" | "rear";
}

/**
 * Share of the longitudinal load transfer that the links of an axle carry, 1 = all of it.
 *
 * Front under braking: anti-dive. Rear under braking: anti-lift. Rear under power: anti-squat.
 * The springs see the rest. – Milliken 1995, ch. 17
 *
 * @throws Refusal naming the field outside its range
 */
export function antiPitchShare(axle: AntiPitch): number {
  const { end } = axle;
  const slope = requireInRange("forwardPerRise", axle.forwardPerRise, -2, 2, "m/m");
  const share = requireInRange("forceShare", axle.forceShare, 0, 1);
  const wheelbase = requireInRange("wheelbase", axle.wheelbase, 1, 5, "m");
  const height = requireInRange("centreOfGravityHeight", axle.centreOfGravityHeight, 0.1, 2, "m");
  return (share * (end === "front" ? slope : -slope) * wheelbase) / height;
}
