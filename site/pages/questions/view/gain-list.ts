import { element, spell } from "@rollbook/page";
import { ideas } from "../bank/ideas.js";
import { countsOf, type Gain, gainsOf } from "../record/gain.js";
import { type Given, isRight } from "../record/given.js";
import { words } from "../words.js";
import { topicOf } from "./ask.js";

const was = (given: Given): string =>
  words.was(isRight(given), words.confidences[given.confidence] ?? "");

function row({ asked, before, after, outcome, twinMet }: Gain): HTMLElement {
  const came = outcome ? `: ${words.outcomes[outcome]}` : "";
  const both = [
    ...(before ? [`${words.beforeWas}: ${was(before)}.`] : []),
    ...(after ? [`${words.afterWas}: ${was(after)}${twinMet ? ` (${words.met})` : ""}.`] : []),
  ];
  const held = after?.idea ? ` ${words.heldOn(spell(ideas[after.idea].belief))}` : "";
  const link = `#one?question=${asked}&form=twin`;
  return element(
    "li",
    { ...(outcome && { "data-outcome": outcome }) },
    element("b", {}, topicOf(asked), came),
    element("br"),
    `${both.join(" ")}${held} `,
    element(
      "a",
      { href: link, "aria-label": `${words.lookAgain}: ${topicOf(asked)}` },
      words.lookAgain,
    ),
  );
}

/** What became of each misconception between the checks, in counts. */
export function gainList(answers: readonly Given[]): HTMLElement[] {
  const gains = gainsOf(answers);
  const { both, rightBefore, rightAfter, certainAndWrong } = countsOf(gains);
  const summary =
    both === 0
      ? [words.noBefore]
      : [
          words.compared(both, rightBefore, rightAfter),
          words.certain(certainAndWrong.before, certainAndWrong.after),
          words.fewSay,
        ];
  return [
    ...summary.map((text) => element("p", {}, text)),
    element("ol", { class: "gains" }, ...gains.map(row)),
  ];
}
