import { documentOf } from "@rollbook/page";
import { mostAnswers } from "../record/answers-file.js";
import { asGiven, type Given } from "../record/given.js";

const asAnswers = (value: unknown): Given[] | undefined =>
  Array.isArray(value) ? value.flatMap((one) => asGiven(one) ?? []) : undefined;

const kept = documentOf<readonly Given[]>({ key: "answers", empty: [], read: asAnswers });

/** All answers on this device, the oldest first. */
export const answers = (): readonly Given[] => kept.now.value;

/** Keeps these answers and no others; false where the device refused. */
export const keepAnswers = (all: readonly Given[]): Promise<boolean> =>
  kept.set(all.slice(-mostAnswers));

/** Keeps one answer more; false where the device refused. */
export const addAnswer = (given: Given): Promise<boolean> => keepAnswers([...answers(), given]);

export const forgetAnswers = (): void => kept.clear();
