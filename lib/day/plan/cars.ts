import type { Car } from "../../car/car.js";
import { cycleMinutes, type StageMinutes, stages } from "./minutes.js";
import type { Plan, PlanStep } from "./plan.js";
import { type Looker, lookerFor, sheetOf } from "./sheet.js";
import type { SheetRow } from "./sheet-row.js";
import { tooLate } from "./warnings.js";

/** A car of a day that is not like the first, with runs of its own. */
export interface OtherCarPlan {
  /** 2 is the second car of the day. */
  readonly carNumber: number;
  readonly car: Car;
  readonly steps: readonly PlanStep[];
  /** Minutes for a change of this car. */
  readonly changeMinutes?: number;
}

/** A day with all its cars: the plan is that of the first, and of all that are like it. */
export interface DayPlan extends Plan {
  readonly others?: readonly OtherCarPlan[];
}

/** One car of the plan, and what is done to it run by run. */
export interface CarPlan {
  /** 1 is the first car, and all that are like it. */
  readonly car: number;
  readonly plan: Plan;
}

/** One car of the plan with its runs worked out. */
export interface CarSheet extends CarPlan {
  readonly rows: readonly SheetRow[];
}

/** What each car of a day does, run by run. */
interface RunsOfCars {
  readonly steps: readonly PlanStep[];
  readonly others?: readonly { readonly steps: readonly PlanStep[] }[];
}

/** Runs of a day: as many as the car with the most of them has. */
export const runsOfDay = ({ steps, others = [] }: RunsOfCars): number =>
  Math.max(steps.length, ...others.map((other) => other.steps.length));

/** The plan of each car; one that has fewer runs than another is left as it is in the last ones. */
export function carPlansOf(day: DayPlan): CarPlan[] {
  const { others = [], ...first } = day;
  const runs = runsOfDay(day);
  const own = others.map(({ carNumber, car, steps, changeMinutes }) => {
    const { filed: _, usual, ...same } = first;
    const { change: _change, ...rest } = usual ?? {};
    const minutes = { ...rest, ...(changeMinutes !== undefined && { change: changeMinutes }) };
    return { car: carNumber, plan: { ...same, car, usual: minutes, steps: upTo(runs, steps) } };
  });
  return [{ car: 1, plan: { ...first, steps: upTo(runs, first.steps) } }, ...own];
}

const upTo = (runs: number, steps: readonly PlanStep[]): PlanStep[] => [
  ...steps,
  ...Array.from({ length: runs - steps.length }, () => ({ kind: "no change" as const })),
];

/** What a car is looked at with, kept where days are worked out again and again. */
export type Lookers = (plan: CarPlan) => Looker;

/**
 * Every car of a day worked out. They go out together, so that each stage of a run takes as long as
 * the car needs that takes longest.
 *
 * @throws Refusal when a car cannot stand on its springs
 */
export function sheetsOf(
  plans: readonly CarPlan[],
  lookers: Lookers = ({ plan }) => lookerFor(plan),
): CarSheet[] {
  const sheets = plans.map((one) => ({ ...one, rows: sheetOf(one.plan, lookers(one)) }));
  const [first] = sheets;
  if (first === undefined || sheets.length === 1) return sheets;
  const times = together(sheets.map(({ rows }) => rows));
  return sheets.map((sheet) => ({
    ...sheet,
    rows: sheet.rows.map((row, i) => withTimes(row, times[i], sheet.plan)),
  }));
}

type Times = Pick<SheetRow, "startsAt" | "minutes" | "lasts">;

function together(sheets: readonly (readonly SheetRow[])[]): Times[] {
  const times: Times[] = [];
  for (const [i, { rounds, swap }] of (sheets[0] ?? []).entries()) {
    const rows = sheets.flatMap((sheet) => sheet[i] ?? []);
    const minutes = Object.fromEntries(
      stages.map((stage) => [stage, Math.max(...rows.map((row) => row.minutes[stage]))]),
    ) as unknown as StageMinutes;
    const { startsAt = 0, lasts = 0 } = times.at(-1) ?? {};
    const lasting = cycleMinutes(minutes, rounds, swap);
    times.push({ startsAt: startsAt + lasts, minutes, lasts: lasting });
  }
  return times;
}

function withTimes(row: SheetRow, times: Times | undefined, plan: Plan): SheetRow {
  if (times === undefined) return row;
  const others = row.warnings.filter(({ code }) => code !== "too-late");
  return { ...row, ...times, warnings: [...others, ...tooLate(times, plan)] };
}

/** When a day is over, minutes after its start; 0 of one without runs. */
export function endOfRows(rows: readonly Pick<SheetRow, "startsAt" | "lasts">[]): number {
  const last = rows.at(-1);
  return last === undefined ? 0 : last.startsAt + last.lasts;
}

/**
 * How much of a car is still as in another one that it was copied from, 0–1 of the numbers and words
 * in its file, name and notes apart.
 */
export function shareStillAs(car: Car, copied: Car): number {
  const [own, other] = [leavesOf(car), leavesOf(copied)];
  const same = [...own].filter(([path, value]) => other.get(path) === value).length;
  return own.size === 0 ? 0 : same / own.size;
}

function leavesOf(part: unknown, path = ""): Map<string, unknown> {
  if (typeof part !== "object" || part === null) return new Map([[path, part]]);
  const fields = Object.entries(part).filter(([name]) => !/^(name|notes?)$/.test(name));
  return new Map(fields.flatMap(([name, value]) => [...leavesOf(value, `${path}.${name}`)]));
}
