import type { Car, Moment, Sides, TransferParts } from "@rollbook/lib";
import { area, arrow, label, line, type Mark, type Point, type Tone } from "./marks.js";
import { format } from "./reader.js";

/** One axle as it stands at one moment, to be seen from behind; angles above 0 with the right side down. */
export interface SeenAxle {
  /** m */
  readonly track: number;
  /** m of the wheel centres above the road, at rest */
  readonly wheelHeight: number;
  /** m */
  readonly rollCentreHeight: number;
  readonly hasBar: boolean;
  /** Whether one beam holds both wheels; else each has arms of its own. */
  readonly isBeam: boolean;
  /** rad of the body against the road */
  readonly rollAngle: number;
  /** rad of the axle against the road, on its tyres */
  readonly tyreAngle: number;
  /** N under each tyre */
  readonly load: Sides<number>;
  /** N that each road moves from the left tyre to the right one */
  readonly transfer: TransferParts;
  /** s: how far the marks on the roads have come */
  readonly time: number;
}

/** One axle of a car at a moment of a drive. */
export function axleAt(
  car: Car,
  end: "front" | "rear",
  { time, rollAngle, tyreAngle, load, transfer }: Moment,
): SeenAxle {
  const { track, unsprungHeight, geometry, bar, spring } = car[end];
  return {
    ...{ track, wheelHeight: unsprungHeight, rollCentreHeight: geometry.rollCentreHeight },
    ...{ hasBar: bar !== undefined, isBeam: spring.spacing !== undefined, time, rollAngle },
    ...{ tyreAngle: tyreAngle[end], load: load[end], transfer: transfer[end] },
  };
}

/** How much larger than life angles are drawn. */
export const ENLARGED = 3;

/** What the drawing needs of a panel, m, for any car. */
export const seenView = { x: [-1.12, 2.6], y: [-0.58, 1.36] } as const;

const BODY: readonly Point[] = [
  [-0.62, 0.2],
  [0.62, 0.2],
  [0.7, 0.66],
  [0.52, 0.82],
  [0.38, 1.16],
  [-0.38, 1.16],
  [-0.52, 0.82],
  [-0.7, 0.66],
  [-0.62, 0.2],
];
const TYRE = 0.1; // m, half its width

/** Turns a point of the body about the roll centre. */
type Lean = (point: Point) => Point;

function leanOf({ rollAngle, rollCentreHeight: centre }: SeenAxle): Lean {
  const [cos, sin] = [Math.cos(ENLARGED * rollAngle), Math.sin(ENLARGED * rollAngle)];
  return ([x, z]) => [x * cos + (z - centre) * sin, centre + (z - centre) * cos - x * sin];
}

/** A side of the axle: −1 left, 1 right. */
interface Corner {
  readonly side: -1 | 1;
  readonly load: number;
  /** m of the wheel centre above the road, enlarged as angles are */
  readonly hub: number;
}

function cornersOf({ tyreAngle, track, wheelHeight, load }: SeenAxle): Corner[] {
  const sinks = (ENLARGED * tyreAngle * track) / 2;
  return [
    { side: -1, load: load.left, hub: wheelHeight + sinks },
    { side: 1, load: load.right, hub: wheelHeight - sinks },
  ];
}

/**
 * An axle from behind, seen through the body: arms or beam, coils, dampers, a bar that twists, tyres
 * that squash, the load under each tyre, and the three roads on which load goes across: as wide as
 * what goes over them.
 *
 * @param before - the same axle in another state, whose body is drawn as a pale outline
 */
export function axleSeenThrough(now: SeenAxle, before?: SeenAxle): Mark[] {
  const lean = leanOf(now);
  const corners = cornersOf(now);
  const body = BODY.map(lean);
  return [
    line(
      [
        [-1.05, 0],
        [1.05, 0],
      ],
      "ink",
      { weight: "fine" },
    ),
    line(before ? BODY.map(leanOf(before)) : [], "muted", { weight: "fine" }),
    area(body, "muted"),
    line(body, "ink", { weight: "fine" }),
    ...corners.flatMap((corner) => wheel(corner, now)),
    ...(now.isBeam ? beam(corners, now) : []),
    ...corners.flatMap((corner) => springAndDamper(corner, now, lean)),
    ...(now.hasBar ? twistedBar(corners, now, lean) : []),
    ...roads(now),
    ...corners.flatMap((corner) => loadUnder(corner, now)),
  ];
}

