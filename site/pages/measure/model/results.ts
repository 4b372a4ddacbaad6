import { handlingCarOf, orUndefined, Refusal } from "@rollbook/lib";
import type { Asked, Work } from "./asked.js";
import { turned } from "./circle-change.js";
import { circleFound } from "./circle-result.js";
import { linesOf, meanAt, toolOf } from "./input.js";
import { linkage } from "./link-results.js";
import { fourScales, raisedAxle } from "./mass-results.js";
import type { Result } from "./result.js";
import { ride } from "./ride-result.js";
import { type MeasurementId, pressures } from "./spec.js";
import { motionRatio, rideRate, sillWeight } from "./spring-results.js";
import { print, tyreRate } from "./tyre-results.js";

/** What the readings of a form come to. */
export function resultOf(asked: Asked): Result {
  try {
    return works[asked.form.spec.id](asked);
  } catch (error) {
    if (error instanceof Refusal) return { refused: error };
    throw error;
  }
}

const circle: Work = ({ car, sheet, form }) => {
  const radius = meanAt(sheet, form, "radius", "radiusTape");
  if (radius === undefined) return { missing: ["radius"] };
  const rim = meanAt(sheet, form, "rimDiameter", "rimTape");
  const handling = orUndefined(() => turned(handlingCarOf(car), sheet));
  return circleFound({
    ...{ car, sheet, handling },
    circle: { radius, stopwatch: toolOf(sheet, form, "stopwatch") },
    rim: rim && { diameter: rim.value, tape: toolOf(sheet, form, "rimTape") },
    steady: linesOf(sheet, form),
    pressure: (end, when) => {
      const one = pressures.find((each) => each.end === end && each.when === when);
      return one && meanAt(sheet, form, one.key, "gauge")?.value;
    },
  });
};

const works: Readonly<Record<MeasurementId, Work>> = {
  "four-scales": fourScales,
  "raised-axle": raisedAxle,
  "ride-rate": rideRate,
  "sill-weight": sillWeight,
  "motion-ratio": motionRatio,
  linkage,
  "tyre-rate": tyreRate,
  "tyre-print": print,
  circle,
  ride,
};
