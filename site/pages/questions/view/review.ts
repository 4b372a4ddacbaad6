import { element } from "@rollbook/page";
import type { IdeaName } from "../bank/ideas.js";
import { type Given, today } from "../record/given.js";
import { formFor } from "../record/pick.js";
import { dueOn, type Review, reviewsOf } from "../record/review.js";
import { words } from "../words.js";
import { answers } from "./answers.js";
import { ask } from "./ask.js";
import { bring, card } from "./card.js";
import { button, type Part, part } from "./part.js";

/** When a question comes back, in a sentence. */
function comesBack(asked: IdeaName): string {
  const due = reviewsOf(answers()).find((review) => review.asked === asked)?.due;
  return due === undefined ? words.allPassed : words.comesBack(Math.max(1, due - today()));
}

/** What is due on later days, a line a day. */
function outlook(reviews: readonly Review[]): HTMLElement {
  const waits = reviews.flatMap(({ due }) =>
    due !== undefined && due > today() ? [due - today()] : [],
  );
  const lines = [...new Set(waits)].map((wait) =>
    words.later(waits.filter((one) => one === wait).length, wait),
  );
  const through = reviews.filter(({ due }) => due === undefined).length;
  const all = through > 0 ? [...lines, words.passed(through)] : lines;
  return element("ul", {}, ...all.map((line) => element("li", {}, line)));
}

function show(place: HTMLElement, focus: boolean): void {
  const given = answers();
  const [reviews, due] = [reviewsOf(given), dueOn(today(), given)];
  const [first] = due;
  if (!first) {
    const text = reviews.length === 0 ? words.nothingYet : words.nothingDue;
    const told = element("p", { class: "result", tabindex: "-1" }, text);
    place.replaceChildren(told, outlook(reviews));
    if (focus) told.focus();
    return;
  }
  const answered = (answer: Given, shown: HTMLElement) => {
    shown.append(
      element("p", {}, comesBack(answer.asked)),
      button(words.next, () => show(place, true)),
    );
  };
  const asked = ask(first.asked, formFor(first.asked, given));
  const question = card(asked, { occasion: "review", explain: true, answered });
  const count = element("p", { class: "progress" }, words.due(due.length));
  if (focus) bring(place, count, question);
  else place.replaceChildren(count, question);
}

/** The questions whose day has come. */
export const reviewPart: Part = part("review", words.reviewIntro, (place) => show(place, false));
