import { drop, keep, recall } from "./store.js";

/** A prediction that the reader has filed. */
export interface Filed {
  readonly choice: number;
  readonly confidence: string;
  readonly reason: string;
}

const listeners = new Map<string, (() => void)[]>();
const tell = (id: string) => {
  for (const listener of listeners.get(id) ?? []) listener();
};
const keyOf = (id: string): string => `filed:${document.documentElement.dataset.page}:${id}`;

function asFiled(value: unknown): Filed | undefined {
  const { choice, confidence, reason } = value as Partial<Filed>;
  const whole = typeof confidence === "string" && typeof reason === "string";
  return whole && Number.isInteger(choice)
    ? { choice: choice as number, confidence, reason }
    : undefined;
}

export const filed = (id: string): Filed | undefined => recall(keyOf(id), asFiled);

export const isFiled = (id: string): boolean => filed(id) !== undefined;

export function file(id: string, prediction: Filed): void {
  keep(keyOf(id), prediction);
  tell(id);
}

export function takeBack(id: string): void {
  drop(keyOf(id));
  tell(id);
}

/** Calls the listener whenever this prediction is filed or taken back. */
export function whenFiled(id: string, listener: () => void): void {
  listeners.set(id, [...(listeners.get(id) ?? []), listener]);
}