/** A tyre: on the road it is pressed flat and bulges, in the air it is round and clear of it. */
function wheel({ side, load, hub }: Corner, { track, wheelHeight }: SeenAxle): Mark[] {
  const middle = (side * track) / 2;
  const low = load > 0 ? 0 : Math.max(0, hub - wheelHeight);
  const squash = Math.max(0, wheelHeight - (hub - low));
  const [flat, top] = [TYRE + 0.5 * squash, hub + wheelHeight];
  const half: Point[] = [
    [0.75 * flat, low],
    [flat, low + 0.05],
    [TYRE, low + 0.16],
    [TYRE, top - 0.06],
    [0.75 * TYRE, top],
  ];
  const right = half.map(([x, z]): Point => [middle + x, z]);
  const left = half.map(([x, z]): Point => [middle - x, z]).reverse();
  const outline = [...right, ...left, right[0] as Point];
  return [area(outline, "muted"), line(outline, "ink", { weight: "fine" })];
}

const inner = ({ side, hub }: Corner, { track }: SeenAxle, up: number): Point => [
  side * (track / 2 - TYRE),
  hub + up,
];

const between = ([ax, az]: Point, [bx, bz]: Point, share: number): Point => [
  ax + share * (bx - ax),
  az + share * (bz - az),
];

function beam(corners: readonly Corner[], axle: SeenAxle): Mark[] {
  return [
    line(
      corners.map((corner) => inner(corner, axle, 0)),
      "links",
      { weight: "heavy" },
    ),
  ];
}

/** Where spring, damper and bar take hold of what carries the wheel. */
function holds(corner: Corner, axle: SeenAxle, lean: Lean) {
  const { side } = corner;
  const low = inner(corner, axle, axle.isBeam ? 0 : -0.1);
  const inside: Point = axle.isBeam
    ? [0, (corner.hub + axle.wheelHeight) / 2]
    : lean([side * 0.24, axle.wheelHeight - 0.1]);
  return { low, inside, spring: between(inside, low, 0.66), damper: between(inside, low, 0.36) };
}

function springAndDamper(corner: Corner, axle: SeenAxle, lean: Lean): Mark[] {
  const { side } = corner;
  const { low, inside, spring, damper } = holds(corner, axle, lean);
  const high: Point = lean([side * 0.3, axle.wheelHeight + 0.12]);
  const arms = [line([inside, low], "links"), line([high, inner(corner, axle, 0.12)], "links")];
  const top = lean([side * 0.32, 0.68]);
  const middle = between(damper, top, 0.5);
  return [
    ...(axle.isBeam ? [] : arms),
    line(coil(spring, lean([side * 0.53, 0.7])), "springs"),
    line([damper, middle], "dampers", { weight: "heavy" }),
    line([middle, top], "dampers", { weight: "fine" }),
  ];
}

const TURNS = 7;

/** A coil between two points, as wide however long. */
function coil(from: Point, to: Point): Point[] {
  const [dx, dz] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dz);
  const [across, up] = [(-dz / length) * 0.055, (dx / length) * 0.055];
  const zigzag = Array.from({ length: 2 * TURNS }, (_, i): Point => {
    const [x, z] = between(from, to, (i + 0.5) / (2 * TURNS));
    const way = i % 2 === 0 ? 1 : -1;
    return [x + way * across, z + way * up];
  });
  return [from, ...zigzag, to];
}

const BAR_LENGTH = 0.62; // m across the car
const ARM = 0.16; // m
const RINGS = 9;

