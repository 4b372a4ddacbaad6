import { phaseNames } from "../../balance/phases.js";
import { standingCar } from "../../balance/standing-car.js";
import type { Car } from "../../car/car.js";
import { differenceOf } from "../../change/behaviour.js";
import type { Change } from "../../change/change.js";
import { type Baseline, baselineOf, effectOf } from "../../change/effect.js";
import { newlyOnStops } from "../../change/on-stops.js";
import { tradesOf } from "../../change/trade.js";
import type { Wheels } from "../../load/wheels.js";
import { Refusal } from "../../refusal.js";
import { type Cell, cellsOf, shiftsOf } from "../debrief/cells.js";
import { canonical } from "../log/canonical.js";
import { differenceOfSetUps } from "./difference.js";
import { cycleMinutes, minutesFor, type StageMinutes, usualMinutes } from "./minutes.js";
import type { Plan, PlanStep } from "./plan.js";
import type { PhaseShifts, SheetRow } from "./sheet-row.js";
import { venueSpeed } from "./venue.js";
import { warningsOf } from "./warnings.js";

/** What changes between two runs, before it is put on the sheet. */
interface Turn {
  readonly car: Car;
  readonly putBackTurns?: Wheels<number>;
  readonly refused?: Refusal;
}

/**
 * The plan worked out: what to do, when, what balance should do, and what to beware of.
 *
 * @param look - of `lookerFor`, kept where plans of the same day are worked out again and again
 * @throws Refusal when the car of the plan cannot stand on its springs
 * @example
 * const plan = { car: demoCar, venue: exampleVenue, minutes: 60, steps: [{ kind: "baseline" }] };
 * sheetOf(plan)[0].minutes.drive // → 8, as usual
 */
export function sheetOf(plan: Plan, look: Looker = lookerFor(plan)): SheetRow[] {
  const rows: SheetRow[] = [];
  for (const step of plan.steps) rows.push(rowOf(plan, step, rows, look));
  return rows;
}

/** What a car does at the venue. */
export interface Look {
  readonly baseline: Baseline;
  readonly cells: readonly Cell[];
}

export type Looker = (car: Car) => Look;

/** Looks at each car of a day once: most runs share theirs with another. */
export function lookerFor({ car: measured, venue }: Pick<Plan, "car" | "venue">): Looker {
  const seen = new Map<string, Look>();
  const speed = venueSpeed(venue);
  return (car) => {
    const key = canonical(car);
    const known = seen.get(key);
    if (known !== undefined) return known;
    const [similar] = seen.values();
    const standing = standingCar(car, measured);
    const look = {
      baseline: baselineOf(standing, speed, similar?.baseline.corners),
      cells: cellsOf(standing, venue, similar?.cells),
    };
    seen.set(key, look);
    return look;
  };
}

function rowOf(plan: Plan, step: PlanStep, before: readonly SheetRow[], look: Looker): SheetRow {
  const last = before.at(-1);
  const from = plan.filed?.[before.length - 1] ?? last?.car ?? plan.car;
  const turn = turnOf(plan, step, look(from).baseline);
  const toDo = differenceOfSetUps(from, turn.car).changes;
  const minutes = minutesOf(plan, step, toDo);
  const { swap = 0 } = plan;
  const rounds = plan.rounds?.[before.length] ?? roundsOf(plan);
  const shifts = last === undefined ? undefined : shiftsBetween(look(from), look(turn.car));
  const row = {
    step,
    run: before.length + 1,
    stood: from,
    startsAt: last === undefined ? 0 : last.startsAt + last.lasts,
    minutes,
    ...{ rounds, swap, lasts: cycleMinutes(minutes, rounds, swap) },
    ...turn,
    toDo,
    cells: shifts?.cells ?? [],
    ...(shifts && { phases: shifts.phases, moved: shifts.moved }),
    ...standingOf(look(turn.car).baseline, look(from).baseline),
  };
  return { ...row, warnings: warningsOf(row, plan) };
}

/** How the car of a run stands at its limit, and what of that is new. */
function standingOf(now: Baseline, before: Baseline) {
  const { margins, tips, nearTipping, eased } = now;
  const trades = tradesOf(before.behaviour, now.behaviour, [...before.tips, ...tips]);
  const newOnStops = newlyOnStops(now.onStops, before.onStops);
  return { margins, tips, nearTipping, eased, trades, onStops: newOnStops };
}

function turnOf({ car }: Plan, step: PlanStep, before: Baseline): Turn {
  if (step.kind !== "change") return { car: step.kind === "no change" ? before.car : car };
  try {
    const effect = effectOf(step.change, before);
    if (step.putBack === "nothing" || effect.putBack === undefined) return { car: effect.car };
    return { car: effect.putBack.car, putBackTurns: effect.putBack.turns };
  } catch (error) {
    if (error instanceof Refusal) return { car: before.car, refused: error };
    throw error;
  }
}

function shiftsBetween(before: Look, after: Look) {
  const { phases, figures } = differenceOf(after.baseline.behaviour, before.baseline.behaviour);
  const shifts = phaseNames.map((name) => [name, phases[name].understeerMargin]);
  return {
    phases: Object.fromEntries(shifts) as PhaseShifts,
    cells: shiftsOf(before.cells, after.cells),
    moved: figures,
  };
}

function minutesOf({ usual }: Plan, step: PlanStep, toDo: readonly Change[]): StageMinutes {
  const own = { ...usualMinutes, ...usual };
  const making = usual?.change ?? Math.max(usualMinutes.change, minutesFor(toDo));
  return { ...own, change: toDo.length === 0 ? 0 : making, ...step.minutes };
}

/** How often all cars go out in one run. */
export function roundsOf({ drivers = [], cars = 1 }: Plan): number {
  return Math.max(1, Math.ceil(drivers.length / cars));
}
