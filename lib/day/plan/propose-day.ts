import { carPlansOf, type DayPlan, endOfRows, sheetsOf } from "./cars.js";
import { SHORTEST_STINT } from "./late.js";
import { cycleMinutes, type StageMinutes } from "./minutes.js";
import { isEnough, proposePlan } from "./propose.js";
import type { SheetRow } from "./sheet-row.js";

/** What a proposal takes for granted and the one who leads the day can change. */
export type Assumption = "stint" | "talk" | "change" | "stint and talk";

/** An assumption with which three changes and a return do not fit, and with what they would. */
export interface Forbidding {
  readonly assumption: Assumption;
  /** Minutes that would do, in place of the day's. */
  readonly usual: Partial<StageMinutes>;
}

/** A proposed day; where it tests little, what forbids more. */
export interface ProposedDay {
  readonly day: DayPlan;
  readonly forbids: readonly Forbidding[];
}

/** Long enough for any proposal, minutes. */
const UNHURRIED = 10_000;

/**
 * A sequence of runs for each car of a day, in the time there is.
 *
 * @throws Refusal when a car cannot stand on its springs
 */
export function proposeDay(day: DayPlan): ProposedDay {
  const found = inTime(eachProposed(day), day.minutes);
  if (carPlansOf(found).every(({ plan }) => isEnough(plan.steps)))
    return { day: found, forbids: [] };
  const rows = rowsOf(cutTo(eachProposed({ ...day, minutes: UNHURRIED }), LEAST_RUNS));
  return { day: found, forbids: forbidding(rows, day.minutes) };
}

const LEAST_RUNS = 5; // baseline, change, return, change, change

function eachProposed(day: DayPlan): DayPlan {
  const plans = carPlansOf({ ...day, steps: [], others: day.others ?? [] });
  const [first, ...others] = plans.map(({ car, plan }) => ({
    car,
    steps: withoutPause(proposePlan(plan).steps, day.minutes),
  }));
  return {
    ...day,
    steps: first?.steps ?? [],
    ...(day.others && {
      others: day.others.map((other) => ({
        ...other,
        steps: others.find(({ car }) => car === other.carNumber)?.steps ?? [],
      })),
    }),
  };
}

/** What is asked of a day without hurry is the shortest plan that tests enough. */
const withoutPause = (steps: DayPlan["steps"], minutes: number): DayPlan["steps"] =>
  minutes < UNHURRIED ? steps : steps.filter(({ kind }) => kind !== "no change");

const rowsOf = (day: DayPlan): readonly SheetRow[] => sheetsOf(carPlansOf(day))[0]?.rows ?? [];

const cutTo = (day: DayPlan, runs: number): DayPlan => ({
  ...day,
  steps: day.steps.slice(0, runs),
  ...(day.others && {
    others: day.others.map((other) => ({ ...other, steps: other.steps.slice(0, runs) })),
  }),
});

/** Cars that go out together may need longer than each by itself: then the last runs are left out. */
function inTime(day: DayPlan, minutes: number): DayPlan {
  if (day.others === undefined || day.others.length === 0) return day;
  const rows = rowsOf(day);
  let runs = rows.length;
  while (runs > 0 && endOfRows(rows.slice(0, runs)) > minutes) runs -= 1;
  return cutTo(day, runs);
}

/** Each assumption that alone would do with other minutes; else stint and talk together. */
function forbidding(rows: readonly SheetRow[], minutes: number): Forbidding[] {
  const fits = (usual: Partial<StageMinutes>) => lasting(rows, usual) <= minutes;
  const most = (stage: keyof StageMinutes) => Math.max(0, ...rows.map((row) => row.minutes[stage]));
  const largest = (from: number, least: number, of: (value: number) => Partial<StageMinutes>) => {
    for (let value = Math.ceil(from) - 1; value >= least; value--)
      if (fits(of(value))) return of(value);
    return undefined;
  };
  const talked = Math.max(most("teach"), most("debrief"));
  const talk = (value: number) => ({
    teach: Math.min(value, most("teach")),
    debrief: Math.min(value, most("debrief")),
  });
  const alone = [
    { assumption: "stint", usual: largest(most("drive"), SHORTEST_STINT, (drive) => ({ drive })) },
    { assumption: "talk", usual: largest(talked, 0, talk) },
    { assumption: "change", usual: largest(most("change"), 1, (change) => ({ change })) },
  ] as const;
  const found = alone.flatMap(({ assumption, usual }) => (usual ? [{ assumption, usual }] : []));
  if (found.length > 0) return found;
  const both = largest(most("drive"), SHORTEST_STINT, (drive) => ({ drive, ...talk(0) }));
  return both ? [{ assumption: "stint and talk", usual: both }] : [];
}

const lasting = (rows: readonly SheetRow[], usual: Partial<StageMinutes>): number =>
  rows.reduce((sum, { minutes, rounds, swap }) => {
    const change = minutes.change === 0 ? 0 : (usual.change ?? minutes.change);
    return sum + cycleMinutes({ ...minutes, ...usual, change }, rounds, swap);
  }, 0);
