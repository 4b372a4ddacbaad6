import type { Wheels } from "../../lib/load/wheels.js";
import type { SetUpReport } from "./set-up-report.js";
import { textTable } from "./text-table.js";
import type { Writer } from "./writer.js";

/** What each wheel carries, at rest and in the turn. */
export function loads({ atRest, inTurn }: SetUpReport, { number, unit }: Writer): string {
  const row = (name: string, load: Wheels<number>) => [
    name,
    ...[load.front.left, load.front.right, load.rear.left, load.rear.right].map((one) =>
      number("force", one, 0),
    ),
  ];
  const turning = inTurn.load
    ? [row("left turn", inTurn.load.leftTurn), row("right turn", inTurn.load.rightTurn)]
    : [];
  const head = ["", "front left", "front right", "rear left", "rear right"];
  const over = inTurn.load ? "" : "\nThe car tips over before it turns so hard.";
  return `Wheel loads, ${unit("force")}\n${textTable([head, row("at rest", atRest.load), ...turning])}${over}`;
}

/** How much load moves in the turn, through what, and at which end. */
export function transfer({ inTurn }: SetUpReport, { number, value, unit }: Writer): string {
  const part = (name: string, key: "elastic" | "geometric" | "unsprung" | "total") => {
    const [front, rear] = [inTurn.front[key], inTurn.rear[key]];
    const share = front + rear === 0 ? 0.5 : front / (front + rear);
    return [name, number("force", front, 0), number("force", rear, 0), number("share", share, 1)];
  };
  const table = textTable([
    ["", "front", "rear", "front share %"],
    part("springs, bars, tyres", "elastic"),
    part("links, at once", "geometric"),
    part("wheels themselves", "unsprung"),
    part("together", "total"),
  ]);
  const lifted = (["front", "rear"] as const).filter((end) => inTurn[end].lifted);
  const up = lifted.length === 0 ? "" : ` Inside wheel off the ground: ${lifted.join(" and ")}.`;
  const roll = value("angle", (inTurn.rollAngle.front + inTurn.rollAngle.rear) / 2, 2);
  return `Load transfer in that corner, ${unit("force")}\n${table}\nThe body rolls ${roll}.${up}`;
}
