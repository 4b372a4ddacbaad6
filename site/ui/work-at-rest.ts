import { type ReadonlySignal, signal } from "@preact/signals";
import { useEffect, useState } from "preact/hooks";

/** How long nothing is typed before what takes long is worked out, ms. */
const QUIET = 400;

const typing = signal(false);
/** Whether somebody is in the midst of typing. */
export const isTyping: ReadonlySignal<boolean> = typing;
let quiet: ReturnType<typeof setTimeout> | undefined;

/** A letter was typed: what takes long waits until the field is left, or for quiet. */
export function typed(): void {
  typing.value = true;
  clearTimeout(quiet);
  quiet = setTimeout(rest, QUIET);
}

/** A field was left, or a button pressed. */
export function rest(): void {
  clearTimeout(quiet);
  typing.value = false;
}

/** Does work after the page has been painted; gives what withdraws it. */
export function afterPaint(work: () => void): () => void {
  let later: ReturnType<typeof setTimeout> | undefined;
  const frame = requestAnimationFrame(() => {
    later = setTimeout(work);
  });
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(later);
  };
}

/** What was worked out last, and whether it is of the input as it now is. */
export interface WorkedOut<Output> {
  readonly output: Output | undefined;
  readonly current: boolean;
}

/**
 * Works out what takes long once the reader rests and has seen that the page is at it; the answer
 * stays until there is one to another input.
 *
 * @param key - the input; the same one is not worked out again
 * @param wanted - false where nobody looks at it
 */
export function useWorkAtRest<Output>(
  key: string,
  wanted: boolean,
  workOut: () => Output,
): WorkedOut<Output> {
  const [found, setFound] = useState<{ key: string; output: Output } | undefined>();
  const current = found?.key === key;
  const due = wanted && !current && !typing.value;
  useEffect(
    () => (due ? afterPaint(() => setFound({ key, output: workOut() })) : undefined),
    [due, key],
  );
  return { output: found?.output, current };
}
