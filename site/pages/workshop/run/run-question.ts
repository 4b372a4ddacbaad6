import { LEAST_FELT_SHIFT, type PhaseShifts, phaseNames } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { toDoInWords } from "../../../say/plan.js";
import type { Asked } from "../../../say/questions/asked.js";
import { carTitle } from "../day/car-names.js";
import { words } from "../words.js";
import { type AtHand, atHand, type CarAtHand } from "./state.js";

const { ballot: said } = words;

/** A question as it is put to a room. */
export type Put = Pick<Asked, "ask" | "choices" | "answer" | "instead">;

const keyOf = (run: number, car: number): string => `run ${run} car ${car}`;

/** Whether a key is that of a question about a run. */
export const isOfRun = (key: string): boolean => /^run \d/.test(key);

/** Cars of the run at hand on which something is changed, each with a question of its own. */
export function runQuestions(): { readonly key: string; readonly label: string }[] {
  const at = atHand.value;
  return (at?.cars ?? [])
    .filter(({ row }) => row.toDo.length > 0 && row.phases !== undefined)
    .map((one) => ({
      key: keyOf(one.row.run, one.car),
      label: said.thisRun(at ? whatIn(at, one) : ""),
    }));
}

/** The question of that key about the run at hand: the model knows the answer. */
export function runQuestion(key: string): Put | undefined {
  const at = atHand.value;
  const one = at?.cars.find(({ car, row }) => keyOf(row.run, car) === key && row.toDo.length > 0);
  if (at === undefined || one?.row.phases === undefined) return undefined;
  const ways = ["front", "nothing", "rear", "both"] as const;
  return {
    ask: said.ofThisRun(whatIn(at, one)),
    choices: ways.map((way) => ({ text: said.ways[way], because: said.because[way] })),
    answer: ways.indexOf(wayOf(one.row.phases, at.day.leastFelt)),
  };
}

function whatIn({ day }: AtHand, { car, row }: CarAtHand): string {
  const toDo = toDoInWords(row, reader).join("; ");
  const title = carTitle(day, car);
  return title === undefined ? toDo : `${title}: ${toDo}`;
}

function wayOf(phases: PhaseShifts, least = LEAST_FELT_SHIFT) {
  const felt = phaseNames.map((name) => phases[name]).filter((shift) => Math.abs(shift) >= least);
  const [front, rear] = [felt.some((shift) => shift > 0), felt.some((shift) => shift < 0)];
  if (front && rear) return "both";
  return front ? "front" : rear ? "rear" : "nothing";
}
