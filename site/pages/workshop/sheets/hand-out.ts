import { gradeOf, parameters, type SheetRow, type VenueCorner } from "@rollbook/lib";
import { element, format, reader } from "@rollbook/page";
import type { Draft } from "../day/draft.js";
import { toDoInWords } from "../day/row-words.js";
import { listOf } from "../parts/fields.js";
import { table } from "../parts/table.js";
import { words } from "../words.js";
import { paper } from "./paper.js";

const { sheets: said } = words;

/** What everybody gets: the idea, the runs without what to expect of them, the corners, how to report. */
export function handOut(day: Draft, rows: readonly SheetRow[]): HTMLElement[] {
  const runs = rows.map((row, i) => {
    const toDo = toDoInWords(row, rows[i - 1]?.car ?? day.car, reader).join("; ");
    return element(
      "li",
      {},
      element("b", {}, words.run.kinds[row.step.kind]),
      toDo === "" ? "" : `: ${toDo}`,
    );
  });
  return [
    paper(
      day,
      day.name,
      ...titled(said.idea, element("p", {}, said.ideaText)),
      ...titled(said.runs, element("ol", { class: "plain" }, ...runs)),
      ...titled(said.corners, corners(day)),
      ...titled(said.howToReport, listOf(said.reportLines)),
      ...titled(said.safety, listOf([words.safety.first, words.safety.stop, words.safety.rules])),
    ),
  ];
}

const titled = (title: string, content: HTMLElement): HTMLElement[] => [
  element("h4", {}, title),
  content,
];

const corners = ({ venue }: Draft): HTMLElement =>
  table(said.corners, Object.values(said.cornerColumns), venue.corners.map(cornerRow));

function cornerRow(corner: VenueCorner): string[] {
  const { name, direction, radius, speed, surface = "smooth" } = corner;
  const { cornerRadius, speed: anySpeed } = parameters;
  return [
    name,
    words[direction],
    format(cornerRadius.quantity, radius, cornerRadius.decimals),
    format(anySpeed.quantity, speed, anySpeed.decimals),
    gradeOf(corner),
    words.plan.surfaces[surface],
  ];
}
