import { forget, recall, remember } from "./memory.js";

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

function parse(text: string): Filed | undefined {
  try {
    const { choice, confidence, reason } = JSON.parse(text);
    const whole =
      Number.isInteger(choice) && typeof confidence === "string" && typeof reason === "string";
    return whole ? { choice, confidence, reason } : undefined;
  } catch {
    return undefined;
  }
}

export function filed(id: string): Filed | undefined {
  const text = recall(id);
  return text === undefined ? undefined : parse(text);
}

export const isFiled = (id: string): boolean => filed(id) !== undefined;

export function file(id: string, prediction: Filed): void {
  remember(id, JSON.stringify(prediction));
  tell(id);
}

export function takeBack(id: string): void {
  forget(id);
  tell(id);
}

/** Calls the listener whenever this prediction is filed or taken back. */
export function whenFiled(id: string, listener: () => void): void {
  listeners.set(id, [...(listeners.get(id) ?? []), listener]);
}
