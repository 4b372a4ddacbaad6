import { element } from "@rollbook/page";
import { misconceptions } from "../bank/index.js";
import { type Given, isRight } from "../record/given.js";
import { words } from "../words.js";
import { answers, keepAnswers } from "./answers.js";
import { ask } from "./ask.js";
import { bring, card } from "./card.js";
import { gainList } from "./gain-list.js";
import { button, type Part, part } from "./part.js";

type Check = "before" | "after";

const formOf = { before: "first", after: "twin" } as const;

const answersOf = (check: Check): Given[] => answers().filter(({ occasion }) => occasion === check);

/** The next question that this check has not asked yet, or what came of it. */
function show(place: HTMLElement, check: Check, focus: boolean): void {
  const given = answersOf(check);
  const open = misconceptions.filter(({ idea }) => !given.some(({ asked }) => asked === idea));
  const [next] = open;
  if (!next) {
    place.replaceChildren(
      ...(check === "before" ? beforeDone(given) : afterDone(given)),
      again(place, check),
    );
    if (focus) place.querySelector<HTMLElement>("[tabindex]")?.focus();
    return;
  }
  const number = misconceptions.length - open.length + 1;
  const progress = element(
    "p",
    { class: "progress" },
    words.progress(number, misconceptions.length),
  );
  const question = card(ask(next.idea, formOf[check]), {
    occasion: check,
    explain: false,
    answered: () => show(place, check, true),
  });
  if (focus) bring(place, progress, question);
  else place.replaceChildren(progress, question);
}

const rightIn = (given: readonly Given[]): number => given.filter(isRight).length;

const result = (text: string) => element("p", { class: "result", tabindex: "-1" }, text);

/** Only where to read: which answers were wrong is for the chapters to tell. */
function beforeDone(given: readonly Given[]): HTMLElement[] {
  const wrong = given.filter((one) => !isRight(one)).map(({ asked }) => asked);
  const chapters = misconceptions
    .filter(({ idea }) => wrong.includes(idea))
    .map(({ chapter }) => chapter);
  const links = [...new Set(chapters)].sort().map((chapter) => {
    const count = chapters.filter((one) => one === chapter).length;
    const link = element("a", { href: `${chapter}.html` }, words.chapter(chapter.slice(0, 2)));
    return element("li", {}, link, `: ${words.countOf(count)}`);
  });
  const done = result(words.beforeDone(rightIn(given), given.length));
  return links.length > 0
    ? [done, element("p", {}, words.chaptersFor), element("ul", {}, ...links)]
    : [done];
}

const afterDone = (given: readonly Given[]): HTMLElement[] => [
  result(words.afterDone(rightIn(given), given.length)),
  ...gainList(answers()),
];

function again(place: HTMLElement, check: Check): HTMLElement {
  return button(words.startAgain, () => {
    if (!confirm(words.sureToStart)) return;
    void keepAnswers(answers().filter(({ occasion }) => occasion !== check));
    show(place, check, true);
  });
}

/** One of the two checks. */
export const checkPart = (check: Check): Part =>
  part(check, check === "before" ? words.beforeIntro : words.afterIntro, (place) =>
    show(place, check, false),
  );
