import { element } from "@rollbook/page";

type Cell = Node | string;

/** A table that scrolls in itself where it is wider than the page. */
export function table(
  label: string,
  columns: readonly string[],
  rows: readonly (readonly Cell[])[],
): HTMLElement {
  const head = columns.map((name) => element("th", { scope: "col" }, name));
  const body = rows.map((row) => element("tr", {}, ...row.map((cell) => element("td", {}, cell))));
  return element(
    "div",
    { class: "table", role: "region", tabindex: 0, "aria-label": label },
    element(
      "table",
      {},
      element("thead", {}, element("tr", {}, ...head)),
      element("tbody", {}, ...body),
    ),
  );
}
