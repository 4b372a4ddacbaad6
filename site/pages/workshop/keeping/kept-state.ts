import { keep, recall } from "@rollbook/page";
import { oneSecond, putSecond } from "./second-copy.js";

const nameOf = (key: string): string => `workshop/${key}`;

/** Keeps a value in both copies; false where both refused. */
export async function keepState(key: string, value: unknown): Promise<boolean> {
  const stamped = { stamp: Date.now(), value };
  const first = keep(nameOf(key), stamped);
  const second = await putSecond(new Map([[nameOf(key), JSON.stringify(stamped)]]));
  return first || second;
}

type Accept<Value> = (value: unknown) => Value | undefined;

/** The value of the newest copy that can be read. */
export async function recallState<Value>(
  key: string,
  accept: Accept<Value>,
): Promise<Value | undefined> {
  const first = recall(nameOf(key), (value) => stampedWith(value, accept));
  const second = fromText(await oneSecond(nameOf(key)), accept);
  if (first === undefined || second === undefined) return (first ?? second)?.value;
  return first.stamp < second.stamp ? second.value : first.value;
}

/** A value that was kept over and over: a draft, or where the day stands. */
interface Stamped<Value> {
  /** When it was written, ms since 1970. */
  readonly stamp: number;
  readonly value: Value;
}

function stampedWith<Value>(kept: unknown, accept: Accept<Value>): Stamped<Value> | undefined {
  const { stamp, value } = kept as Partial<Stamped<unknown>>;
  const accepted = accept(value);
  return typeof stamp === "number" && accepted !== undefined
    ? { stamp, value: accepted }
    : undefined;
}

function fromText<Value>(text: string | undefined, accept: Accept<Value>) {
  try {
    return text === undefined ? undefined : stampedWith(JSON.parse(text), accept);
  } catch {
    return undefined;
  }
}
