import { escapeHtml } from "./escape.js";
import { format, spell } from "./reader.js";
import type { ExerciseSpec, PredictSpec, WorkedSpec } from "./spec.js";
import { words } from "./words.js";

const safe = (text: string): string => escapeHtml(spell(text));

/** What stands inside a worked figure. */
export function workedInner({ label, value, quantity, decimals, how }: WorkedSpec): string {
  const sum = how ? `<span class="how">${safe(how)} =</span> ` : "";
  const shown = escapeHtml(format(quantity, value, decimals));
  return `<span class="label">${safe(label)}:</span> ${sum}<output>${shown}</output>`;
}

/** What stands inside a question to answer before looking. */
export function predictInner({ ask, choices, answer }: PredictSpec): string {
  const items = choices.map(({ text }) => `<li>${safe(text)}</li>`).join("");
  const reasons = choices
    .map(({ because }, i) => {
      const verdict = i === answer ? words.right : words.notSo;
      return `<li data-right="${i === answer}"><b>${verdict}</b> ${safe(because)}</li>`;
    })
    .join("");
  return (
    `<p class="ask">${safe(ask)}</p><ol class="choices" type="A">${items}</ol>` +
    `<details><summary>${words.reasons}</summary>` +
    `<p>${words.modelSays} <b>${words.letters[answer]}</b>.</p>` +
    `<ol type="A">${reasons}</ol></details>`
  );
}

/** What stands inside a sum for the reader. */
export function exerciseInner(spec: ExerciseSpec): string {
  const shown = escapeHtml(format(spec.quantity, spec.answer, spec.decimals));
  return (
    `<p class="ask">${safe(spec.ask)}</p>` +
    `<details><summary>${words.hint}</summary><p>${safe(spec.hint)}</p></details>` +
    `<details><summary>${words.answer}</summary>` +
    `<p>${safe(spec.solution)} <output>${shown}</output></p></details>`
  );
}
