import { rotation, roundsOf, type SheetRow, stages } from "@rollbook/lib";
import { element, reader, spell } from "@rollbook/page";
import { warningInWords } from "../../../say/plan.js";
import type { Draft } from "../day/draft.js";
import { toDoInWords } from "../day/row-words.js";
import { listOf } from "../parts/fields.js";
import { roundInWords } from "../plan/rotation-table.js";
import { words } from "../words.js";
import { paper } from "./paper.js";

const { sheets: said } = words;

/** The whole day on a page: when, what, how long, who. */
export function runSheet(day: Draft, rows: readonly SheetRow[]): HTMLElement[] {
  const head = Object.values(said.columns).map((name) => element("th", { scope: "col" }, name));
  const body = rows.map((row, i) => runRow(day, row, rows[i - 1]));
  const last = rows.at(-1);
  const end = last === undefined ? "" : said.over(words.hours(last.startsAt + last.lasts));
  const { car, venue, minutes, cars, drivers } = day;
  const facts = said.facts(car.name, venue.name, words.hours(minutes), cars, drivers.length);
  const table = element(
    "table",
    { class: "run-sheet" },
    element("thead", {}, element("tr", {}, ...head)),
    element("tbody", {}, ...body),
  );
  return [
    paper(
      day,
      `${said.runSheet}: ${day.name}`,
      element("p", {}, facts),
      table,
      element("p", {}, end),
    ),
  ];
}

function runRow(day: Draft, row: SheetRow, before: SheetRow | undefined): HTMLElement {
  const toDo = toDoInWords(row, before?.car ?? day.car, reader);
  const rounds = rotation(day.drivers, day.cars, row.run).map((round) =>
    element("li", {}, roundInWords({ ...round, waiting: [] })),
  );
  const note = row.step.note === undefined ? [] : [element("p", {}, row.step.note)];
  const beware = cautions(row).map((text) => element("p", { class: "beware" }, spell(text)));
  return element(
    "tr",
    {},
    element("td", { class: "start" }, words.hours(row.startsAt)),
    element("td", {}, String(row.run)),
    element(
      "td",
      {},
      element("b", {}, words.run.kinds[row.step.kind]),
      listOf(toDo),
      ...note,
      ...beware,
    ),
    element("td", {}, minutesInWords(row, roundsOf(day))),
    element("td", {}, element("ol", { class: "plain" }, ...rounds)),
    element("td", { class: "box" }, "☐"),
  );
}

/** What drivers may read: a first lap slowly after any change, so that it does not tell what to feel. */
function cautions({ toDo, warnings }: SheetRow): string[] {
  const others = warnings.filter(({ code }) => code !== "towards-the-rear");
  const first = toDo.length > 0 ? [said.firstSlowly] : [];
  return [...first, ...others.map((one) => warningInWords(one, reader))];
}

function minutesInWords({ minutes }: SheetRow, rounds: number): string {
  const each = stages
    .filter((stage) => minutes[stage] > 0)
    .map((stage) => {
      const times = stage === "drive" && rounds > 1 ? ` × ${rounds}` : "";
      return said.stageMinutes(words.stages[stage], `${minutes[stage]}${times}`);
    });
  return each.join(", ");
}
