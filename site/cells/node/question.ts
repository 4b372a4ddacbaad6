import { exerciseInner, predictInner } from "../inner-html.js";
import type { ExerciseSpec, PredictSpec } from "../spec.js";
import { showLive } from "./show.js";

/** A question to answer before looking; the reasons stay folded until then. */
export function predict(spec: PredictSpec): void {
  const { id, choices, answer } = spec;
  if (!choices[answer]) throw new RangeError(`${id}: no choice has the index ${answer}`);
  showLive(`<section class="predict" id="${id}">${predictInner(spec)}</section>`);
}

/** A sum for the reader to work out, with a hint and a hidden answer. */
export function exercise(spec: ExerciseSpec): void {
  const { id, answer } = spec;
  if (!Number.isFinite(answer)) throw new RangeError(`${id}: the answer is not a number`);
  showLive(
    `<section class="exercise" id="${id}" data-exercise="${answer}">${exerciseInner(spec)}</section>`,
  );
}
