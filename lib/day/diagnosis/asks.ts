import type { PhaseName } from "../../balance/phases.js";
import { whatIsMissing } from "../log/missing.js";
import type { DriverInput, Report } from "../log/report.js";
import { cornerNamed, type Venue } from "../plan/venue.js";

/** A question that must or should be answered before tools are taken up. */
export interface Ask {
  /** Which reports it is about, 0 is the first; none: the car. */
  readonly reports: readonly number[];
  readonly field?: keyof Report;
  readonly ask: string;
  /** Without an answer these reports are left out. */
  readonly needed: boolean;
}

/** What can be done in a part of a corner; another input there is worth a question. */
const inputsIn: Readonly<Record<PhaseName, readonly DriverInput[]>> = {
  "braking in": ["braking", "releasing the brake", "steering", "lifting off"],
  "turn-in": ["braking", "releasing the brake", "steering", "steady", "lifting off"],
  middle: ["steering", "steady", "lifting off", "throttle"],
  "power on": ["throttle", "steering", "steady", "lifting off"],
};

/** All questions that reports leave open. */
export function asksFor(reports: readonly Report[], venue?: Venue): Ask[] {
  return [...reports.flatMap((report, i) => asksOf(report, i, venue)), ...contradictions(reports)];
}

function asksOf(report: Report, index: number, venue?: Venue): Ask[] {
  const missing = whatIsMissing(report)
    .filter(({ needed }) => needed)
    .map(({ field, ask }): Ask => ({ reports: [index], field, ask, needed: true }));
  return [...missing, ...speedAsk(report, index, venue), ...inputAsk(report, index)];
}

function speedAsk({ corner, speedClass }: Report, index: number, venue?: Venue): Ask[] {
  const known = venue !== undefined && cornerNamed(venue, corner) !== undefined;
  if (known || corner === undefined || speedClass !== undefined) return [];
  const ask = `${corner} is not in the corner list: is it slow, medium or fast?`;
  return [{ reports: [index], field: "speedClass", ask, needed: true }];
}

function inputAsk({ phase, input }: Report, index: number): Ask[] {
  if (phase === undefined || input === undefined || inputsIn[phase].includes(input)) return [];
  const ask = `It was said of ${phase}, while ${input}: which of the two was it?`;
  return [{ reports: [index], field: "input", ask, needed: true }];
}

/** Reports on one place that point both ways: driving again is cheaper than guessing. */
function contradictions(reports: readonly Report[]): Ask[] {
  return reports.flatMap((one, i) =>
    reports.flatMap((other, j): Ask[] => {
      const samePlace = one.corner === other.corner && one.phase === other.phase;
      const bothWays = (one.balance ?? 0) * (other.balance ?? 0) < 0;
      if (j <= i || one.corner === undefined || !samePlace || !bothWays) return [];
      const ask = `Reports ${i + 1} and ${j + 1} say opposite things of ${one.corner}, ${one.phase}: drive it again, both doing the same, and ask before lap times are known.`;
      return [{ reports: [i, j], ask, needed: true }];
    }),
  );
}

/** Asked where no pressure can be ranked. */
export const bestPressureAsk: Ask = {
  reports: [],
  ask: "Which warm pressure do these tyres grip best at? Below it more air helps and above it less: until somebody has measured it and it is in the car's file, no change of pressure is ranked.",
  needed: false,
};

/** Asked before pressures are touched. */
export const pressureAsk: Ask = {
  reports: [],
  ask: "Were hot pressures measured, and is each where it should be? Until that is known, pressure comes last.",
  needed: false,
};
