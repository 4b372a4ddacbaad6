import { combined, orUndefined, predictedRollGradient } from "@rollbook/lib";
import { found, lines, oddLines, type Work } from "./asked.js";

/** Roll gradients of rides as one, each weighted by its spread. */
export const ride: Work = (asked) => {
  const rides = lines(asked);
  if (rides.length === 0) return { missing: asked.form.spec.columns.map(({ key }) => key) };
  const told = combined(rides.map(([value = 0, spread = 1]) => ({ value, spread })));
  const predicted = orUndefined(() => predictedRollGradient(asked.car));
  return {
    found: [
      found(
        "rollGradient",
        told,
        ["rollGradient", 2],
        predicted === undefined ? {} : { predicted },
      ),
    ],
    remarks: oddLines(told.byChance),
  };
};
