import type { PhaseName } from "../../balance/phases.js";
import { USUAL_SPEED } from "../../change/figures.js";
import { MARGIN_PER_POINT } from "../debrief/feel.js";
import type {
  CompleteReport,
  Confidence,
  Grade,
  HowOften,
  Report,
  SpeedClass,
} from "../log/report.js";
import { cornerNamed, LEAST_GRADE, type Venue, type VenueCorner } from "../plan/venue.js";

/** What a report asks of the car in one place. */
export interface Target {
  /** Which report, 0 is the first. */
  readonly report: number;
  readonly phase: PhaseName;
  /** The corner; both ways when the venue does not know it. */
  readonly corners: readonly VenueCorner[];
  /** m/s² by which balance should move, above 0 towards the front; 0: it is well as it is */
  readonly want: number;
  /** 0–1, by how often and how sure */
  readonly weight: number;
}

/** Speed that stands for a class where the corner is not known, m/s – common practice, no source. */
const speedOf: Readonly<Record<SpeedClass, number>> = {
  slow: 14,
  medium: USUAL_SPEED,
  fast: 36,
};

const gradeOf: Readonly<Record<Grade, number>> = {
  uphill: 2 * LEAST_GRADE,
  level: 0,
  downhill: -2 * LEAST_GRADE,
};

const STAND_IN_ACCELERATION = 9; // m/s², near the limit of a road tyre; only sets a radius

/** How much a report weighs by how often it happened, and by how sure the driver is – common practice, no source. */
const oftenWeight: Readonly<Record<HowOften, number>> = {
  once: 0.25,
  sometimes: 0.5,
  "most laps": 0.8,
  "every lap": 1,
};
const sureWeight: Readonly<Record<Confidence, number>> = {
  "a guess": 0.4,
  "fairly sure": 0.8,
  certain: 1,
};
const UNSAID = 0.6;

/**
 * What a complete report asks of the car.
 *
 * @example
 * const report = { corner: "Long Left", phase: "middle", input: "steady", balance: 2 };
 * targetOf(report, 0, exampleVenue).want // → -0.4, by hand: two points of 0.2 m/s² the other way
 */
export function targetOf(report: CompleteReport, index: number, venue?: Venue): Target {
  const { howOften, confidence } = report;
  const often = howOften === undefined ? UNSAID : oftenWeight[howOften];
  const sure = confidence === undefined ? UNSAID : sureWeight[confidence];
  return {
    report: index,
    phase: report.phase,
    corners: cornersOf(report, venue),
    want: 0 - report.balance * MARGIN_PER_POINT,
    weight: often * sure,
  };
}

function cornersOf(report: Report, venue: Venue | undefined): VenueCorner[] {
  const known = venue && cornerNamed(venue, report.corner);
  if (known !== undefined) return [known];
  const speed = report.speedClass === undefined ? USUAL_SPEED : speedOf[report.speedClass];
  return (["left", "right"] as const).map((direction) => ({
    name: `${report.corner ?? "a corner"} (${direction})`,
    direction,
    radius: speed ** 2 / STAND_IN_ACCELERATION,
    speed,
    grade: report.grade === undefined ? 0 : gradeOf[report.grade],
  }));
}
