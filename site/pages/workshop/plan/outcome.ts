import { type Car, parameters, phaseNames, type SheetRow } from "@rollbook/lib";
import { element, reader, spell } from "@rollbook/page";
import { movedInWords } from "../../../say/figures.js";
import { asides, bewares } from "../day/beware.js";
import { marginAmount, tightest, toDoInWords } from "../day/row-words.js";
import { listOf } from "../parts/fields.js";
import { fold } from "../parts/fold.js";
import { shiftBars, shiftText } from "../parts/shift-bars.js";
import { words } from "../words.js";

const { plan } = words;

/** What the model says of one run of the plan. */
export function outcome(row: SheetRow, before: Car): HTMLElement[] {
  const id = `run-${row.run}`;
  const toDo = toDoInWords(row, before, reader);
  const end = row.startsAt + row.lasts;
  const moves = row.moved === undefined ? [] : movedInWords(row.moved, reader);
  return [
    element("p", { class: "when" }, plan.from(words.hours(row.startsAt), words.hours(end))),
    ...bewares(row).map((sentence) => element("p", { class: "beware" }, spell(sentence))),
    ...(toDo.length > 0
      ? [listOf(toDo, "to-do")]
      : [element("p", { class: "quiet" }, plan.nothingToDo)]),
    ...(row.phases !== undefined && row.toDo.length > 0
      ? [shiftBars(row.phases, plan.shifts)]
      : []),
    ...asides(row).map((sentence) => element("p", { class: "quiet" }, spell(sentence))),
    fold(`${id}-margins`, plan.margins, margins(row)),
    ...(row.toDo.length > 0 ? [fold(`${id}-corners`, plan.byCorner, byCorner(row))] : []),
    ...(moves.length > 0 ? [fold(`${id}-moves`, plan.moves, listOf(moves))] : []),
  ];
}

function margins({ margins: all }: SheetRow): HTMLElement {
  if (all.length === 0) return element("p", {}, plan.noLimits);
  const texts = tightest(all).map((margin) => {
    const say = margin.margin < 0 ? plan.overLimit : plan.margin;
    const { name } = parameters[margin.parameter];
    return say(name, margin.where, marginAmount(margin, reader.units), plan.limit[margin.kind]);
  });
  return listOf(texts);
}

/** Corners down, parts of the corner across. */
function byCorner({ cells, run }: SheetRow): HTMLElement {
  const corners = [...new Set(cells.map(({ corner }) => corner))];
  const head = phaseNames.map((phase) => element("th", { scope: "col" }, phase));
  const rows = corners.map((corner) => {
    const shifts = phaseNames.map(
      (phase) => cells.find((cell) => cell.corner === corner && cell.phase === phase)?.shift ?? 0,
    );
    const numbers = shifts.map((shift) => element("td", { class: "number" }, shiftText(shift)));
    return element("tr", {}, element("th", { scope: "row" }, corner), ...numbers);
  });
  const heading = element("tr", {}, element("td", {}), ...head);
  const table = element("table", {}, element("thead", {}, heading), element("tbody", {}, ...rows));
  return element(
    "div",
    {
      class: "table",
      role: "region",
      tabindex: 0,
      "aria-label": `${plan.byCorner}, ${plan.run(run)}`,
    },
    table,
  );
}
