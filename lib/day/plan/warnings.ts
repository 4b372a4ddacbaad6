import { type PhaseName, phaseNames } from "../../balance/phases.js";
import { standingCar } from "../../balance/standing-car.js";
import type { Car } from "../../car/car.js";
import type { Change } from "../../change/change.js";
import { LEAST_FELT_SHIFT } from "../debrief/feel.js";
import type { Plan } from "./plan.js";
import type { PlanWarning, SheetRow } from "./sheet-row.js";
import { testedChanges } from "./single.js";

/** A row of the sheet before its warnings are known. */
type Row = Omit<SheetRow, "warnings">;

/** What to beware of in one run of a plan. */
export function warningsOf(row: Row, plan: Plan): PlanWarning[] {
  return [
    ...refused(row),
    ...tipsOver(row),
    ...tooSmall(row, plan.leastFelt ?? LEAST_FELT_SHIFT),
    ...brokenLimits(row),
    ...towardsTheRear(row, plan.leastFelt ?? LEAST_FELT_SHIFT),
    ...brakesToTheRear(row, plan.car),
    ...severalChanges(row, plan),
    ...order(row),
    ...tooLate(row, plan),
  ];
}

function refused({ refused: refusal }: Row): PlanWarning[] {
  return refusal === undefined ? [] : [{ code: "refused", refusal }];
}

/** Such a car is no car to look for the limit with, whatever is changed on it. */
function tipsOver({ tips }: Row): PlanWarning[] {
  return tips.length === 0 ? [] : [{ code: "tips-over", phases: tips }];
}

function tooSmall({ step, phases, refused, tips }: Row, least: number): PlanWarning[] {
  if (step.kind !== "change" || phases === undefined || refused !== undefined) return [];
  if (tips.length > 0) return []; // its margins there are no balance
  const most = Math.max(...phaseNames.map((name) => Math.abs(phases[name])));
  return most >= least ? [] : [{ code: "too-small", most, least }];
}

function brokenLimits({ step, margins }: Row): PlanWarning[] {
  const kept = step.kind === "change" && step.outsideClass === "kept";
  return margins
    .filter(({ margin }) => margin < 0)
    .map(({ value: _, ...limit }) => ({ code: "limit", ...limit, ...(kept && { kept }) }));
}

/** Said only where it may surprise: the rear comes earlier than in the run before. */
function towardsTheRear({ phases }: Row, least: number): PlanWarning[] {
  if (phases === undefined) return [];
  const where = phaseNames.filter((name: PhaseName) => phases[name] <= -least);
  return where.length === 0 ? [] : [{ code: "towards-the-rear", phases: where }];
}

/** Whether a change sends brake force rearwards. */
export const isBrakesRearwards = ({ lever, by }: Change): boolean =>
  lever === "brakeFrontShare" && by < 0;

/**
 * Whether what is done before a run sends brake force rearwards of where the car came with it; a
 * return to where it was does not.
 */
export function movesBrakesRearwards({ toDo, car }: Pick<Row, "toDo" | "car">, came: Car): boolean {
  return toDo.some(isBrakesRearwards) && car.brakeFrontShare < came.brakeFrontShare - 1e-6;
}

function brakesToTheRear(row: Row, came: Car): PlanWarning[] {
  return movesBrakesRearwards(row, came) ? [{ code: "brakes-rearwards" }] : [];
}

function severalChanges(row: Row, { car }: Plan): PlanWarning[] {
  if (row.run === 1) return [];
  const count = testedChanges(standingCar(row.stood, car), standingCar(row.car, car)).length;
  return count < 2 ? [] : [{ code: "several-changes", count }];
}

function order({ step, run }: Row): PlanWarning[] {
  return run === 1 && step.kind !== "baseline" ? [{ code: "no-baseline" }] : [];
}

/** Said where a run ends after the day is over. */
export function tooLate(
  { startsAt, lasts }: Pick<Row, "startsAt" | "lasts">,
  { minutes }: Pick<Plan, "minutes">,
): PlanWarning[] {
  const over = startsAt + lasts - minutes;
  return over <= 0 ? [] : [{ code: "too-late", minutes: Math.ceil(over) }];
}
