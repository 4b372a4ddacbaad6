import type { ArrowMark, DotMark, LineMark, Mark, Point, Side, Tone } from "./marks.js";
import { spell } from "./reader.js";
import { thin } from "./thin.js";

/** An SVG element to be: its layer is cut off at the frame or not. */
export interface Shape {
  readonly layer: "clipped" | "free";
  readonly tag: "path" | "text";
  readonly attributes: Readonly<Record<string, string>>;
  readonly text: string;
}

export interface Frame {
  readonly width: number;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
}

/** Colours hold in a notebook front end; the course's style sheet sets the variables for its themes. */
const colours: Record<Tone, string> = {
  front: "var(--tone-front, #0b6b8a)",
  rear: "var(--tone-rear, #b0500f)",
  outside: "var(--tone-outside, #43348f)",
  inside: "var(--tone-inside, #8d7bd1)",
  ink: "currentColor",
  muted: "var(--tone-muted, #75797f)",
  accent: "var(--tone-accent, #8a2f6b)",
  warn: "var(--tone-warn, #b3261e)",
  links: "var(--tone-links, #7a5c00)",
  dampers: "var(--tone-dampers, #2e6b3a)",
  springs: "var(--tone-springs, #1f4fa3)",
  tyres: "var(--tone-tyres, #5b4a3f)",
};

const dashes: Partial<Record<Tone, string>> = { rear: "8 4", inside: "2 3", muted: "4 4" };
const weights = { fine: "1.25", normal: "2.5", heavy: "4" };
/** Of the larger type that a phone gets. */
const characterWidth = 9.5;

const isFinitePoint = ([x, y]: Point): boolean => Number.isFinite(x) && Number.isFinite(y);

/** Runs of points without a gap. */
function runsOf(points: readonly Point[]): Point[][] {
  const runs: Point[][] = [[]];
  for (const point of points) {
    if (isFinitePoint(point)) runs.at(-1)?.push(point);
    else runs.push([]);
  }
  return runs;
}

const TENTHS = 10; // of a user unit: finer than a screen shows

/**
 * The points as a path, with a gap wherever one is missing. After its first point a run goes on by
 * differences, which are shorter; they are differences of rounded places, so that no error adds up.
 */
function pathOf(points: readonly Point[], { x, y }: Frame): string {
  const tenths = (value: number) => Math.round(value * TENTHS);
  const paths = runsOf(points).map((run) => {
    const places = thin(run.map(([px, py]): Point => [x(px), y(py)])).map(
      ([px, py]): Point => [tenths(px), tenths(py)],
    );
    return places
      .map(([px, py], i) => {
        const [fromX, fromY] = places[i - 1] ?? [0, 0];
        const command = ["M", "l"][i] ?? " ";
        return `${command}${(px - fromX) / TENTHS} ${(py - fromY) / TENTHS}`;
      })
      .join("")
      .replaceAll(" -", "-");
  });
  return paths.join("");
}

function path(layer: Shape["layer"], attributes: Record<string, string>): Shape {
  return { layer, tag: "path", attributes: { fill: "none", ...attributes }, text: "" };
}

const anchors: Record<Side, { anchor: string; dx: number; dy: number }> = {
  above: { anchor: "middle", dx: 0, dy: -10 },
  below: { anchor: "middle", dx: 0, dy: 20 },
  left: { anchor: "end", dx: -9, dy: 4 },
  right: { anchor: "start", dx: 9, dy: 4 },
  middle: { anchor: "middle", dx: 0, dy: 4 },
};

