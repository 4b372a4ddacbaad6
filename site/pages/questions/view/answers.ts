import { drop, keep, recall } from "@rollbook/page";
import { mostAnswers } from "../record/answers-file.js";
import { asGiven, type Given } from "../record/given.js";

const key = "answers";

const asAnswers = (value: unknown): Given[] | undefined =>
  Array.isArray(value) ? value.flatMap((one) => asGiven(one) ?? []) : undefined;

/** All answers on this device, the oldest first. */
export const answers = (): Given[] => recall(key, asAnswers) ?? [];

/** Keeps these answers and no others; false where the device refused. */
export const keepAnswers = (all: readonly Given[]): boolean => keep(key, all.slice(-mostAnswers));

/** Keeps one answer more; false where the device refused. */
export const addAnswer = (given: Given): boolean => keepAnswers([...answers(), given]);

export const forgetAnswers = (): void => drop(key);
