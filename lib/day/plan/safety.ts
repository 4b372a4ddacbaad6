import { phaseNames } from "../../balance/phases.js";
import { type Change, isEndChange } from "../../change/change.js";
import { LEAST_FELT_SHIFT } from "../debrief/feel.js";
import { adjusterStepsIn } from "./edit-step.js";
import type { Plan } from "./plan.js";
import type { SheetRow } from "./sheet-row.js";
import { movesBrakesRearwards } from "./warnings.js";

/** Something to beware of while hands are at the car, which not every change asks for. */
export type SafetyFact =
  | { readonly code: "brakes-rearwards" | "alike" | "smallest-step" }
  | { readonly code: "lever"; readonly lever: Change["lever"] }
  /** More than one step of the adjuster; whether one of them would be felt. */
  | { readonly code: "more-steps"; readonly steps: number; readonly oneIsFelt: boolean };

/** What these changes ask for: brakes first, then each lever, then both sides and the size. */
export function safetyOf(day: Pick<Plan, "car" | "leastFelt">, row: SheetRow): SafetyFact[] {
  const levers = [...new Set(row.toDo.map(({ lever }) => lever))];
  const facts: SafetyFact[] = [
    ...(movesBrakesRearwards(row, day.car) ? [{ code: "brakes-rearwards" } as const] : []),
    ...levers.map((lever) => ({ code: "lever", lever }) as const),
    ...(row.toDo.some(isOnBothSides) ? [{ code: "alike" } as const] : []),
  ];
  const { step } = row;
  return step.kind === "change" ? [...facts, sizeOf(day, row, step.change)] : facts;
}

const isOnBothSides = (change: Change): boolean => isEndChange(change) && change.side === undefined;

/** Whether the step is the smallest, and whether that would do. */
function sizeOf(
  { car, leastFelt = LEAST_FELT_SHIFT }: Pick<Plan, "car" | "leastFelt">,
  { phases }: SheetRow,
  change: Change,
): SafetyFact {
  const steps = Math.abs(adjusterStepsIn(change, car));
  if (steps <= 1) return { code: "smallest-step" };
  const most = Math.max(0, ...phaseNames.map((name) => Math.abs(phases?.[name] ?? 0)));
  const ofOne = most / steps; // as good as proportional over a few steps
  return { code: "more-steps", steps, oneIsFelt: ofOne >= leastFelt };
}
