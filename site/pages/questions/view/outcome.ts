import { element, spell } from "@rollbook/page";
import { type Asked, refutation } from "../bank/asked.js";
import { words } from "../words.js";

const letterOf = (index: number): string => words.letters[index] ?? "";

/** A link to where an idea can be seen to fail, with what to look at. */
export function sight(idea: Asked["choices"][number]["idea"]): HTMLElement[] {
  if (idea === undefined) return [];
  const { href, sight: seen } = refutation(idea);
  return [
    element(
      "span",
      { class: "sight" },
      element("a", { href }, words.seeIt),
      `: ${spell(seen.look)}`,
    ),
  ];
}

/** One answer with its verdict, its reason and where to see it. */
export function explained(asked: Asked, index: number): HTMLLIElement {
  const choice = asked.choices[index];
  const verdict = index === asked.answer ? words.right : words.notSo;
  return element(
    "li",
    { value: index + 1 },
    element("b", {}, spell(choice?.text ?? "")),
    element("br"),
    `${verdict} ${spell(choice?.because ?? "")} `,
    ...sight(choice?.idea),
  );
}

/** What comes of an answer: its own reason first, then the right one, the others folded. */
export function outcome(asked: Asked, chosen: number, confidence: number): HTMLElement {
  const right = chosen === asked.answer;
  const sure = words.confidences[confidence] ?? "";
  const said = `${words.youSaid(letterOf(chosen), sure)} `;
  const certain = !right && confidence === words.confidences.length - 1;
  const others = asked.choices.flatMap((_, index) =>
    index === chosen || index === asked.answer ? [] : [explained(asked, index)],
  );
  const list = (...items: HTMLElement[]) => element("ol", { type: "A" }, ...items);
  return element(
    "div",
    { class: "outcome", tabindex: "-1", "data-right": String(right) },
    element("p", { class: "ask" }, spell(asked.ask)),
    element(
      "p",
      {},
      said,
      element("b", {}, right ? words.right : words.notSo),
      certain ? ` ${words.certainAndWrong}` : "",
    ),
    list(explained(asked, chosen)),
    ...(right
      ? []
      : [
          element("p", {}, `${words.model} ${letterOf(asked.answer)}.`),
          list(explained(asked, asked.answer)),
        ]),
    element("details", {}, element("summary", {}, words.others), list(...others)),
  );
}
