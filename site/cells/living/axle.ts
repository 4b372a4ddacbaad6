import { area, arrow, label, line, type Mark, type Part, type Point, partOf } from "../marks.js";
import { format } from "../reader.js";
import { words } from "../words.js";
import { twistedBar } from "./bar.js";
import { type Corner, cornersOf, type Lean, leanOf, TYRE } from "./pose.js";
import { roads } from "./roads.js";
import type { SeenAxle } from "./seen-axle.js";
import { damper, links, spring } from "./suspension.js";

/** What the drawing needs of a panel, m, for any car: with the words of its roads beside it, and without. */
export const seenView = { x: [-1.12, 2.6], y: [-0.64, 1.36] } as const;
export const seenClose = { x: [-1.12, 1.12], y: [-0.66, 1.32] } as const;

const HALF: readonly Point[] = [
  [0.5, 0.18],
  [0.58, 0.21],
  [0.62, 0.3],
  [0.64, 0.5],
  [0.67, 0.6],
  [0.66, 0.7],
  [0.61, 0.78],
  [0.53, 0.84],
  [0.45, 1.05],
  [0.39, 1.13],
  [0.3, 1.16],
];
const HALF_WINDOW: readonly Point[] = [
  [0.47, 0.84],
  [0.39, 1.04],
  [0.33, 1.09],
];
const bothSides = (half: readonly Point[]): Point[] => [
  ...half,
  ...half.map(([x, z]): Point => [-x, z]).reverse(),
  ...half.slice(0, 1),
];
const BODY = bothSides(HALF);
const WINDOW = bothSides(HALF_WINDOW);

/** What is seen of an axle. */
export interface Seeing {
  /** The same axle in another state, whose body is drawn as a pale outline. */
  readonly before?: SeenAxle | undefined;
  /** The parts to draw; all where absent. */
  readonly only?: readonly Part[];
  /** One side alone, −1 left or 1 right. */
  readonly side?: -1 | 1 | undefined;
  /** Whether the roads go without their words; they have room in `seenView` alone. */
  readonly isWordless?: boolean;
}

/**
 * An axle from behind, seen through the body: arms or beam, coils, dampers, a bar that twists, tyres
 * that squash, the load under each tyre, and the three roads on which load goes across: as wide as
 * what goes over them.
 */
export function axleSeenThrough(now: SeenAxle, seeing: Seeing = {}): Mark[] {
  const { before, only, side, isWordless = false } = seeing;
  const lean = leanOf(now);
  const all = cornersOf(now);
  const corners = all.filter((corner) => side === undefined || corner.side === side);
  const drawn: readonly [Part, () => Mark[]][] = [
    ["body", () => body(lean, before)],
    ["tyres", () => corners.flatMap((corner) => tyre(corner, now))],
    ["links", () => corners.flatMap((corner) => links(corner, now, lean))],
    ["springs", () => corners.flatMap((corner) => spring(corner, now, lean))],
    ["dampers", () => corners.flatMap((corner) => damper(corner, now, lean))],
    ["bar", () => (now.hasBar ? twistedBar(all, now, lean) : [])],
    ["roads", () => roads(now, isWordless)],
    ["loads", () => corners.flatMap((corner) => loadUnder(corner, now))],
  ];
  const wanted = drawn.filter(([part]) => only === undefined || only.includes(part));
  return [...ground(corners), ...wanted.flatMap(([, draw]) => draw())];
}

/** The road, with a step up to each wheel that stands higher. */
function ground(corners: readonly Corner[]): Mark[] {
  const [left = 0, right = 0] = [-1, 1].map(
    (side) => corners.find((corner) => corner.side === side)?.road ?? 0,
  );
  const points: Point[] = [
    [-1.05, left],
    [-0.5, left],
    [-0.42, 0],
    [0.42, 0],
    [0.5, right],
    [1.05, right],
  ];
  return [line(points, "ink", { weight: "fine" })];
}

function body(lean: Lean, before: SeenAxle | undefined): Mark[] {
  const outline = BODY.map(lean);
  return partOf("body", [
    line(before ? BODY.map(leanOf(before)) : [], "muted", { weight: "fine" }),
    area(outline, "muted"),
    line(outline, "ink", { weight: "fine" }),
    line(WINDOW.map(lean), "muted", { weight: "fine" }),
  ]);
}

/** A tyre: on the road it is pressed flat and bulges, in the air it is round and clear of it. */
function tyre({ side, load, hub, road }: Corner, { track, wheelHeight }: SeenAxle): Mark[] {
  const middle = (side * track) / 2;
  const low = load > 0 ? road : Math.max(road, hub - wheelHeight);
  const squash = Math.max(0, wheelHeight - (hub - low));
  const [flat, top] = [TYRE + 0.5 * squash, hub + wheelHeight];
  const half: Point[] = [
    [0.8 * flat, low],
    [0.96 * flat, low + 0.02],
    [flat, low + 0.06],
    [TYRE, low + 0.17],
    [TYRE, top - 0.08],
    [0.94 * TYRE, top - 0.03],
    [0.75 * TYRE, top],
  ];
  const right = half.map(([x, z]): Point => [middle + x, z]);
  const left = half.map(([x, z]): Point => [middle - x, z]).reverse();
  const outline = [...right, ...left, right[0] as Point];
  return partOf("tyres", [area(outline, "tyres"), line(outline, "tyres", { weight: "fine" })]);
}

function loadUnder({ side, load, road }: Corner, { track, load: both }: SeenAxle): Mark[] {
  const middle = (side * track) / 2;
  const length = (0.55 * load) / (both.left + both.right);
  const isLighter = side < 0 ? both.left <= both.right : both.right < both.left;
  const tone = isLighter ? "inside" : "outside";
  if (load <= 0) return partOf("loads", [label([middle, road], words.inTheAir, "warn", "below")]);
  const word = format("force", load, 0);
  return partOf("loads", [arrow([middle, road - length], [middle, road], tone, word, "below")]);
}
