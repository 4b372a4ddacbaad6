import { type PhaseName, phaseNames } from "../../balance/phases.js";
import { standingCar } from "../../balance/standing-car.js";
import type { Car } from "../../car/car.js";
import type { Change } from "../../change/change.js";
import { parameters } from "../../parameters.js";
import { formatAlike } from "../../shown-range.js";
import type { Margin } from "../../statics/margins.js";
import type { UnitSystem } from "../../units.js";
import { LEAST_FELT_SHIFT } from "../debrief/feel.js";
import type { Plan } from "./plan.js";
import type { PlanWarning, SheetRow } from "./sheet-row.js";
import { testedChanges } from "./single.js";

/** A row of the sheet before its warnings are known. */
type Row = Omit<SheetRow, "warnings">;

/** What to beware of in one run of a plan. */
export function warningsOf(
  row: Row,
  plan: Plan,
  before: readonly SheetRow[],
  system: UnitSystem,
): PlanWarning[] {
  return [
    ...refused(row),
    ...tipsOver(row),
    ...tooSmall(row, plan.leastFelt ?? LEAST_FELT_SHIFT, system),
    ...brokenLimits(row.margins),
    ...towardsTheRear(row, plan.leastFelt ?? LEAST_FELT_SHIFT),
    ...brakesToTheRear(row, plan.car),
    ...severalChanges(row, plan, before.at(-1)),
    ...order(row),
    ...time(row, plan),
  ];
}

function refused({ refused: sentence }: Row): PlanWarning[] {
  return sentence === undefined ? [] : [{ kind: "refused", sentence }];
}

/** Such a car is no car to look for the limit with, whatever is changed on it. */
function tipsOver({ tips }: Row): PlanWarning[] {
  if (tips.length === 0) return [];
  const sentence = `At its limit this car tips over before its tyres let go (${tips.join(", ")}): nobody drives it near that, and no set-up for balance cures it.`;
  return [{ kind: "tips over", sentence }];
}

function tooSmall(
  { step, phases, refused, tips }: Row,
  least: number,
  system: UnitSystem,
): PlanWarning[] {
  if (step.kind !== "change" || phases === undefined || refused !== undefined) return [];
  if (tips.length > 0) return []; // its margins there are no balance
  const most = Math.max(...phaseNames.map((name) => Math.abs(phases[name])));
  if (most >= least) return [];
  const told = (shift: number) => formatAlike("acceleration", shift, 2, system);
  const sentence = `It moves balance by at most ${told(most)}, less than the ${told(least)} that is likely to be felt: make a larger change.`;
  return [{ kind: "too small to feel", sentence }];
}

function brokenLimits(margins: readonly Margin[]): PlanWarning[] {
  return margins
    .filter(({ margin }) => margin < 0)
    .map(({ parameter, where, kind }) => ({
      kind: "limit",
      sentence: `${parameters[parameter].name} ${where} is outside the class limit (${kind} allowed).`,
    }));
}

/** Said only where it may surprise: the rear comes earlier than in the run before. */
function towardsTheRear({ phases }: Row, least: number): PlanWarning[] {
  if (phases === undefined) return [];
  const where = phaseNames.filter((name: PhaseName) => phases[name] <= -least);
  if (where.length === 0) return [];
  const sentence = `The rear slides earlier than in the run before (${where.join(", ")}): first lap slowly.`;
  return [{ kind: "towards the rear", sentence }];
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
  if (!movesBrakesRearwards(row, came)) return [];
  const sentence =
    "It moves the brakes rearwards, and rear wheels that lock first turn a car round: never on a road car, on any car only by its maker's instructions, tried in a straight line first.";
  return [{ kind: "brakes rearwards", sentence }];
}

function severalChanges(row: Row, { car }: Plan, last: SheetRow | undefined): PlanWarning[] {
  if (last === undefined) return [];
  const tested = testedChanges(standingCar(last.car, car), standingCar(row.car, car));
  if (tested.length < 2) return [];
  const sentence = `${tested.length} things change at once: against the run before nobody can say which of them was felt.`;
  return [{ kind: "several changes", sentence }];
}

function order({ step, run }: Row): PlanWarning[] {
  if (run === 1 && step.kind !== "baseline")
    return [{ kind: "order", sentence: "The first run should be the car as it is: the baseline." }];
  return [];
}

function time({ startsAt, lasts }: Row, { minutes }: Plan): PlanWarning[] {
  const over = startsAt + lasts - minutes;
  if (over <= 0) return [];
  const sentence = `It ends ${Math.ceil(over)} minutes after the day is over.`;
  return [{ kind: "time", sentence }];
}
