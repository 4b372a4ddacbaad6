import { type PollCount, pollAdvice, Refusal } from "@rollbook/lib";
import { element, spell } from "@rollbook/page";
import { pollAdviceInWords } from "../../../say/poll.js";
import type { Asked } from "../bank/asked.js";
import type { IdeaName } from "../bank/ideas.js";
import type { Form } from "../bank/question.js";
import { words } from "../words.js";
import { aboutOf, ask } from "./ask.js";
import { topicChoice, wantedIn } from "./one.js";
import { explained } from "./outcome.js";
import { button, type Part, part } from "./part.js";

const letters = ["a", "b", "c", "d"] as const;

/** The question in large type: what a projector shows and what is printed. */
function sheet(asked: Asked): HTMLElement {
  return element(
    "section",
    { class: "projected", tabindex: "-1" },
    element("p", { class: "ask" }, spell(asked.ask)),
    element(
      "ol",
      { type: "A" },
      ...asked.choices.map(({ text }) => element("li", {}, spell(text))),
    ),
    element("p", { class: "about" }, aboutOf(asked)),
  );
}

/** Counts of cards to type in, and what to do after them. */
function voteForm(asked: Asked, vote: 1 | 2, take: (count: PollCount) => void): HTMLElement {
  const boxes = letters.map((letter) =>
    element("input", {
      type: "number",
      name: letter,
      min: 0,
      max: 999,
      step: 1,
      value: 0,
      inputmode: "numeric",
      "aria-label": words.cards(letter.toUpperCase()),
    }),
  );
  const told = element("p", { role: "status" });
  const labels = boxes.map((box, index) =>
    element("span", { class: "boxed" }, words.letters[index] ?? "", box),
  );
  const form = element(
    "form",
    { class: "vote", novalidate: true },
    element(
      "fieldset",
      {},
      element("legend", {}, words.vote(vote)),
      ...labels,
      element("button", { type: "submit" }, words.count),
    ),
    told,
  );
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const [a = 0, b = 0, c = 0, d = 0] = boxes.map(({ valueAsNumber }) => valueAsNumber);
    const count = { a, b, c, d };
    try {
      told.textContent = `${words.advice}: ${pollAdviceInWords(pollAdvice(count, letters[asked.answer] ?? "a"), vote)}`;
      take(count);
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      told.textContent = words.badCount;
    }
  });
  return form;
}

/** Why each answer is right or not, with how many held it. */
function answerOf(asked: Asked, votes: readonly PollCount[]): HTMLElement {
  const items = asked.choices.map((_, index) => {
    const item = explained(asked, index);
    const counts = votes.map((count) => String(count[letters[index] ?? "a"]));
    if (counts.length > 0) item.append(element("p", { class: "about" }, words.votes(counts)));
    return item;
  });
  const shares = votes.map((count) => {
    const of = count.a + count.b + count.c + count.d;
    return words.rightOf(count[letters[asked.answer] ?? "a"], of);
  });
  return element(
    "section",
    { class: "answer", tabindex: "-1" },
    element("p", {}, `${words.model} ${words.letters[asked.answer]}. `, shares.join(", ")),
    element("ol", { type: "A" }, ...items),
  );
}

function show(place: HTMLElement, idea: IdeaName, form: Form): void {
  const asked = ask(idea, form);
  const projected = sheet(asked);
  const votes: PollCount[] = [];
  const answer = element("div");
  const other: Form = form === "first" ? "twin" : "first";
  const reveal = button(words.showAnswer, () => {
    const shown = answerOf(
      asked,
      votes.filter((count) => count !== undefined),
    );
    answer.replaceChildren(shown);
    shown.focus();
  });
  const fill = button(words.fill, () => projected.requestFullscreen?.().catch(() => {}));
  place.replaceChildren(
    topicChoice(idea, (chosen) => {
      show(place, chosen, "first");
      place.querySelector("select")?.focus();
    }),
    projected,
    element(
      "p",
      { class: "doing" },
      fill,
      button(words.print, () => print()),
    ),
    voteForm(asked, 1, (count) => {
      votes[0] = count;
    }),
    voteForm(asked, 2, (count) => {
      votes[1] = count;
    }),
    element(
      "p",
      { class: "doing" },
      reveal,
      button(form === "first" ? words.askTwin : words.askFirst, () => {
        show(place, idea, other);
        place.querySelector<HTMLElement>(".projected")?.focus();
      }),
    ),
    answer,
  );
}

/** One question at a time for a room: large type, two votes, advice. */
export const classPart: Part = part("class", words.classIntro, (place, query) => {
  const { idea, form } = wantedIn(query);
  show(place, idea, form);
});
