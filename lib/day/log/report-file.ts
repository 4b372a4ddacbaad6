import { phaseNames } from "../../balance/phases.js";
import { count, group, optional, type ShapeOf, text } from "../../car/file/shape.js";
import { validatorOf } from "../../car/file/validate.js";
import {
  comparisons,
  confidences,
  driverInputs,
  GREATEST_BALANCE,
  grades,
  howOften,
  type Report,
  speedClasses,
} from "./report.js";

/** A report, field by field. */
export const reportShape: ShapeOf<Report> = group("What a driver reports", {
  corner: optional(text("In which corner")),
  phase: optional(text("In which part of the corner", phaseNames)),
  speedClass: optional(text("How fast the corner is", speedClasses)),
  input: optional(text("What the driver was doing", driverInputs)),
  grade: optional(text("How the road runs", grades)),
  balance: optional(count("Above 0: the front slides first", -GREATEST_BALANCE, GREATEST_BALANCE)),
  howOften: optional(text("How often", howOften)),
  againstLastRun: optional(text("Against the driver's last run", comparisons)),
  confidence: optional(text("How sure the driver is", confidences)),
  words: optional(text("In the driver's words")),
});

/** What is wrong with a report: one sentence for each fault, with field, value and what is allowed. */
export const faultsOfReport: (value: unknown) => string[] = validatorOf(reportShape);
