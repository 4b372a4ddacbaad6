import {
  type PollCount,
  type PollEntry,
  type PollLetter,
  pollAdvice,
  pollGain,
} from "@rollbook/lib";
import { element, format, spell } from "@rollbook/page";
import type { Asked } from "../../questions/bank/asked.js";
import { write } from "../day/logbook.js";
import { chips } from "../parts/chips.js";
import { button } from "../parts/fields.js";
import { fold } from "../parts/fold.js";
import { words } from "../words.js";
import { letterAt, letters, readyQuestions } from "./questions.js";

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
  let right: PollLetter = "a";
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

interface Put {
  readonly question: string;
  readonly right: PollLetter;
}

function votes(put: () => Put): HTMLElement[] {
  const filed: (PollEntry | undefined)[] = [];
  return ([1, 2] as const).map((vote) => voteForm(vote, put, filed));
}

function voteForm(vote: 1 | 2, put: () => Put, filed: (PollEntry | undefined)[]): HTMLElement {
  const boxes = letters.map((letter) => {
    const id = `poll-${vote}-${letter}`;
    const more = { min: 0, max: 10_000, inputmode: "numeric", value: 0 };
    return element("input", {
      type: "number",
      id,
      ...more,
      "aria-label": said.cards(letter.toUpperCase()),
    });
  });
  const told = element("p", { role: "status", class: "told" });
  const count = () => {
    const [a = 0, b = 0, c = 0, d = 0] = boxes.map(({ valueAsNumber }) => valueAsNumber);
    told.replaceChildren(counted({ a, b, c, d }, vote, put(), filed));
  };
  const labelled = boxes.map((box, i) =>
    element("span", { class: "boxed" }, said.letters[i] ?? "", box),
  );
  return element(
    "fieldset",
    { class: "vote" },
    element("legend", {}, said.vote(vote)),
    element(
      "div",
      { class: "tools" },
      ...labelled,
      button(`poll-count-${vote}`, said.count, count),
    ),
    told,
  );
}

/** Files a count, in place of an earlier one of the same vote, and says what to do. */
function counted(
  count: PollCount,
  vote: 1 | 2,
  { question, right }: Put,
  filed: (PollEntry | undefined)[],
): string {
  if (question === "") return said.noQuestion;
  try {
    const { rightShare, sentence } = pollAdvice(count, right, vote);
    const before = filed[vote];
    const replaces = before?.question === question ? { replaces: before.id } : {};
    filed[vote] = write({ kind: "poll", question, right, vote, count, ...replaces });
    const first = filed[1];
    const advice = said.advice(format("share", rightShare, 0), sentence);
    return vote === 1 || first === undefined
      ? advice
      : `${advice} ${gained(first.count, count, right)}`;
  } catch (error) {
    if (error instanceof RangeError) return said.badCount;
    throw error;
  }
}

function gained(first: PollCount, second: PollCount, right: PollLetter): string {
  const gain = pollGain(first, second, right);
  return gain < 0 ? said.lost : said.gain(format("share", gain, 0));
}
