import type { Axles, Car } from "@rollbook/lib";
import { area, arrow, line, type Mark, type Point, partOf } from "../marks.js";
import { format } from "../reader.js";
import { coil } from "./suspension.js";

/** A car from its left side, nose to the left; x from the front axle to the rear, z up from the road, m. */
export interface SeenSide {
  /** m */
  readonly wheelbase: number;
  /** m of the wheel centres above the road */
  readonly wheelHeight: Axles<number>;
  /** m of the body above the road at each axle, as it was before */
  readonly height: Axles<number>;
  /** m that the body has come up since, at each axle */
  readonly rise: Axles<number>;
  /** How much larger than life that is drawn. */
  readonly enlarged: number;
  /** N on the two tyres of each axle */
  readonly load: Axles<number>;
}

/** A car from the side whose body has risen by so much at each axle, m, with loads on its axles, N. */
export const fromSide = (
  { wheelbase, front, rear }: Car,
  { height, rise, load, enlarged }: Pick<SeenSide, "height" | "rise" | "load" | "enlarged">,
): SeenSide => ({
  ...{ wheelbase, height, rise, load, enlarged },
  wheelHeight: { front: front.unsprungHeight, rear: rear.unsprungHeight },
});

/** What the drawing needs of a panel, m. */
export const sideView = ({ wheelbase }: Pick<Car, "wheelbase">) =>
  ({ x: [-0.95, wheelbase + 0.85], y: [-0.62, 1.42] }) as const;

const NOSE: readonly Point[] = [
  [-0.62, 0],
  [-0.72, 0.22],
  [-0.6, 0.42],
  [0.1, 0.56],
  [0.62, 0.62],
  [0.98, 0.96],
  [1.6, 0.97],
  [2.02, 0.6],
];
const TAIL: readonly Point[] = [
  [0.5, 0.58],
  [0.58, 0.3],
  [0.5, 0],
];
const SEAT = 0.5; // m of a spring's upper seat above the floor
const LONGEST = 0.55; // m of an arrow for all the load of the car

/** Where a point of the body is, so far above its floor. */
type Pose = (point: Point) => Point;

function poseOf({ wheelbase, height, rise, enlarged }: SeenSide, part: 0 | 1): Pose {
  const at = (end: "front" | "rear") => height[end] + part * enlarged * rise[end];
  return ([x, z]) => [x, z + at("front") + (x / wheelbase) * (at("rear") - at("front"))];
}

function body(seen: SeenSide): Mark[] {
  const half = [...NOSE, ...TAIL.map(([x, z]): Point => [x + seen.wheelbase, z])];
  const outline = [...half, ...half.slice(0, 1)];
  const [before, now] = [outline.map(poseOf(seen, 0)), outline.map(poseOf(seen, 1))];
  return partOf("body", [
    line(before, "muted", { weight: "fine" }),
    area(now, "muted"),
    line(now, "ink", { weight: "fine" }),
  ]);
}

function tyre(x: number, radius: number): Mark[] {
  const ring = (size: number) =>
    Array.from({ length: 33 }, (_, i): Point => {
      const angle = (i * Math.PI) / 16;
      return [x + size * Math.cos(angle), radius + size * Math.sin(angle)];
    });
  return partOf("tyres", [
    area(ring(radius), "tyres"),
    line(ring(radius), "tyres", { weight: "fine" }),
    line(ring(0.6 * radius), "tyres", { weight: "fine" }),
  ]);
}

/** The car from the side: a body that rises, sinks or dives on its springs, and the load on each axle. */
export function carFromSide(seen: SeenSide): Mark[] {
  const { wheelbase, wheelHeight, load } = seen;
  const whole = load.front + load.rear;
  const pose = poseOf(seen, 1);
  const axles = [
    { end: "front", x: 0 },
    { end: "rear", x: wheelbase },
  ] as const;
  const road: Point[] = [
    [-0.95, 0],
    [wheelbase + 0.85, 0],
  ];
  return [
    line(road, "ink", { weight: "fine" }),
    ...body(seen),
    ...axles.flatMap(({ end, x }) => tyre(x, wheelHeight[end])),
    ...axles.flatMap(({ end, x }) =>
      partOf("springs", [line(coil([x, wheelHeight[end]], pose([x, SEAT])), "springs")]),
    ),
    ...axles.flatMap(({ end, x }) => {
      const length = (LONGEST * load[end]) / whole;
      const word = format("force", load[end], 0);
      return partOf("loads", [arrow([x, -length], [x, 0], end, word, "below")]);
    }),
  ];
}
