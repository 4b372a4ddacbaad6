import {
  type Change,
  isEndChange,
  LEAST_FELT_SHIFT,
  movesBrakesRearwards,
  phaseNames,
  type SheetRow,
} from "@rollbook/lib";
import type { Draft } from "../day/draft.js";
import { stepsIn } from "../plan/steps.js";
import { words } from "../words.js";

const { safety: said } = words;

/** What to beware of while hands are at the car: what these levers ask for, then what any work does. */
export function safetyLines(day: Pick<Draft, "car" | "leastFelt">, row: SheetRow): string[] {
  const levers = [...new Set(row.toDo.map(({ lever }) => lever))];
  return [
    ...(movesBrakesRearwards(row, day.car) ? [said.brakesRearwards] : []),
    ...new Set(levers.flatMap((lever): readonly string[] => said.levers[lever])),
    ...(row.toDo.some(isOnBothSides) ? [said.alike] : []),
    ...size(day, row),
    ...[said.stands, said.check, said.first, said.stop, said.rules],
  ];
}

const isOnBothSides = (change: Change): boolean => isEndChange(change) && change.side === undefined;

/** Whether the step is the smallest, and why not. */
function size({ car, leastFelt }: Pick<Draft, "car" | "leastFelt">, row: SheetRow): string[] {
  const { step, phases } = row;
  if (step.kind !== "change") return [];
  const steps = Math.abs(stepsIn(step.change, car));
  if (steps <= 1) return [said.smallest];
  const most = Math.max(0, ...phaseNames.map((name) => Math.abs(phases?.[name] ?? 0)));
  const ofOne = most / steps; // as good as proportional over a few steps
  const say = ofOne < (leastFelt ?? LEAST_FELT_SHIFT) ? said.more : said.mayDo;
  return [say(words.sheets.step(steps))];
}
