import { element } from "@rollbook/page";
import type { IdeaName } from "../bank/ideas.js";
import { misconceptions } from "../bank/index.js";
import type { Form } from "../bank/question.js";
import { words } from "../words.js";
import { ask, topicOf } from "./ask.js";
import { bring, card } from "./card.js";
import { button, type Part, part } from "./part.js";

/** A choice among the fifteen. */
export function topicChoice(chosen: IdeaName, choose: (idea: IdeaName) => void): HTMLElement {
  const options = misconceptions.map(({ idea }) =>
    element("option", { value: idea, selected: idea === chosen }, topicOf(idea)),
  );
  const select = element("select", {}, ...options);
  select.addEventListener("change", () => choose(select.value as IdeaName));
  return element("label", { class: "topic" }, `${words.topic} `, select);
}

/** The question that a link asks for, or the first. */
export function wantedIn(query: URLSearchParams): { idea: IdeaName; form: Form } {
  const named = misconceptions.find(({ idea }) => idea === query.get("question"));
  const idea = (named ?? misconceptions[0])?.idea ?? "stiffer-moves-more";
  return { idea, form: query.get("form") === "twin" ? "twin" : "first" };
}

function show(place: HTMLElement, idea: IdeaName, form: Form, focus: boolean): void {
  const question = card(ask(idea, form), {
    occasion: "single",
    explain: true,
    answered: (_, shown) => {
      const other: Form = form === "first" ? "twin" : "first";
      const text = form === "first" ? words.askTwin : words.askFirst;
      shown.append(button(text, () => show(place, idea, other, true)));
    },
  });
  const choice = topicChoice(idea, (chosen) => {
    show(place, chosen, "first", false);
    place.querySelector("select")?.focus();
  });
  if (focus) bring(place, choice, question);
  else place.replaceChildren(choice, question);
}

/** Any question, explained at once. */
export const onePart: Part = part("one", words.oneIntro, (place, query) => {
  const { idea, form } = wantedIn(query);
  show(place, idea, form, false);
});
