import { asGiven, type Given, mostAnswers } from "@rollbook/lib";
import { documentOf } from "@rollbook/page";

function asAnswers(value: unknown, aside: (answer: unknown) => void): Given[] | undefined {
  if (!Array.isArray(value)) return undefined;
  return value.flatMap((one) => {
    const given = asGiven(one);
    if (!given) aside(one);
    return given ?? [];
  });
}

/** All answers to questions on this device, the oldest first. */
export const answers = documentOf<readonly Given[]>({
  key: "answers",
  empty: [],
  read: asAnswers,
});

/** Keeps these answers and no others; false where the device refused. */
export const keepAnswers = (all: readonly Given[]): Promise<boolean> =>
  answers.set(all.slice(-mostAnswers));

/** Keeps one answer more; false where the device refused. */
export const addAnswer = (given: Given): Promise<boolean> =>
  keepAnswers([...answers.now.value, given]);
