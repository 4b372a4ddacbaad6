import type { Car } from "../car/car.js";
import { tyreCoefficientsOf } from "../car/tyres.js";
import { leanCostsPush } from "../tyre/magic-formula-61-longitudinal.js";
import type { End } from "./change.js";

/** Ends whose tyres' data say nothing of what lean costs in braking and traction. */
export function endsWithoutLeanCost(car: Car): End[] {
  return (["front", "rear"] as const).filter((end) => !leanCostsPush(tyreCoefficientsOf(car[end])));
}
