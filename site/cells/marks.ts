/** What a figure is made of. Coordinates are in the SI units of the panel's axes. */

/** The roles a mark plays; each has one colour and one stroke everywhere in the course. */
export const tones = [
  "front",
  "rear",
  "outside",
  "inside",
  "ink",
  "muted",
  "accent",
  "warn",
  "links",
  "dampers",
  "springs",
  "tyres",
] as const;

export type Tone = (typeof tones)[number];

/** What of a car a mark draws: a word that names it lights it. */
export type Part = "body" | "tyres" | "links" | "springs" | "dampers" | "bar" | "roads" | "loads";

export type Point = readonly [x: number, y: number];

/** Where a label stands relative to its point. */
export type Side = "above" | "below" | "left" | "right" | "middle";

export interface LineMark {
  readonly kind: "line";
  readonly points: readonly Point[];
  readonly tone: Tone;
  readonly label: string;
  /** What a table of the figure calls it. */
  readonly name: string;
  readonly weight: "fine" | "normal" | "heavy";
  readonly side: Side;
}

export interface AreaMark {
  readonly kind: "area";
  readonly points: readonly Point[];
  readonly tone: Tone;
  /** What a table of the figure calls it. */
  readonly name: string;
}

export interface DotMark {
  readonly kind: "dot";
  readonly at: Point;
  readonly tone: Tone;
  readonly label: string;
  /** What a table of the figure calls it. */
  readonly name: string;
  readonly side: Side;
}

export interface ArrowMark {
  readonly kind: "arrow";
  readonly from: Point;
  readonly to: Point;
  readonly tone: Tone;
  readonly label: string;
  readonly side: Side;
}

export interface LabelMark {
  readonly kind: "label";
  readonly at: Point;
  readonly text: string;
  readonly tone: Tone;
  readonly side: Side;
}

export type Mark = (LineMark | AreaMark | DotMark | ArrowMark | LabelMark) & {
  readonly part?: Part;
};

interface LineOptions {
  /** Written at the last point. */
  label?: string;
  /** What a table of the figure calls it, where the label does not say it. */
  name?: string;
  weight?: "fine" | "normal" | "heavy";
  side?: Side;
}

/** A curve through points; a gap is left wherever a coordinate is not finite. */
export function line(points: readonly Point[], tone: Tone, options: LineOptions = {}): LineMark {
  const { label = "", name = label, weight = "normal", side = "right" } = options;
  return { kind: "line", points, tone, label, name, weight, side };
}

/** A filled closed outline. */
export function area(points: readonly Point[], tone: Tone, name = ""): AreaMark {
  return { kind: "area", points, tone, name };
}

/** A single point: a disc, or a square for the rear axle. */
export function dot(
  at: Point,
  tone: Tone,
  label = "",
  side: Side = "above",
  name = label,
): DotMark {
  return { kind: "dot", at, tone, label, name, side };
}

/** An arrow, its label at the tail end. */
export function arrow(
  from: Point,
  to: Point,
  tone: Tone,
  label = "",
  side: Side = "right",
): ArrowMark {
  return { kind: "arrow", from, to, tone, label, side };
}

/** Words at a point. */
export function label(
  at: Point,
  text: string,
  tone: Tone = "ink",
  side: Side = "middle",
): LabelMark {
  return { kind: "label", at, text, tone, side };
}

/** The marks as those that draw one part of a car. */
export const partOf = (part: Part, marks: readonly Mark[]): Mark[] =>
  marks.map((mark) => ({ ...mark, part }));

/** `count` points of `f` evenly spaced from `from` to `to`, ends included. */
export function curve(
  f: (x: number) => number,
  [from, to]: readonly [number, number],
  count = 81,
): Point[] {
  return Array.from({ length: count }, (_, i) => {
    const x = from + ((to - from) * i) / (count - 1);
    return [x, f(x)];
  });
}
