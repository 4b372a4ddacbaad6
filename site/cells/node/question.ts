import { format } from "@rollbook/lib";
import { escapeHtml } from "../escape.js";
import type { ExerciseSpec, PredictSpec } from "../spec.js";
import { show } from "./show.js";

const letters = "ABCDEF";

/** A question to answer before looking; the reasons stay folded until then. */
export function predict({ id, ask, choices, answer }: PredictSpec): void {
  if (!choices[answer]) throw new RangeError(`${id}: no choice has the index ${answer}`);
  const items = choices.map(({ text }) => `<li>${escapeHtml(text)}</li>`).join("");
  const reasons = choices
    .map(({ because }, i) => {
      const verdict = i === answer ? "Right" : "Not so";
      return `<li data-right="${i === answer}"><b>${verdict}.</b> ${escapeHtml(because)}</li>`;
    })
    .join("");
  show(
    `<section class="predict" id="${id}"><p class="ask">${escapeHtml(ask)}</p>` +
      `<ol class="choices" type="A">${items}</ol>` +
      `<details><summary>Answer: decide on a letter first</summary>` +
      `<p>The model says <b>${letters[answer]}</b>.</p>` +
      `<ol type="A">${reasons}</ol></details></section>`,
  );
}

/** A sum for the reader to work out, with a hint and a hidden answer. */
export function exercise(spec: ExerciseSpec): void {
  if (!Number.isFinite(spec.answer)) throw new RangeError(`${spec.id}: the answer is not a number`);
  show(
    `<section class="exercise" id="${spec.id}" data-exercise="${spec.answer}">` +
      `<p class="ask">${escapeHtml(spec.ask)}</p>` +
      `<details><summary>Hint</summary><p>${escapeHtml(spec.hint)}</p></details>` +
      `<details><summary>Answer</summary><p>${escapeHtml(spec.solution)} ` +
      `<output>${escapeHtml(format(spec.quantity, spec.answer, spec.decimals))}</output></p></details></section>`,
  );
}
