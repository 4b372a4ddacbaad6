import type { Axles, Car, Wheels } from "@rollbook/lib";
import { area, label, line, type Mark, type Point, partOf, type Tone } from "../marks.js";
import { format } from "../reader.js";
import { words } from "../words.js";

/** A car from above, nose up, with the load on each of its four patches; x to the right, y ahead of the front axle, m. */
export interface SeenAbove {
  /** m */
  readonly wheelbase: number;
  /** m */
  readonly track: Axles<number>;
  /** N */
  readonly load: Wheels<number>;
  /** N at rest, drawn as pale rings */
  readonly atRest: Wheels<number>;
}

/** A car from above with loads on its tyres, N. */
export const fromAbove = (
  { wheelbase, front, rear }: Car,
  load: Wheels<number>,
  atRest: Wheels<number>,
): SeenAbove => ({
  ...{ wheelbase, load, atRest },
  track: { front: front.track, rear: rear.track },
});

/** What the drawing needs of a panel, m. */
export const aboveView = ({ wheelbase }: Pick<Car, "wheelbase">) =>
  ({ x: [-1.55, 1.55], y: [-wheelbase - 0.72, 0.72] }) as const;

const PLAN: readonly Point[] = [
  [0.3, 0.62],
  [0.54, 0.5],
  [0.58, 0],
];
const TAIL: readonly Point[] = [
  [0.6, -0.05],
  [0.56, -0.38],
  [0.44, -0.5],
];
const TYRE = { half: 0.09, long: 0.29 } as const; // m, half across and half along
const WHOLE = 0.6; // m, radius of a disc with all the load of the car

const sides = [
  ["left", -1],
  ["right", 1],
] as const;

/** The body of a car from above, m: x to the right, y ahead of the front axle. */
export function outlineAbove(wheelbase: number): Point[] {
  const half = [...PLAN, ...TAIL.map(([x, y]): Point => [x, y - wheelbase])];
  return [...half, ...half.map(([x, y]): Point => [-x, y]).reverse(), ...half.slice(0, 1)];
}

function body(wheelbase: number): Mark[] {
  const outline = outlineAbove(wheelbase);
  return partOf("body", [area(outline, "muted"), line(outline, "ink", { weight: "fine" })]);
}

function tyre([x, y]: Point): Mark[] {
  const { half, long } = TYRE;
  const outline: Point[] = [
    [x - half, y - long],
    [x - half, y + long],
    [x + half, y + long],
    [x + half, y - long],
    [x - half, y - long],
  ];
  return partOf("tyres", [area(outline, "tyres"), line(outline, "tyres", { weight: "fine" })]);
}

const disc = ([x, y]: Point, share: number): Point[] =>
  Array.from({ length: 41 }, (_, i) => {
    const radius = WHOLE * Math.sqrt(Math.max(0, share));
    return [x + radius * Math.cos((i * Math.PI) / 20), y + radius * Math.sin((i * Math.PI) / 20)];
  });

function patch(at: Point, load: number, rest: number, whole: number, tone: Tone): Mark[] {
  const outline = disc(at, load / whole);
  const text = load > 0 ? format("force", load, 0) : words.inTheAir;
  return partOf("loads", [
    area(outline, tone),
    line(outline, tone, { weight: "fine" }),
    line(disc(at, rest / whole), "muted", { weight: "fine" }),
    label(at, text, load > 0 ? "ink" : "warn"),
  ]);
}

/** The car from above: its body, its tyres, and on each patch a disc as large as its load, round a ring as large as at rest. */
export function carFromAbove({ wheelbase, track, load, atRest }: SeenAbove): Mark[] {
  const { front, rear } = atRest;
  const whole = front.left + front.right + rear.left + rear.right;
  const corners = (["front", "rear"] as const).flatMap((end) =>
    sides.map(([side, sign]) => {
      const at: Point = [(sign * track[end]) / 2, end === "front" ? 0 : -wheelbase];
      return { at, end, load: load[end][side], rest: atRest[end][side] };
    }),
  );
  return [
    ...body(wheelbase),
    ...corners.flatMap(({ at }) => tyre(at)),
    ...corners.flatMap((corner) => patch(corner.at, corner.load, corner.rest, whole, corner.end)),
  ];
}
