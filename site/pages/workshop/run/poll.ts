import type { PollLetter } from "@rollbook/lib";
import { element, spell } from "@rollbook/page";
import type { Asked } from "../../questions/bank/asked.js";
import { chips } from "../parts/chips.js";
import { fold } from "../parts/fold.js";
import { words } from "../words.js";
import { letterAt, letters, readyQuestions } from "./questions.js";
import { votes } from "./votes.js";

const { run: said } = words;

/** A vote with cards: a question, two counts, and what to do after each. */
export function poll(projected: (question: HTMLElement[]) => void): HTMLElement {
  const place = element("div", { id: "poll" });
  const select = element("select", { id: "poll-question" });
  select.append(
    element("option", { value: "" }, said.ownQuestion),
    ...readyQuestions.map(({ key, form, belief }) =>
      element("option", { value: key }, form === "first" ? belief : said.twin(belief)),
    ),
  );
  const choose = () => {
    const ready = readyQuestions.find(({ key }) => key === select.value);
    const asked = ready?.ask();
    place.replaceChildren(...(asked === undefined ? own() : bank(asked)));
    projected(asked === undefined ? [] : askedAs(asked));
  };
  select.addEventListener("change", choose);
  choose();
  return fold(
    "poll-fold",
    said.poll,
    element(
      "div",
      { class: "field" },
      element("label", { for: "poll-question" }, said.question),
      select,
    ),
    place,
  );
}

function own(): HTMLElement[] {
  const text = element("textarea", { id: "poll-text", rows: 2, maxlength: 2000 });
  let right: PollLetter | undefined;
  const choices = letters.map((value, i) => ({ value, text: said.letters[i] ?? "" }));
  const label = element("label", { for: "poll-text" }, said.ownText);
  return [
    element("div", { class: "field" }, label, text),
    chips("poll-right", said.right, choices, right, (letter) => {
      right = letter;
    }),
    ...votes(() => ({ question: text.value.trim(), right })),
  ];
}

/** A question of the bank as it is asked: nothing tells which answer is right. */
export function askedAs(asked: Asked): HTMLElement[] {
  const items = asked.choices.map(({ text }) => element("li", {}, spell(text)));
  return [
    element("p", { class: "ask" }, spell(asked.ask)),
    element("ol", { type: "A", class: "answers-a-d" }, ...items),
    ...(asked.instead === undefined
      ? []
      : [element("p", { class: "quiet" }, said.instead(asked.instead))]),
  ];
}

function bank(asked: Asked): HTMLElement[] {
  const right = letterAt(asked.answer);
  const because = asked.choices.map((choice) => element("li", {}, spell(choice.because)));
  return [
    ...askedAs(asked),
    fold(
      "poll-key",
      said.showRight,
      element("p", {}, said.rightIs(right.toUpperCase())),
      element("ol", { type: "A" }, ...because),
    ),
    ...votes(() => ({ question: spell(asked.ask), right })),
  ];
}
