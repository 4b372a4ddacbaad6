import type { EventEntry, Log, MeasurementEntry } from "./log.js";
import { nowStandingFor, standing } from "./standing.js";

/** What is measured, by its code in an entry. */
export const measurable = {
  /** s, a clean lap of the circle */
  circleLap: { what: "circle-lap", quantity: "time" },
  /** m from the middle of the circle to the middle between the wheel tracks */
  circleRadius: { what: "circle-radius", quantity: "length" },
  /** rad/(m/s²), with its spread */
  rollGradient: { what: "roll-gradient", quantity: "rollGradient" },
} as const;

/** What was measured on a day and counts, by time. */
export const measuredOn = (log: Log, event: Pick<EventEntry, "id">): MeasurementEntry[] =>
  standing(log, "measurement").filter(
    ({ day }) => day === event.id || nowStandingFor(log, "event", day)?.id === event.id,
  );

/** The values of one code in an entry. */
export const valuesOf = (
  { measurements }: MeasurementEntry,
  { what }: (typeof measurable)[keyof typeof measurable],
): number[] => measurements.filter((one) => one.what === what).map(({ value }) => value);
