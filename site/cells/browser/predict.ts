import { effect } from "@preact/signals-core";
import { type Filed, predictionOf } from "../../store/predictions.js";
import { predictInner } from "../inner-html.js";
import { spell } from "../reader.js";
import type { PredictSpec } from "../spec.js";
import { words } from "../words.js";
import { element, placeOf } from "./element.js";
import { fill } from "./trusted.js";

const { letters } = words;
const shortestReason = 3;

function radio(group: string, value: string, text: string): HTMLElement {
  const input = element("input", { type: "radio", name: group, value, required: true });
  return element("label", {}, input, element("span", {}, text));
}

function answerForm(spec: PredictSpec): HTMLFormElement {
  const { id, choices } = spec;
  const options = choices.map(({ text }, i) =>
    radio(`${id}-choice`, String(i), `${letters[i]}. ${spell(text)}`),
  );
  const sure = words.confidences.map((text) => radio(`${id}-confidence`, text, text));
  const reason = element("input", {
    name: `${id}-reason`,
    required: true,
    minlength: shortestReason,
    maxlength: 200,
    autocomplete: "off",
  });
  const form = element(
    "form",
    { class: "filing" },
    element("fieldset", {}, element("legend", {}, words.expect), ...options),
    element("label", {}, words.because, reason),
    element("fieldset", { class: "inline" }, element("legend", {}, words.sure), ...sure),
    element("button", { type: "submit" }, words.fileIt),
  );
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const given = new FormData(form);
    const text = (name: string) => String(given.get(`${id}-${name}`) ?? "").trim();
    if (text("reason").length < shortestReason) {
      reason.focus();
      return;
    }
    void predictionOf(id).set({
      choice: Number(text("choice")),
      confidence: text("confidence"),
      reason: text("reason"),
    });
  });
  return form;
}

function verdict({ answer }: PredictSpec, { choice, confidence, reason }: Filed): string {
  const said = words.youSaid(
    letters[choice] ?? "",
    confidence,
    reason.replace(/^because[\s,:]+/i, "").replace(/\.$/, ""),
  );
  const model = choice === answer ? words.modelAgrees : `${words.modelSays} ${letters[answer]}.`;
  return `${said} ${model} ${words.nowMove}`;
}

/** Asks for a choice, a reason and a confidence before the reasons open. */
export function predict(spec: PredictSpec): void {
  const place = placeOf(spec.id);
  if (!place) return;
  fill(place, predictInner(spec));
  const list = place.querySelector<HTMLElement>("ol.choices");
  const reasons = place.querySelector("details");
  if (!list || !reasons) return;
  const form = answerForm(spec);
  const outcome = element("p", { class: "outcome", role: "status" });
  const undo = element("button", { type: "button" }, words.takeBack);
  undo.addEventListener("click", () => predictionOf(spec.id).clear());
  list.before(form, outcome, undo);

  const fold = reasons.querySelector("summary");

  effect(() => {
    const own = predictionOf(spec.id).now.value;
    if (fold) fold.textContent = own ? words.reasonsOpen : words.reasons;
    form.hidden = own !== undefined;
    undo.hidden = own === undefined;
    list.hidden = own === undefined;
    reasons.hidden = own === undefined;
    reasons.open = own !== undefined;
    outcome.textContent = own ? verdict(spec, own) : "";
  });
}
