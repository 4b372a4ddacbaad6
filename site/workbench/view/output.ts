import { element, exerciseInner, fill, predictInner, workedInner } from "@rollbook/page";
import type { Output, Reply } from "../model/results.js";
import { liveFigure } from "./figure.js";

type Values = Readonly<Record<string, number>>;

/** A box whose inside the cells' own templates write, which escape every text. */
function box(kind: string, id: string, inner: string): HTMLElement {
  const made = element("div", { class: kind, id });
  fill(made, inner);
  return made;
}

/** A result as the chapter would show it, all folds within reach and nothing locked. */
export function shownOutput(
  id: string,
  output: Output,
  draw: (values: Values) => Promise<Reply | string>,
): HTMLElement {
  switch (output.kind) {
    case "figure":
      return liveFigure(id, output, draw);
    case "worked":
      return box("worked", id, workedInner(output));
    case "predict":
      return box("predict", id, predictInner(output));
    case "exercise":
      return box("exercise", id, exerciseInner(output));
  }
}
