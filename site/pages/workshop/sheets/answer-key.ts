import type { SheetRow } from "@rollbook/lib";
import { element, reader, spell } from "@rollbook/page";
import { asides, bewares } from "../day/beware.js";
import type { Draft } from "../day/draft.js";
import { toDoInWords } from "../day/row-words.js";
import { shiftBars } from "../parts/shift-bars.js";
import { readyQuestions } from "../run/vote-state.js";
import { words } from "../words.js";
import { paper, secret } from "./paper.js";

const { sheets: said } = words;

/** What the model predicts for each run, and the right letters: for the instructor alone. */
export function answerKey(day: Draft, rows: readonly SheetRow[]): HTMLElement[] {
  const runs = rows.flatMap((row, i) => runKey(day, row, rows[i - 1]));
  const sheet = paper(
    day,
    said.key,
    element("p", {}, said.keyHelp),
    element("div", { class: "keys" }, ...runs),
    element("h4", {}, said.votes),
    element("ol", { class: "votes" }, ...questions()),
  );
  return [secret(sheet)];
}

function runKey(day: Draft, row: SheetRow, before: SheetRow | undefined): HTMLElement[] {
  if (row.phases === undefined || row.toDo.length === 0) return [];
  const toDo = toDoInWords(row, before?.car ?? day.car, reader).map((label) => spell(label));
  return [
    element(
      "section",
      { class: "key" },
      element("h4", {}, `${words.plan.run(row.run)}: ${toDo.join("; ")}`),
      shiftBars(row.phases, said.keyShifts),
      ...bewares(row).map((sentence) => element("p", { class: "beware" }, spell(sentence))),
      ...asides(row).map((sentence) => element("p", {}, spell(sentence))),
    ),
  ];
}

function questions(): HTMLElement[] {
  return readyQuestions
    .filter(({ form }) => form === "first")
    .map(({ ask }) => {
      const asked = ask();
      const right = asked.choices[asked.answer];
      const letter = words.run.letters[asked.answer] ?? "";
      const line = said.right(letter, spell(`${right?.text ?? ""} ${right?.because ?? ""}`));
      return element(
        "li",
        {},
        element("p", {}, spell(asked.ask)),
        element("p", {}, element("b", {}, line)),
      );
    });
}
