import type { TransferParts } from "@rollbook/lib";
import { area, label, line, type Mark, type Point, partOf } from "../marks.js";
import { format } from "../reader.js";
import type { SeenAxle } from "./seen-axle.js";

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
] as const;

const WIDEST = 0.3; // m for all of the load of the axle
const FROM = -0.3;
const TO = 0.3;
const MARKS = 4;
const LEAST = 0.004; // of the load of the axle: less is nothing on its way
const PACE = 0.9; // of a road in a second

/** The three roads on which load goes across, each as wide as what goes over it, with marks on their way. */
export function roads({ transfer, load, time }: SeenAxle, isWordless: boolean): Mark[] {
  const all = load.left + load.right;
  return ROADS.flatMap(({ tone, name, height, of }): Mark[] => {
    const newtons = of(transfer);
    const half = ((Math.abs(newtons) / all) * WIDEST) / 2;
    const way = Math.sign(newtons) || 1;
    const isOnItsWay = Math.abs(newtons) >= LEAST * all;
    const words = `${name} ${format("force", newtons, 0)}`;
    const marks = movingMarks(height, Math.max(half, 0.02), way * time, way);
    return partOf(tone, [
      area(strip(height, half), tone, name),
      ...marks.map((points) =>
        line(isOnItsWay ? points : [], tone, { weight: half > 0.004 ? "normal" : "fine" }),
      ),
      ...(isWordless ? [] : [label([1.08, height], words, tone, "right")]),
    ]);
  });
}

const strip = (height: number, half: number): Point[] => [
  [FROM, height - half],
  [TO, height - half],
  [TO, height + half],
  [FROM, height + half],
];

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
