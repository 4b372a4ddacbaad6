import { element } from "@rollbook/page";
import { today } from "../record/given.js";
import { formFor, warmUpFor } from "../record/pick.js";
import { words } from "../words.js";
import { answers } from "./answers.js";
import { ask } from "./ask.js";
import { card } from "./card.js";

/** Two questions from earlier chapters, under the fold that the chapter offers. */
export function warmUp(place: HTMLElement): void {
  const given = answers();
  const picked = warmUpFor(document.documentElement.dataset.page ?? "", given, today());
  const cards = picked.map((idea) =>
    card(ask(idea, formFor(idea, given)), { occasion: "warm-up", explain: true }),
  );
  const intro = cards.length > 0 ? words.warmUpIntro : words.warmUpDone;
  const all = element("a", { href: "questions.html" }, words.allQuestions);
  place.append(element("p", {}, `${intro} `, all, "."), ...cards);
}
