import type { HandlingAxle } from "../../../lib/balance/handling-car.js";

/** The axle on wheels that do not give way, with tyres whose side force acts in the middle of the patch. */
export function withoutTrail(axle: HandlingAxle): HandlingAxle {
  const tyre = {
    ...axle.tyre,
    ...{ QDZ1: 0, QDZ2: 0, QDZ6: 0, QDZ7: 0, QDZ8: 0, QDZ9: 0, QDZ10: 0, QDZ11: 0 },
    ...{ SSZ1: 0, SSZ2: 0, SSZ3: 0, SSZ4: 0 },
  };
  return { ...axle, tyre, complianceSteer: 0 };
}
