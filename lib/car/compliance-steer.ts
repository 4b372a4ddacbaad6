import type { Axles } from "../load/wheels.js";
import { fromHandy } from "../units.js";
import type { Axle } from "./car.js";

/** rad/N where a file says nothing: a steered axle and one that is not – common practice, no source. */
const usualComplianceSteer: Axles<number> = {
  front: fromHandy("complianceSteer", 0.2), // °/kN
  rear: fromHandy("complianceSteer", 0.02), // °/kN
};

/** How far an axle's wheels give way to its side force, rad/N; above 0 out of the turn. */
export function complianceSteerOf({ geometry }: Axle, end: "front" | "rear"): number {
  return geometry.complianceSteer ?? usualComplianceSteer[end];
}
