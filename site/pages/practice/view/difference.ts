import { area, label, line, type Mark } from "@rollbook/cells";
import { type DriveName, type Drives, namedDrives, steeringDifferences } from "@rollbook/lib";
import { type Drawing, format } from "@rollbook/page";
import { words } from "../../../say/practice/words.js";
import { type Look, tones } from "./charts.js";

const LEAST_SCALE = 2 * (Math.PI / 180); // rad that reach the edge, so that nothing looks like much
const ROW = 0.52;
const BAR = 0.17;
const NAMES = 1.05; // of the half width, left of the bars

/** How much more the wheel is turned into the corner, part by part: what the hands notice. */
export const difference: Drawing<Look> = {
  view: { x: [-1.3 - NAMES, 1.45], y: [-4 * ROW - 0.2, 0.2] },
  label: words.difference.steering,
  draw: ({ drives }) => [
    line(
      [
        [0, 0],
        [0, -4 * ROW],
      ],
      "ink",
      { weight: "fine" },
    ),
    ...rowsOf(drives),
  ],
};

function rowsOf(drives: Drives): Mark[] {
  const others = namedDrives(drives).filter(([name]) => name !== "known");
  const found = others.map(
    ([name, drive]) => [name, steeringDifferences(drive, drives.known)] as const,
  );
  const largest = Math.max(
    LEAST_SCALE,
    ...found.flatMap(([, parts]) => parts.map(({ by }) => Math.abs(by))),
  );
  return (found[0]?.[1] ?? []).flatMap(({ phase }, i) => [
    label([-1.3 - NAMES, -(i + 0.5) * ROW], phase, "ink", "right"),
    ...found.flatMap(([name, parts], j) =>
      bar(
        name,
        parts[i]?.by ?? 0,
        largest,
        -(i + 0.5) * ROW - (j - (found.length - 1) / 2) * 1.3 * BAR,
      ),
    ),
  ]);
}

function bar(name: DriveName, by: number, largest: number, middle: number): Mark[] {
  const length = by / largest;
  const [top, bottom] = [middle + BAR / 2, middle - BAR / 2];
  const text = format("angle", by, 1);
  const seen = Number.parseFloat(text) !== 0;
  const beside = length < 0 ? "left" : "right";
  return [
    area(
      [
        [0, top],
        [length, top],
        [length, bottom],
        [0, bottom],
      ],
      tones[name],
    ),
    label([length, middle], by > 0 && seen ? `+${text}` : text, tones[name], beside),
  ];
}
