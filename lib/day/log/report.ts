import type { PhaseName } from "../../balance/phases.js";

/** How fast a corner is taken, as drivers speak of it. */
export const speedClasses = ["slow", "medium", "fast"] as const;
/** What the driver was doing when it happened. */
export const driverInputs = [
  "braking",
  "releasing the brake",
  "steering",
  "steady",
  "lifting off",
  "throttle",
] as const;
/** How the road runs, in the direction of travel. */
export const grades = ["uphill", "level", "downhill"] as const;
/** How often it happened in the run. */
export const howOften = ["once", "sometimes", "most laps", "every lap"] as const;
/** Against the driver's last run. */
export const comparisons = ["better", "same", "worse", "cannot tell"] as const;
/** How sure the driver is. */
export const confidences = ["a guess", "fairly sure", "certain"] as const;

export type SpeedClass = (typeof speedClasses)[number];
export type DriverInput = (typeof driverInputs)[number];
export type Grade = (typeof grades)[number];
export type HowOften = (typeof howOften)[number];
export type Comparison = (typeof comparisons)[number];
export type Confidence = (typeof confidences)[number];

/** Ends of the scale of balance that a driver files. */
export const GREATEST_BALANCE = 3;

/**
 * What a driver says about one place of the lap: where, when, doing what, and how the car behaves.
 *
 * Nothing has to be there: a report is filed as it was said, and `whatIsMissing` asks for the rest.
 */
export interface Report {
  /** Name of the corner at the venue. */
  readonly corner?: string;
  readonly phase?: PhaseName;
  readonly speedClass?: SpeedClass;
  readonly input?: DriverInput;
  readonly grade?: Grade;
  /**
   * −3 to +3, whole: above 0 the front slides first, below 0 the rear does, 0 neither.
   * 1 can be felt, 2 is clear, 3 cannot be driven around – common practice, no source.
   */
  readonly balance?: number;
  readonly howOften?: HowOften;
  readonly againstLastRun?: Comparison;
  readonly confidence?: Confidence;
  readonly words?: string;
}

/** A report that says where, when, doing what, and what happened. */
export type CompleteReport = Report & Required<Pick<Report, NeededField>>;

/** What a report cannot do without. */
export const neededFields = ["corner", "phase", "input", "balance"] as const;
export type NeededField = (typeof neededFields)[number];

/**
 * Whether a report says where, when, doing what, and what happened.
 *
 * @example
 * isComplete({ balance: 2 }) // → false, it says neither where nor when
 */
export function isComplete(report: Report): report is CompleteReport {
  return neededFields.every((field) => report[field] !== undefined);
}
