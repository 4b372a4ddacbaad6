import type { Given } from "./given.js";
import type { IdeaName } from "./ideas.js";
import { misconceptions } from "./misconceptions.js";
import type { QuestionForm } from "./question.js";
import { dueOn } from "./review.js";

/**
 * Which of the two questions of a misconception to ask next.
 *
 * The twins are for the check after the course; once that is done the two take turns.
 */
export function formFor(asked: IdeaName, answers: readonly Given[]): QuestionForm {
  const own = answers.filter((given) => given.asked === asked);
  if (!own.some(({ occasion }) => occasion === "after")) return "first";
  return own.at(-1)?.form === "first" ? "twin" : "first";
}

/** Misconceptions that chapters before this one have taught. */
export function taughtBefore(chapter: string): IdeaName[] {
  return misconceptions.filter((one) => one.chapter < chapter).map(({ idea }) => idea);
}

/** Misconceptions that this chapter teaches. */
export function taughtIn(chapter: string): IdeaName[] {
  return misconceptions.filter((one) => one.chapter === chapter).map(({ idea }) => idea);
}

/**
 * Two questions of a chapter to check oneself with while reading it: those not answered today, by the
 * lot of the day.
 */
export function checkFor(chapter: string, answers: readonly Given[], day: number): IdeaName[] {
  const answeredToday = answers.filter((given) => given.day === day).map(({ asked }) => asked);
  const open = taughtIn(chapter).filter((asked) => !answeredToday.includes(asked));
  return shuffled(open, `${chapter} ${day}`).slice(0, 2);
}

/**
 * Two questions from earlier chapters to warm up with: those due, then others by the lot of the day.
 *
 * @param chapter - the chapter to be read
 * @param day - today
 */
export function warmUpFor(chapter: string, answers: readonly Given[], day: number): IdeaName[] {
  const taught = taughtBefore(chapter);
  const due = dueOn(day, answers)
    .map(({ asked }) => asked)
    .filter((asked) => taught.includes(asked));
  const answeredToday = answers.filter((given) => given.day === day).map(({ asked }) => asked);
  const rest = taught.filter((asked) => !due.includes(asked) && !answeredToday.includes(asked));
  return [...due, ...shuffled(rest, `${chapter} ${day}`)].slice(0, 2);
}

/** The same order all day for the same seed. */
function shuffled<T>(items: readonly T[], seed: string): T[] {
  const lots = items.map((item, index) => ({ item, lot: hash(`${seed} ${index}`) }));
  return lots.sort((a, b) => a.lot - b.lot).map(({ item }) => item);
}

/** FNV-1a, 32 bits, with its bits stirred once more – Fowler, Noll, Vo. */
function hash(text: string): number {
  let value = 0x811c9dc5;
  for (const character of text)
    value = Math.imul(value ^ (character.codePointAt(0) ?? 0), 0x01000193);
  value ^= value >>> 15;
  value = Math.imul(value, 0x2c1b3c6d);
  return (value ^ (value >>> 12)) >>> 0;
}
