import { area, format, label, line, type Mark, type Point } from "@rollbook/cells";
import { cornerMomentAt, type DrivenCorner, latestDrive } from "@rollbook/lib";
import type { Drawing } from "@rollbook/page";
import { words } from "../../../say/practice/words.js";
import type { Look } from "./charts.js";
import { wheels } from "./wheels.js";

const HALF = 0.32; // of a column

/** The load on each wheel as a column, as high as the largest that the known car ever has there. */
export function loadsView(known: DrivenCorner): Drawing<Look> {
  const all = known.moments.flatMap(({ load }) => wheels.map(([end, side]) => load[end][side]));
  const highest = 1.15 * Math.max(...all);
  return {
    view: { x: [-0.6, 3.6], y: [-0.16, 1.16] },
    label: words.wheelLoads,
    draw: ({ drives, distance }) => {
      const now = cornerMomentAt(latestDrive(drives), distance).load;
      const before = cornerMomentAt(known, distance).load;
      return wheels.flatMap(([end, side, name], i): Mark[] => {
        const load = now[end][side];
        return [
          area(column(i, load / highest), end),
          line([...column(i, before[end][side] / highest)], "muted", { weight: "fine" }),
          label([i, load / highest], format("force", load, 0), end, "above"),
          label([i, 0], words.wheels[name], "ink", "below"),
        ];
      });
    },
  };
}

const column = (at: number, height: number): Point[] => [
  [at - HALF, 0],
  [at - HALF, height],
  [at + HALF, height],
  [at + HALF, 0],
];