/** Words, kept inside the picture from left to right. */
function words(text: string, at: Point, tone: Tone, side: Side, frame: Frame): Shape[] {
  if (text === "" || !isFinitePoint(at)) return [];
  const { anchor, dx, dy } = anchors[side];
  const width = text.length * characterWidth;
  const leftEnd = { start: 0, middle: width / 2, end: width }[anchor] ?? 0;
  const free = frame.x(at[0]) + dx;
  const x = Math.max(leftEnd, Math.min(frame.width - (width - leftEnd), free));
  return [
    {
      layer: "free",
      tag: "text",
      attributes: {
        x: x.toFixed(1),
        y: (frame.y(at[1]) + dy).toFixed(1),
        "text-anchor": anchor,
        fill: colours[tone],
      },
      text: spell(text),
    },
  ];
}

function lineShapes(mark: LineMark, frame: Frame): Shape[] {
  const end = mark.points.findLast(isFinitePoint);
  return [
    path("clipped", {
      d: pathOf(mark.points, frame),
      stroke: colours[mark.tone],
      "stroke-width": weights[mark.weight],
      "stroke-dasharray": dashes[mark.tone] ?? "none",
      "stroke-linejoin": "round",
    }),
    ...(end ? words(mark.label, end, mark.tone, mark.side, frame) : []),
  ];
}

function dotShapes(mark: DotMark, frame: Frame): Shape[] {
  if (!isFinitePoint(mark.at)) return [];
  const x = frame.x(mark.at[0]).toFixed(1);
  const y = frame.y(mark.at[1]).toFixed(1);
  const d =
    mark.tone === "rear"
      ? `M${x} ${y}m-5-5h10v10h-10z`
      : `M${x} ${y}m-6 0a6 6 0 1 0 12 0a6 6 0 1 0-12 0z`;
  return [
    path("free", {
      d,
      fill: colours[mark.tone],
      stroke: "var(--paper, #fff)",
      "stroke-width": "1.5",
    }),
    ...words(mark.label, mark.at, mark.tone, mark.side, frame),
  ];
}

function arrowShapes(mark: ArrowMark, frame: Frame): Shape[] {
  if (!isFinitePoint(mark.from) || !isFinitePoint(mark.to)) return [];
  const [x1, y1] = [frame.x(mark.from[0]), frame.y(mark.from[1])];
  const [x2, y2] = [frame.x(mark.to[0]), frame.y(mark.to[1])];
  const length = Math.hypot(x2 - x1, y2 - y1);
  const head = Math.min(9, length);
  const [ux, uy] = length > 0 ? [(x2 - x1) / length, (y2 - y1) / length] : [0, 0];
  const [bx, by] = [x2 - ux * head, y2 - uy * head];
  const wing = head * 0.45;
  const number = (value: number) => value.toFixed(1);
  const pair = (x: number, y: number) => `${number(x)} ${number(y)}`;
  const d =
    `M${pair(x1, y1)}L${pair(bx, by)}M${pair(x2, y2)}L${pair(bx - uy * wing, by + ux * wing)}` +
    `L${pair(bx + uy * wing, by - ux * wing)}Z`;
  const colour = colours[mark.tone];
  return [
    path("free", { d, fill: colour, stroke: colour, "stroke-width": "2.5" }),
    ...words(mark.label, mark.from, mark.tone, mark.side, frame),
  ];
}

/** The SVG elements of one mark, each with the part of a car that it draws. */
export function shapesOf(mark: Mark, frame: Frame): Shape[] {
  const shapes = plainShapes(mark, frame);
  const { part } = mark;
  if (part === undefined) return shapes;
  return shapes.map((shape) => ({
    ...shape,
    attributes: { ...shape.attributes, "data-part": part },
  }));
}

function plainShapes(mark: Mark, frame: Frame): Shape[] {
  switch (mark.kind) {
    case "line":
      return lineShapes(mark, frame);
    case "area":
      return [
        path("clipped", {
          d: `${pathOf(mark.points, frame)}Z`,
          fill: colours[mark.tone],
          "fill-opacity": "0.22",
        }),
      ];
    case "dot":
      return dotShapes(mark, frame);
    case "arrow":
      return arrowShapes(mark, frame);
    case "label":
      return words(mark.text, mark.at, mark.tone, mark.side, frame);
  }
}
