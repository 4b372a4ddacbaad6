import { element, spell } from "@rollbook/page";
import type { Asked } from "../bank/asked.js";
import { type Given, type Occasion, today } from "../record/given.js";
import { words } from "../words.js";
import { addAnswer } from "./answers.js";
import { aboutOf } from "./ask.js";
import { outcome } from "./outcome.js";

interface CardOptions {
  readonly occasion: Occasion;
  /** Whether the answer is explained at once. */
  readonly explain: boolean;
  /** Called with the answer once it is kept, and with the card to add to. */
  readonly answered?: (given: Given, card: HTMLElement) => void;
}

function radio(name: string, value: number, text: string): HTMLElement {
  const input = element("input", { type: "radio", name, value, required: true });
  return element("label", {}, input, element("span", {}, text));
}

function answerForm(asked: Asked): HTMLFormElement {
  const group = `${asked.idea}-${asked.form}`;
  const options = asked.choices.map(({ text }, index) =>
    radio(`${group}-choice`, index, `${words.letters[index]}. ${spell(text)}`),
  );
  const sure = words.confidences.map((text, index) => radio(`${group}-sure`, index, text));
  return element(
    "form",
    { class: "answering" },
    element("fieldset", {}, element("legend", { class: "ask" }, spell(asked.ask)), ...options),
    element("fieldset", { class: "inline" }, element("legend", {}, words.sure), ...sure),
    element("button", { type: "submit" }, words.answer),
  );
}

function givenFrom(form: HTMLFormElement, asked: Asked, occasion: Occasion) {
  const data = new FormData(form);
  const number = (name: string) => Number(data.get(`${asked.idea}-${asked.form}-${name}`));
  const chosen = number("choice");
  const idea = asked.choices[chosen]?.idea;
  const given: Given = {
    asked: asked.idea,
    form: asked.form,
    occasion,
    day: today(),
    confidence: number("sure"),
    ...(idea && { idea }),
  };
  return { chosen, given };
}

/** A question to answer, and, where it is to be explained, what came of it. */
export function card(asked: Asked, { occasion, explain, answered }: CardOptions): HTMLElement {
  const form = answerForm(asked);
  const place = element(
    "section",
    { class: "question" },
    form,
    element("p", { class: "about" }, aboutOf(asked)),
  );
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const { chosen, given } = givenFrom(form, asked, occasion);
    void addAnswer(given).then((held) => {
      if (!held) place.append(element("p", { role: "status" }, words.notKept));
    });
    if (explain) {
      const came = outcome(asked, chosen, given.confidence);
      form.replaceWith(came);
      came.focus();
    }
    answered?.(given, place);
  });
  return place;
}

/** Puts a card into a place and its question before those who use a keyboard or a screen reader. */
export function bring(place: HTMLElement, ...parts: HTMLElement[]): void {
  place.replaceChildren(...parts);
  const first = place.querySelector<HTMLElement>("input");
  first?.focus({ preventScroll: true });
}
