import { asGiven, type Given } from "./given.js";

/** What a file of answers says it is. */
const kind = "rollbook answers";
const version = 1;

/** The most answers that are kept or read, far more than anybody gives. */
export const mostAnswers = 5000;
const mostCharacters = 2_000_000;

/** Answers as the text of a file. */
export function answersToFile(answers: readonly Given[]): string {
  return `${JSON.stringify({ kind, version, answers }, null, 1)}\n`;
}

/** Why a file gives no answers. */
export type AnswersFileFault =
  | { readonly code: "too-large" | "not-answers" | "no-list" }
  | { readonly code: "other-version"; readonly version: string; readonly known: number }
  | { readonly code: "too-many"; readonly most: number };

/** Answers from the text of a file and how many were left out, or why there are none. */
export function answersFromFile(
  text: string,
): { answers: Given[]; left: number } | { fault: AnswersFileFault } {
  if (text.length > mostCharacters) return { fault: { code: "too-large" } };
  const content = parsed(text);
  if (content?.kind !== kind) return { fault: { code: "not-answers" } };
  if (content.version !== version) {
    const given = String(content.version).slice(0, 10);
    return { fault: { code: "other-version", version: given, known: version } };
  }
  if (!Array.isArray(content.answers)) return { fault: { code: "no-list" } };
  if (content.answers.length > mostAnswers)
    return { fault: { code: "too-many", most: mostAnswers } };
  const answers = content.answers.flatMap((value) => asGiven(value) ?? []);
  return { answers, left: content.answers.length - answers.length };
}

function parsed(text: string): Record<string, unknown> | undefined {
  try {
    const content: unknown = JSON.parse(text);
    return typeof content === "object" && content !== null
      ? (content as Record<string, unknown>)
      : undefined;
  } catch {
    return undefined;
  }
}

/** Two lists of answers as one in the order of their days, what both have only once. */
export function mergedAnswers(mine: readonly Given[], others: readonly Given[]): Given[] {
  const known = new Map<string, number>();
  for (const given of mine) add(known, given);
  const fresh = others.filter((given) => !take(known, given));
  return [...mine, ...fresh].sort((a, b) => a.day - b.day).slice(-mostAnswers);
}

const keyOf = ({ asked, form, occasion, day, confidence, idea }: Given): string =>
  [asked, form, occasion, day, confidence, idea].join(" ");

function add(known: Map<string, number>, given: Given): void {
  known.set(keyOf(given), (known.get(keyOf(given)) ?? 0) + 1);
}

function take(known: Map<string, number>, given: Given): boolean {
  const count = known.get(keyOf(given)) ?? 0;
  if (count > 0) known.set(keyOf(given), count - 1);
  return count > 0;
}
