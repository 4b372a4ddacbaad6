import { Refusal } from "../../refusal.js";
import type { QuestionFacts } from "./question.js";

/** Why a car cannot be asked about whose answers come out too much alike. */
export const answersAlike = (): Refusal =>
  new Refusal("does-not-suit", "on it the model does not tell the four answers clearly apart.");

/**
 * Finds the right answer of a question.
 *
 * @returns its place among the claims
 * @throws Refusal unless the model bears out one claim alone, the one that was meant to be right
 */
export function rightAnswer({ claims }: QuestionFacts): number {
  const all = Object.values(claims);
  const answer = all.findIndex(({ isSo }) => isSo);
  const alone = all.filter(({ isSo }) => isSo).length === 1;
  if (!alone || all[answer]?.idea !== undefined) throw answersAlike();
  return answer;
}
