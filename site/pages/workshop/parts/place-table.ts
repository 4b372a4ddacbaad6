import { element } from "@rollbook/page";

type Cell = Node | string;

/** A row of a table of places: where and when, then its cells. */
export interface PlaceRow {
  readonly corner: string;
  readonly phase: string;
  readonly cells: readonly Cell[];
}

/**
 * A table with a row for each part of each corner; on a narrow screen each is a block of its own.
 *
 * The roles are written out because a browser forgets them where a row is laid out as a block.
 */
export function placeTable(
  label: string,
  columns: readonly [corner: string, phase: string, ...others: string[]],
  rows: readonly PlaceRow[],
): HTMLElement {
  const [, , ...others] = columns;
  const head = columns.map((name) => element("th", { scope: "col", role: "columnheader" }, name));
  return element(
    "div",
    { class: "table", role: "region", tabindex: 0, "aria-label": label },
    element(
      "table",
      { class: "by-place", role: "table" },
      element("thead", { role: "rowgroup" }, element("tr", { role: "row" }, ...head)),
      element("tbody", { role: "rowgroup" }, ...rows.map((row) => placeRow(row, others))),
    ),
  );
}

function placeRow({ corner, phase, cells }: PlaceRow, labels: readonly string[]): HTMLElement {
  const others = cells.map((cell, i) =>
    element("td", { role: "cell", "data-label": labels[i] ?? "" }, cell),
  );
  return element(
    "tr",
    { role: "row" },
    element("th", { role: "rowheader", scope: "row" }, corner),
    element("td", { role: "cell", class: "phase" }, phase),
    ...others,
  );
}
