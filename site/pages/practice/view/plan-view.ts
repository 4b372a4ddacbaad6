import { area, arrow, label, line, type Mark, type Point } from "@rollbook/cells";
import {
  type Car,
  type CornerMoment,
  cornerMomentAt,
  cornerParts,
  type DrivenCorner,
  latestDrive,
} from "@rollbook/lib";
import type { Drawing } from "@rollbook/page";
import { words } from "../../../say/practice/words.js";
import type { Look } from "./charts.js";

const CAR_SHARE = 0.24; // of the picture's width for the length of the car
const CAR_LENGTH = 1.5; // wheelbases

/** The corner from above; the car goes along it, larger than life. */
export function planView(car: Car, known: DrivenCorner): Drawing<Look> {
  const [x, y] = [known.moments.map((moment) => moment.x), known.moments.map((moment) => moment.y)];
  const width = Math.max(wide(x), wide(y)) / (1 - 1.3 * CAR_SHARE);
  const margin = (1.3 * CAR_SHARE * width) / 2;
  const larger = Math.max(1, (CAR_SHARE * width) / (CAR_LENGTH * car.wheelbase));
  const names = namesOf(known, margin);
  const reach = 0.75 * CAR_SHARE * width; // where the car would hide a name
  const left = (Math.min(...x) + Math.max(...x) - width) / 2;
  return {
    view: {
      x: [left, left + width],
      y: [Math.min(...y) - margin, Math.max(...y) + margin],
    },
    label: words.planView,
    draw: ({ drives, distance }) => {
      const here = cornerMomentAt(latestDrive(drives), distance);
      const free = names.filter(({ at }) => Math.hypot(at[0] - here.x, at[1] - here.y) > reach);
      return [...road(known), ...carMarks(car, here, larger), ...free];
    },
  };
}

const wide = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/** The driven line, with an arrow where it begins. */
function road({ moments }: DrivenCorner): Mark[] {
  const path = moments.map(({ x, y }): Point => [x, y]);
  const [start, soon] = [path[0], path[2]];
  return [
    line(path, "ink", { weight: "fine" }),
    ...(start && soon ? [arrow(start, soon, "ink")] : []),
  ];
}

/** The parts of the corner, each called by its name on the outside of the turn. */
function namesOf(known: DrivenCorner, margin: number) {
  const side = Math.sign(known.moments.at(-1)?.y ?? 1);
  return cornerParts(known).map(({ phase, from, to }) => {
    const { x, y, heading } = cornerMomentAt(known, (from + to) / 2);
    const [right, up] = [side * Math.sin(heading), -side * Math.cos(heading)];
    const beside = Math.abs(right) > Math.abs(up);
    const away = (beside ? 0.05 : 0.3) * margin;
    const at: Point = [x + away * right, y + away * up];
    return label(at, phase, "muted", beside ? (right > 0 ? "right" : "left") : "middle");
  });
}

/** A point of the car, m ahead of and left of its middle, where it is on the map. */
function placer({ x, y, heading, sideSlip }: CornerMoment, larger: number) {
  const points = heading - sideSlip; // the car goes to the left of where it points when above 0
  const [cos, sin] = [larger * Math.cos(points), larger * Math.sin(points)];
  return (ahead: number, left: number): Point => [
    x + ahead * cos - left * sin,
    y + ahead * sin + left * cos,
  ];
}

type Placer = ReturnType<typeof placer>;

function carMarks(car: Car, here: CornerMoment, larger: number): Mark[] {
  const at = placer(here, larger);
  const [half, side] = [(CAR_LENGTH * car.wheelbase) / 2, 0.32 * car.front.track];
  const body = [
    at(half, 0),
    at(0.7 * half, side),
    at(-half, side),
    at(-half, -side),
    at(0.7 * half, -side),
  ];
  const wheels = (["front", "rear"] as const).flatMap((end) =>
    [1, -1].map((out) => wheelMark(end, car, out, at)),
  );
  return [area(body, "muted"), ...wheels];
}

const WHEEL = 0.32; // m, half of what stands on the road from above

function wheelMark(end: "front" | "rear", car: Car, out: number, at: Placer): Mark {
  const ahead = (end === "front" ? 0.5 : -0.5) * car.wheelbase;
  const left = (out * car[end].track) / 2;
  return line([at(ahead - WHEEL, left), at(ahead + WHEEL, left)], end, { weight: "heavy" });
}