/**
 * The bar across the car with an arm at each end: the ends go with the wheels, so one arm turns up
 * and the other down, and the bar between them twists; rings on it show by how much, place by place.
 */
function twistedBar(corners: readonly Corner[], axle: SeenAxle, lean: Lean): Mark[] {
  const ends = corners.map((corner) => {
    const [x, z] = holds(corner, axle, lean).damper;
    const pivot = lean([corner.side * (BAR_LENGTH / 2), 0.4]);
    const turn = Math.max(-1.2, Math.min(1.2, (z - (axle.wheelHeight - 0.1)) / ARM));
    return { pivot, link: [x, z] as Point, turn };
  });
  const [left, right] = ends;
  if (left === undefined || right === undefined) return [];
  const rings = Array.from({ length: RINGS }, (_, i) => {
    const share = i / (RINGS - 1);
    const [x, z] = between(left.pivot, right.pivot, share);
    const angle = left.turn + share * (right.turn - left.turn);
    return line(
      [
        [x + 0.045 * Math.sin(angle), z - 0.045 * Math.cos(angle)],
        [x - 0.045 * Math.sin(angle), z + 0.045 * Math.cos(angle)],
      ],
      "springs",
      { weight: "fine" },
    );
  });
  return [
    line([left.pivot, right.pivot], "springs", { weight: "heavy" }),
    ...rings,
    ...ends.map(({ pivot, link }) => line([link, pivot], "springs")),
  ];
}

/** The roads of load, from below. */
const ROADS = [
  {
    tone: "links",
    name: "links, wheels",
    height: 0.24,
    of: (t: TransferParts) => t.geometric + t.unsprung,
  },
  { tone: "dampers", name: "dampers", height: 0.56, of: (t: TransferParts) => t.damper },
  { tone: "springs", name: "springs, bar", height: 0.88, of: (t: TransferParts) => t.elastic },
] as const satisfies readonly {
  tone: Tone;
  name: string;
  height: number;
  of: (t: TransferParts) => number;
}[];

const WIDEST = 0.3; // m for all of the load of the axle
const FROM = -0.3;
const TO = 0.3;
const MARKS = 4;
const LEAST = 0.004; // of the load of the axle: less is nothing on its way
const PACE = 0.9; // of a road in a second

function roads({ transfer, load, time }: SeenAxle): Mark[] {
  const all = load.left + load.right;
  return ROADS.flatMap(({ tone, name, height, of }): Mark[] => {
    const newtons = of(transfer);
    const half = ((Math.abs(newtons) / all) * WIDEST) / 2;
    const way = Math.sign(newtons) || 1;
    const isOnItsWay = Math.abs(newtons) >= LEAST * all;
    const marks = movingMarks(height, Math.max(half, 0.02), way * time, way);
    return [
      area(
        [
          [FROM, height - half],
          [TO, height - half],
          [TO, height + half],
          [FROM, height + half],
        ],
        tone,
        name,
      ),
      ...marks.map((points) =>
        line(isOnItsWay ? points : [], tone, { weight: half > 0.004 ? "normal" : "fine" }),
      ),
      label([1.08, height], `${name} ${format("force", newtons, 0)}`, tone, "right"),
    ];
  });
}

/** Arrow heads on their way across, `shift` seconds on. */
function movingMarks(height: number, half: number, shift: number, way: number): Point[][] {
  return Array.from({ length: MARKS }, (_, i) => {
    const share = ((((i + 0.5) / MARKS + PACE * shift) % 1) + 1) % 1;
    const x = FROM + share * (TO - FROM);
    return [
      [x - way * half, height + half],
      [x, height],
      [x - way * half, height - half],
    ];
  });
}

function loadUnder({ side, load }: Corner, { track, load: both }: SeenAxle): Mark[] {
  const middle = (side * track) / 2;
  const length = (0.55 * load) / (both.left + both.right);
  const tone = side < 0 ? "inside" : "outside";
  return [arrow([middle, -length], [middle, 0], tone, format("force", load, 0), "below")];
}
