import { arrow, dot, line, type Markish, text } from "@observablehq/plot";
import type { Mark, Point, Side, Tone } from "../../../cells/marks.js";

const colours: Record<Tone, string> = {
  front: "#0b6b8a",
  rear: "#b0500f",
  outside: "#43348f",
  inside: "#7b69c4",
  ink: "currentColor",
  muted: "#6a6f75",
  accent: "#8a2f6b",
  warn: "#b3261e",
  links: "#7a5c00",
  dampers: "#2e6b3a",
  springs: "#1f4fa3",
  tyres: "#5b4a3f",
};

const dashes: Partial<Record<Tone, string>> = { rear: "8 4", inside: "2 3", muted: "4 4" };
const weights = { fine: 1.25, normal: 2.5, heavy: 4 };

const anchors = {
  above: { textAnchor: "middle", dx: 0, dy: -14 },
  below: { textAnchor: "middle", dx: 0, dy: 15 },
  left: { textAnchor: "end", dx: -9, dy: 0 },
  right: { textAnchor: "start", dx: 9, dy: 0 },
  middle: { textAnchor: "middle", dx: 0, dy: 0 },
} as const satisfies Record<Side, object>;

const isFinitePoint = ([x, y]: Point): boolean => Number.isFinite(x) && Number.isFinite(y);

/** Points with a gap wherever one is not finite. */
const withGaps = (points: readonly Point[]): Point[] =>
  points.map((point) => (isFinitePoint(point) ? point : [Number.NaN, Number.NaN]));

function words(said: string, at: Point | undefined, tone: Tone, side: Side): Markish {
  if (said === "" || !at || !isFinitePoint(at)) return null;
  return text([at], { text: [said], fill: colours[tone], ...anchors[side] });
}

type Drawn<Kind extends Mark["kind"]> = (mark: Extract<Mark, { kind: Kind }>) => Markish;

const drawn: { readonly [Kind in Mark["kind"]]: Drawn<Kind> } = {
  line: ({ points, tone, weight, label, side }) => [
    line(withGaps(points), {
      stroke: colours[tone],
      strokeWidth: weights[weight],
      strokeDasharray: dashes[tone] ?? "none",
      clip: true,
    }),
    words(label, points.findLast(isFinitePoint), tone, side),
  ],
  area: ({ points, tone }) =>
    line(withGaps(points), {
      curve: "linear-closed",
      stroke: "none",
      fill: colours[tone],
      fillOpacity: 0.22,
      clip: true,
    }),
  dot: ({ at, tone, label, side }) => [
    dot([at].filter(isFinitePoint), {
      symbol: tone === "rear" ? "square" : "circle",
      r: 6,
      fill: colours[tone],
      stroke: "white",
    }),
    words(label, at, tone, side),
  ],
  arrow: ({ from, to, tone, label, side }) => [
    arrow(
      [[...from, ...to]].filter((ends) => ends.every(Number.isFinite)),
      {
        x1: "0",
        y1: "1",
        x2: "2",
        y2: "3",
        stroke: colours[tone],
        strokeWidth: 2.5,
        headLength: 4,
      },
    ),
    words(label, from, tone, side),
  ],
  label: ({ text: said, at, tone, side }) => words(said, at, tone, side),
};

/** A mark of a panel as marks of a plot. */
export const plotMarks = (mark: Mark): Markish => (drawn[mark.kind] as Drawn<Mark["kind"]>)(mark);
