import { effect } from "@preact/signals-core";
import {
  type Filed,
  type InWords,
  openUnasked,
  predictionOf,
  seenAfter,
} from "../../store/predictions.js";
import { predictInner } from "../inner-html.js";
import { spell } from "../reader.js";
import type { PredictSpec } from "../spec.js";
import { words } from "../words.js";
import { element, inRoom, placeOf } from "./element.js";
import { hurryButton } from "./hurry.js";
import { isLookedInto } from "./looks.js";
import { drawnBeside, drawPrediction } from "./sketch.js";
import { fill } from "./trusted.js";

const { letters } = words;
const shortestReason = 3;

function radio(group: string, value: string, text: string): HTMLElement {
  const input = element("input", { type: "radio", name: group, value, required: true });
  return element("label", {}, input, element("span", {}, text));
}

/** A prediction in words, for a review on another page. */
function inWords({ ask, choices, answer }: PredictSpec, choice: number): InWords {
  const said = (which: number) => `${letters[which]}. ${spell(choices[which]?.text ?? "")}`;
  return { ask: spell(ask), said: said(choice), model: said(answer) };
}

function reasonBox(id: string): HTMLInputElement {
  return element("input", {
    name: `${id}-reason`,
    required: true,
    minlength: shortestReason,
    maxlength: 200,
    autocomplete: "off",
  });
}

/** What to predict with; `done` is called when it was, or was passed by. */
function answerForm(spec: PredictSpec, done: () => void): HTMLFormElement {
  const { id, choices } = spec;
  const options = choices.map(({ text }, i) =>
    radio(`${id}-choice`, String(i), `${letters[i]}. ${spell(text)}`),
  );
  const sure = words.confidences.map((text) => radio(`${id}-confidence`, text, text));
  const reason = reasonBox(id);
  const sketch = spec.sketch && drawPrediction(id, spec.sketch);
  const form = element(
    "form",
    { class: "filing" },
    element("fieldset", {}, element("legend", {}, words.expect), ...options),
    ...(sketch ? [sketch.place] : []),
    element("label", {}, words.because, reason),
    element("fieldset", { class: "inline" }, element("legend", {}, words.sure), ...sure),
    element("p", {}, element("button", { type: "submit" }, words.fileIt), " ", hurryButton(done)),
  );
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const given = new FormData(form);
    const text = (name: string) => String(given.get(`${id}-${name}`) ?? "").trim();
    if (text("reason").length < shortestReason) {
      reason.focus();
      return;
    }
    const choice = Number(text("choice"));
    const drawn = sketch?.value();
    void predictionOf(id).set({
      choice,
      confidence: text("confidence"),
      reason: text("reason"),
      inWords: inWords(spec, choice),
      ...(drawn !== undefined && { drawn }),
    });
    done();
  });
  return form;
}

const youSaid = ({ choice, confidence, reason }: Filed): string =>
  words.youSaid(
    letters[choice] ?? "",
    confidence,
    reason.replace(/^because[\s,:]+/i, "").replace(/\.$/, ""),
  );

const verdict = ({ answer }: PredictSpec, choice: number): string =>
  choice === answer ? words.modelAgrees : `${words.modelSays} ${letters[answer]}.`;

/** What is said under a question: nothing of the answer before the figure that it opens was looked at. */
function outcomeOf(spec: PredictSpec, own: Filed | undefined, isExplained: boolean): string {
  if (own === undefined) return openUnasked().now.value ? words.isOpen : "";
  return `${youSaid(own)} ${isExplained ? verdict(spec, own.choice) : words.nowLook}`;
}

/** The figure that a question opens, if one belongs to it, with the reasons below it. */
function figureWith(reasons: Element, question: string): Element | null {
  const figure = inRoom(`[data-explained="${question}"]`);
  figure?.after(reasons);
  if (figure) reasons.classList.add("explanation");
  return figure;
}

/** What the text goes on to say below a figure, up to the next heading or cell; what asks for more moves stays. */
function saidBelow(figure: Element | null): Element[] {
  const said: Element[] = [];
  let next = figure?.closest(".cell")?.nextElementSibling;
  while (next && !/^H\d$/.test(next.tagName) && !next.matches(".cell, section")) {
    if (!next.matches(".find-out")) said.push(next);
    next = next.nextElementSibling;
  }
  return said;
}

/** Takes a prediction back, with all that opened by it, and leads to the form. */
function undoOf(id: string, form: HTMLFormElement): HTMLButtonElement {
  const undo = element("button", { type: "button" });
  undo.addEventListener("click", () => {
    predictionOf(id).clear();
    seenAfter(id).clear();
    openUnasked().clear();
    form.querySelector("input")?.focus();
  });
  return undo;
}

/** Asks for a choice, a reason and a confidence; a figure comes next where one belongs to it, then the reasons. */
export function predict(spec: PredictSpec): void {
  const place = placeOf(spec.id);
  if (!place) return;
  fill(place, predictInner(spec));
  const list = place.querySelector<HTMLElement>("ol.choices");
  const reasons = place.querySelector("details");
  if (!list || !reasons) return;
  const outcome = element("p", { class: "outcome", role: "status", tabindex: -1 });
  const form = answerForm(spec, () => outcome.focus());
  const undo = undoOf(spec.id, form);
  list.before(form, outcome, undo);
  const fold = reasons.querySelector("summary");
  if (fold) fold.textContent = words.reasonsOpen;
  const figure = figureWith(reasons, spec.id);
  const below = saidBelow(figure);
  const overlay = element("div");
  fold?.after(overlay);

  effect(() => {
    const own = predictionOf(spec.id).now.value;
    const unasked = openUnasked().now.value;
    const isOpen = own !== undefined || unasked;
    const waits = figure !== null || isLookedInto(spec.id);
    const isExplained = unasked || (isOpen && (!waits || seenAfter(spec.id).now.value.saw !== ""));
    form.hidden = isOpen;
    undo.hidden = !isOpen;
    undo.textContent = own === undefined ? words.askMe : words.takeBack;
    list.hidden = !isOpen;
    reasons.hidden = !isExplained;
    reasons.open = isExplained;
    overlay.replaceChildren(
      ...(isExplained && spec.sketch && own?.drawn !== undefined
        ? [drawnBeside(spec.sketch, own.drawn)]
        : []),
    );
    for (const part of below) part.toggleAttribute("data-later", !isExplained);
    outcome.textContent = outcomeOf(spec, own, isExplained);
  });
}
