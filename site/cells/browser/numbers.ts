import type { Table } from "../numbers.js";
import { words } from "../words.js";
import { element } from "./element.js";

function filled({ head, rows }: Table): HTMLElement {
  const columns = head.map((text) => element("th", { scope: "col" }, text));
  const lines = rows.map(([first = "", ...others]) =>
    element(
      "tr",
      {},
      element("th", { scope: "row" }, first),
      ...others.map((text) => element("td", {}, text)),
    ),
  );
  return element(
    "table",
    {},
    element("thead", {}, element("tr", {}, ...columns)),
    element("tbody", {}, ...lines),
  );
}

/** A fold with a figure's tables, filled anew while it is open; shut, it costs nothing. */
export function numbersFold(label: string): {
  readonly fold: HTMLDetailsElement;
  show(tables: () => readonly Table[]): void;
} {
  const region = { class: "table", tabindex: 0, role: "region", "aria-label": label };
  const body = element("div", region);
  const fold = element(
    "details",
    { class: "numbers" },
    element("summary", {}, words.inNumbers),
    body,
  );
  let latest: () => readonly Table[] = () => [];
  const fill = () => {
    if (fold.open) body.replaceChildren(...latest().map(filled));
  };
  fold.addEventListener("toggle", fill);
  return {
    fold,
    show(tables) {
      latest = tables;
      fill();
    },
  };
}
