import { phaseNames } from "../../lib/balance/phases.js";
import type { Sides, Wheels } from "../../lib/load/wheels.js";
import { onStopNotes } from "../say/balance-notes.js";
import { DASH } from "./balance-text.js";
import type { SetUpReport } from "./set-up-report.js";
import { textTable } from "./text-table.js";
import type { Writer } from "./writer.js";

/** How far each wheel has moved in the hardest turns, beside how far it can. */
export function travel({ balance, freeTravel }: SetUpReport, write: Writer): string {
  const { change, unit } = write;
  const shown = (value: number) =>
    Number.isFinite(value) ? change("lengthSmall", value, 0) : DASH;
  const row = (name: string, { front, rear }: Wheels<number>) => [
    name,
    ...[front.left, front.right, rear.left, rear.right].map(shown),
  ];
  const used = phaseNames.map((name) => {
    const { front, rear } = balance.phases[name].wheels;
    return row(name, { front: travelOf(front), rear: travelOf(rear) });
  });
  return [
    `Travel in the hardest left turn, ${unit("lengthSmall")} from rest (above 0: the wheel goes up)`,
    textTable([
      ["", "front left", "front right", "rear left", "rear right"],
      ...used,
      row("free upwards", freeOf(freeTravel, "bump")),
      row("free downwards", freeOf(freeTravel, "droop")),
    ]),
    ...onStopNotes(balance.onStops),
  ].join("\n");
}

const travelOf = ({ left, right }: Sides<{ readonly travel: number }>): Sides<number> => ({
  left: left.travel,
  right: right.travel,
});

/** Free travel with the sign of the way it goes; without end where the file gives none. */
function freeOf({ front, rear }: SetUpReport["freeTravel"], way: "bump" | "droop"): Wheels<number> {
  const sign = way === "bump" ? 1 : -1;
  const side = (free: typeof front): Sides<number> => ({
    left: sign * (free?.[way].left ?? Infinity),
    right: sign * (free?.[way].right ?? Infinity),
  });
  return { front: side(front), rear: side(rear) };
}
