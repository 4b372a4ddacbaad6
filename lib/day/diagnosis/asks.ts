import type { PhaseName } from "../../balance/phases.js";
import { type DriverInput, type NeededField, neededFields, type Report } from "../log/report.js";
import { cornerNamed, type Venue } from "../plan/venue.js";

/** A question that must or should be answered before tools are taken up. */
export type Ask = {
  /** Which reports it is about, 0 is the first; none: the car. */
  readonly reports: readonly number[];
  /** Without an answer these reports are left out. */
  readonly needed: boolean;
} & AskedOf;

type AskedOf =
  /** Where, when, doing what, or what: a report cannot do without it. */
  | { readonly code: "not-said"; readonly field: NeededField }
  /** The venue does not know the corner, so its speed has to be asked. */
  | { readonly code: "corner-not-listed"; readonly field: "speedClass"; readonly corner: string }
  /** What the driver was doing is not done in that part of a corner. */
  | {
      readonly code: "input-or-phase";
      readonly field: "input";
      readonly phase: PhaseName;
      readonly input: DriverInput;
    }
  /** Two reports on one place point both ways: driving again is cheaper than guessing. */
  | { readonly code: "opposite-reports"; readonly corner: string; readonly phase?: PhaseName }
  /** No pressure can be ranked before it is known at which one the tyres grip best. */
  | { readonly code: "best-pressure" }
  /** Before pressures are touched: were hot ones measured, and is each where it should be? */
  | { readonly code: "hot-pressures" };

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
  const open = [...missing(report), ...speedAsk(report, venue), ...inputAsk(report)];
  return open.map((ask) => ({ reports: [index], needed: true, ...ask }));
}

const missing = (report: Report): AskedOf[] =>
  neededFields
    .filter((field) => report[field] === undefined)
    .map((field) => ({ code: "not-said", field }));

function speedAsk({ corner, speedClass }: Report, venue?: Venue): AskedOf[] {
  const known = venue !== undefined && cornerNamed(venue, corner) !== undefined;
  if (known || corner === undefined || speedClass !== undefined) return [];
  return [{ code: "corner-not-listed", field: "speedClass", corner }];
}

function inputAsk({ phase, input }: Report): AskedOf[] {
  if (phase === undefined || input === undefined || inputsIn[phase].includes(input)) return [];
  return [{ code: "input-or-phase", field: "input", phase, input }];
}

function contradictions(reports: readonly Report[]): Ask[] {
  return reports.flatMap((one, i) =>
    reports.flatMap((other, j): Ask[] => {
      const { corner, phase } = one;
      const samePlace = corner === other.corner && phase === other.phase;
      const bothWays = (one.balance ?? 0) * (other.balance ?? 0) < 0;
      if (j <= i || corner === undefined || !samePlace || !bothWays) return [];
      const place = { corner, ...(phase !== undefined && { phase }) };
      return [{ reports: [i, j], needed: true, code: "opposite-reports", ...place }];
    }),
  );
}
