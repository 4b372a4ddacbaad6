import type { Mark, Point } from "../marks.js";
import type { Interval } from "../spec.js";
import { aboveView, carFromAbove, type SeenAbove } from "./above.js";
import { axleSeenThrough } from "./axle.js";
import type { SeenAxle } from "./seen-axle.js";
import { carFromSide, type SeenSide, sideView } from "./side.js";

/** Where one can stand to look at a car. */
export const standpoints = ["behind", "in front", "above", "the side"] as const;
export type Standpoint = (typeof standpoints)[number];

/** One car at one moment, as it is seen from everywhere. */
export interface SeenAllRound {
  readonly behind: SeenAxle;
  readonly inFront: SeenAxle;
  readonly above: SeenAbove;
  readonly side: SeenSide;
}

/** What the drawing needs of a panel, m: from behind as large as ever, the others made to fit. */
export const allRoundView = { x: [-1.3, 1.3], y: [-0.95, 1.4] } as const;

type Move = (point: Point) => Point;

/** How marks drawn for one box come to stand in the middle of another, as large as fits. */
function fitting(from: { readonly x: Interval; readonly y: Interval }): Move {
  const long = ([least, most]: Interval) => most - least;
  const middle = ([least, most]: Interval) => (least + most) / 2;
  const { x, y } = allRoundView;
  const size = Math.min(long(x) / long(from.x), long(y) / long(from.y));
  return ([a, b]) => [
    middle(x) + size * (a - middle(from.x)),
    middle(y) + size * (b - middle(from.y)),
  ];
}

function moved(mark: Mark, move: Move): Mark {
  if ("points" in mark) return { ...mark, points: mark.points.map(move) };
  if ("at" in mark) return { ...mark, at: move(mark.at) };
  return { ...mark, from: move(mark.from), to: move(mark.to) };
}

const PARTS = ["body", "tyres", "links", "springs", "bar", "loads"] as const;
const mirrored: Move = ([x, y]) => [-x, y];

/** The car as it is seen from a standpoint: turned round, not made anew. */
export function carSeenFrom(standpoint: Standpoint, car: SeenAllRound): Mark[] {
  const draw = {
    behind: () => axleSeenThrough(car.behind, { only: PARTS }),
    "in front": () =>
      axleSeenThrough(car.inFront, { only: PARTS }).map((mark) => moved(mark, mirrored)),
    above: () => inside(carFromAbove(car.above), aboveView(car.above)),
    "the side": () => inside(carFromSide(car.side), sideView(car.side)),
  };
  return draw[standpoint]();
}

const inside = (
  marks: readonly Mark[],
  view: { readonly x: Interval; readonly y: Interval },
): Mark[] => marks.map((mark) => moved(mark, fitting(view)));
