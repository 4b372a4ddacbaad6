import { effect, signal } from "@preact/signals-core";
import { today } from "@rollbook/lib";
import { openUnasked, predictionOf, seenAfter } from "../../store/predictions.js";
import { spell } from "../reader.js";
import { type FigureSpec, type Inputs, looksLeft, type ValuesOf } from "../spec.js";
import { words } from "../words.js";
import { element } from "./element.js";
import { hurryButton } from "./hurry.js";

const shortestSentence = 8; // letters
const longestSentence = 300;

const lookedInto = signal<ReadonlySet<string>>(new Set());

/** Whether a figure that is there asks for looks after this prediction, wherever it stands. */
export const isLookedInto = (prediction: string): boolean => lookedInto.value.has(prediction);

/** What a figure asks of a reader who has filed a prediction. */
export interface Looks<Values> {
  /** Before the sliders: what to do. */
  readonly list: HTMLElement;
  /** After the sliders: what was seen. */
  readonly seeing: HTMLElement;
  /** Ticks what these values do. */
  at(values: Values): void;
}

/** What was seen, to be written; `kept` is called when it was. */
function seeingForm(prediction: string, kept: () => void): HTMLFormElement {
  const box = element("textarea", {
    rows: 2,
    required: true,
    minlength: shortestSentence,
    maxlength: longestSentence,
  });
  const form = element(
    "form",
    { class: "seeing" },
    element("label", {}, words.whatSeen, box),
    element("button", { type: "submit" }, words.keepSeen),
  );
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const saw = box.value.trim();
    if (saw.length < shortestSentence) box.focus();
    else {
      const { looked } = seenAfter(prediction).now.value;
      void seenAfter(prediction).set({ looked, saw, times: [{ day: today(), isRight: true }] });
      kept();
    }
  });
  return form;
}

/** What to do, and how to tick those that were done; `passed` is called when all were passed by. */
function thingsToDo(looks: readonly { readonly ask: string }[], passed: () => void) {
  const items = looks.map(({ ask }) => {
    const aloud = element("span", { class: "aloud" });
    return { item: element("li", {}, `${spell(ask)} `, aloud), aloud };
  });
  const list = element(
    "div",
    { class: "looks" },
    element("p", {}, words.doThese),
    element("ol", {}, ...items.map(({ item }) => item)),
    hurryButton(passed),
  );
  const tick = (looked: readonly number[]) => {
    items.forEach(({ item, aloud }, i) => {
      item.toggleAttribute("data-done", looked.includes(i));
      aloud.textContent = looked.includes(i) ? words.done : "";
    });
  };
  return { list, tick };
}

/** Things to do that tick themselves, then a sentence to write, before the reasons of a prediction open. */
export function looksOf<const I extends Inputs>(
  prediction: string,
  spec: FigureSpec<I>,
): Looks<ValuesOf<I>> {
  lookedInto.value = new Set([...lookedInto.peek(), prediction]);
  const seen = seenAfter(prediction);
  const looks = looksLeft(spec);
  const said = element("p", { class: "saw", tabindex: -1 });
  const { list, tick } = thingsToDo(looks, () => said.focus());
  const form = seeingForm(prediction, () => said.focus());
  effect(() => {
    const { looked, saw } = seen.now.value;
    const isFiled = predictionOf(prediction).now.value !== undefined;
    const isOver = saw !== "" || openUnasked().now.value;
    tick(looked);
    list.hidden = !isFiled || isOver;
    form.hidden = !isFiled || isOver || looked.length < looks.length;
    said.textContent = saw === "" ? "" : words.youSaw(saw);
  });
  return {
    list,
    seeing: element("div", { class: "seen" }, form, said),
    at(values) {
      if (predictionOf(prediction).now.value === undefined) return;
      const { looked } = seen.now.value;
      const now = looks.flatMap(({ done }, i) =>
        !looked.includes(i) && done(values, spec.inputs) ? [i] : [],
      );
      if (now.length > 0) void seen.set({ ...seen.now.value, looked: [...looked, ...now] });
    },
  };
}
