import {
  area,
  arrow,
  format,
  label,
  line,
  type Mark,
  outlineAbove,
  type Point,
  type Tone,
} from "@rollbook/cells";
import { type Car, type CornerMoment, cornerMomentAt, type DrivenCorner } from "@rollbook/lib";
import type { Drawing } from "@rollbook/page";
import { words } from "../../../say/practice/words.js";
import { type Look, tones } from "./charts.js";
import { wheels } from "./wheels.js";

const ENLARGED = 3; // angles of the known car
const DIFFERS = 10; // what another drive differs by
const TYRE = { half: 0.1, long: 0.3 } as const; // m
const COLUMN = { half: 0.13, high: 0.95, away: 0.52 } as const; // m

/** How the car stands at a place, as drawn: rad to the left, of the front wheels and of its body. */
interface Stance {
  readonly steer: number;
  readonly turned: number;
}

/**
 * The car from above at a place of the corner, its path up the picture: pale the drive that is
 * known, and how the changed car's differs from it, enlarged; at each wheel its load as a column.
 */
export function differenceAbove(car: Car, known: DrivenCorner, showsSlip: boolean): Drawing<Look> {
  const all = known.moments.flatMap(({ load }) => wheels.map(([end, side]) => load[end][side]));
  const perNewton = COLUMN.high / (1.1 * Math.max(...all));
  const stanceOf = ({ steeringWheel, sideSlip }: CornerMoment) => ({
    steer: steeringWheel / car.steeringRatio,
    turned: showsSlip ? -sideSlip : 0,
  });
  return {
    view: { x: [-1.9, 1.9], y: [-car.wheelbase - 0.75, 1.45] },
    label: words.difference.above,
    draw: ({ drives, distance }) => {
      const at = (drive: DrivenCorner) => cornerMomentAt(drive, distance);
      const before = stanceOf(at(known));
      const shown = (drive: DrivenCorner) => enlarged(before, stanceOf(at(drive)));
      const other = drives.changed ?? known;
      const outlined = (drive: DrivenCorner, tone: Tone) =>
        outlines(car, shown(drive)).map((points) => line(points, tone, { weight: "fine" }));
      return [
        arrow([0, 0.72], [0, 1.15], "muted", words.difference.path, "right"),
        ...solid(car, shown(other), drives.changed && tones.changed),
        ...outlined(known, "muted"),
        ...(drives.again ? outlined(drives.again, tones.again) : []),
        ...columns(car, at(other), at(known), perNewton),
      ];
    },
  };
}

/** A stance as drawn: that of the known car enlarged, and what differs from it more so. */
const enlarged = (known: Stance, now: Stance): Stance => ({
  steer: ENLARGED * known.steer + DIFFERS * (now.steer - known.steer),
  turned: ENLARGED * known.turned + DIFFERS * (now.turned - known.turned),
});

/** Turns a point to the left about another. */
const turnedAbout =
  ([cx, cy]: Point, angle: number) =>
  ([x, y]: Point): Point => {
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return [cx + (x - cx) * cos - (y - cy) * sin, cy + (x - cx) * sin + (y - cy) * cos];
  };

/** The body and its four tyres. */
function outlines(car: Car, { steer, turned }: Stance): Point[][] {
  const body = turnedAbout([0, -car.wheelbase / 2], turned);
  const tyres = wheels.map(([end, side]) => {
    const centre = wheelAt(car, end, side);
    const own = turnedAbout(centre, end === "front" ? steer : 0);
    return rectangle(centre, TYRE.half, TYRE.long).map(own).map(body);
  });
  return [outlineAbove(car.wheelbase).map(body), ...tyres];
}

function solid(car: Car, stance: Stance, edge?: Tone): Mark[] {
  return outlines(car, stance).flatMap((points, i): Mark[] => [
    area(points, i === 0 ? "muted" : "tyres"),
    line(points, edge ?? "ink", { weight: "fine" }),
  ]);
}

function columns(car: Car, now: CornerMoment, then: CornerMoment, perNewton: number): Mark[] {
  return wheels.flatMap(([end, side, name]): Mark[] => {
    const [x, y] = wheelAt(car, end, side);
    const foot: Point = [x + Math.sign(x) * COLUMN.away, y - TYRE.long];
    const load = now.load[end][side];
    return [
      area(column(foot, load * perNewton), end, words.loads[name]),
      line(column(foot, then.load[end][side] * perNewton), "muted", { weight: "fine" }),
      label([foot[0], foot[1] - 0.02], format("force", load, 0), end, "below"),
    ];
  });
}

const wheelAt = (car: Car, end: "front" | "rear", side: "left" | "right"): Point => [
  (side === "left" ? -1 : 1) * (car[end].track / 2),
  end === "front" ? 0 : -car.wheelbase,
];

const rectangle = ([x, y]: Point, half: number, long: number): Point[] => [
  [x - half, y - long],
  [x - half, y + long],
  [x + half, y + long],
  [x + half, y - long],
  [x - half, y - long],
];

const column = ([x, y]: Point, height: number): Point[] =>
  rectangle([x, y + height / 2], COLUMN.half, height / 2);
