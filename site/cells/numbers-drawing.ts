import type { AreaMark, Mark, Point, Tone } from "./marks.js";
import type { Table } from "./numbers.js";
import { spell } from "./reader.js";
import type { Drawing, Interval } from "./spec.js";
import { words } from "./words.js";

const sides: readonly Tone[] = ["front", "rear", "outside", "inside"];

/** In which ninth of a drawing a point is. */
function ninthOf([x, y]: Point, { view }: Drawing<never>): string {
  const third = (value: number, [from, to]: Interval) =>
    Math.min(2, Math.max(0, Math.floor((3 * (value - from)) / (to - from))));
  const [across, up] = [words.across[third(x, view.x)], words.up[third(y, view.y)]];
  return [up, across].filter((word) => word !== "").join(" ") || words.centre;
}

const placeOf = (mark: Exclude<Mark, AreaMark>): Point => {
  if (mark.kind === "line") return mark.points.at(-1) ?? [0, 0];
  return mark.kind === "arrow" ? mark.from : mark.at;
};

/** What is written in a drawing, in the order it is drawn, and where. */
export function tablesOfDrawing(drawing: Drawing<never>, marks: readonly Mark[]): Table[] {
  const rows = marks.flatMap((mark) => {
    if (mark.kind === "area") return [];
    const text = mark.kind === "label" ? mark.text : mark.label;
    if (text === "") return [];
    const side = sides.includes(mark.tone) ? words.tones[mark.tone] : "";
    const ninth = ninthOf(placeOf(mark), drawing);
    return [[spell(text), side === "" || text.includes(side) ? ninth : `${side}, ${ninth}`]];
  });
  return rows.length === 0 ? [] : [{ head: [words.written, words.where], rows }];
}
