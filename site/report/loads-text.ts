import type { Wheels } from "../../lib/load/wheels.js";
import type { SideInTurn } from "./in-turn.js";
import type { SetUpReport } from "./set-up-report.js";
import { textTable } from "./text-table.js";
import type { Writer } from "./writer.js";

/** What each wheel carries, at rest and in the turn, and whether the car can turn so hard at all. */
export function loads({ atRest, inTurn }: SetUpReport, write: Writer): string {
  const { number, unit } = write;
  const row = (name: string, load: Wheels<number>) => [
    name,
    ...[load.front.left, load.front.right, load.rear.left, load.rear.right].map((one) =>
      number("force", one, 0),
    ),
  ];
  const { leftTurn, rightTurn } = inTurn;
  const rows = [
    ["", "front left", "front right", "rear left", "rear right"],
    row("at rest", atRest.load),
    ...(leftTurn.load ? [row("left turn", leftTurn.load)] : []),
    ...(rightTurn.load ? [row("right turn", rightTurn.load)] : []),
  ];
  return [
    `Wheel loads, ${unit("force")}`,
    textTable(rows),
    ...over(inTurn, write),
    ...harder(inTurn, write),
  ].join("\n");
}

/** A sentence where the car tips over in that corner, to one side or to both. */
function over({ leftTurn, rightTurn }: SetUpReport["inTurn"], { value }: Writer): string[] {
  const at = ({ tipsOverAt }: SideInTurn) => value("acceleration", tipsOverAt, 2);
  const [left, right] = [at(leftTurn), at(rightTurn)];
  const before = "tips over before it turns so hard";
  if (leftTurn.tipped && rightTurn.tipped)
    return [`The car ${before}: at ${bothSides(left, right)}.`];
  if (leftTurn.tipped) return [`In a left turn the car ${before}: at ${left}.`];
  return rightTurn.tipped ? [`In a right turn the car ${before}: at ${right}.`] : [];
}

/** A sentence where the tyres let go before the car turns so hard. */
function harder({ leftTurn, rightTurn }: SetUpReport["inTurn"], { value }: Writer): string[] {
  const beyond = ({ tipped, harderThanLimit }: SideInTurn) => harderThanLimit && !tipped;
  const at = ({ limit }: SideInTurn) => value("acceleration", limit, 2);
  const [left, right] = [beyond(leftTurn), beyond(rightTurn)];
  if (!(left || right)) return [];
  const which = left && right ? "That" : `To the ${left ? "left" : "right"} that`;
  const own =
    left && right ? bothSides(at(leftTurn), at(rightTurn)) : at(left ? leftTurn : rightTurn);
  return [
    `${which} is harder than this car can turn, whose own limit is ${own}: loads and roll are what they would be if its tyres held.`,
  ];
}

const bothSides = (left: string, right: string): string =>
  left === right ? left : `${left} to the left and ${right} to the right`;

/** How much load moves in the turn, through what, and at which end; once where both sides are alike. */
export function transfer({ inTurn: { leftTurn, rightTurn } }: SetUpReport, write: Writer): string {
  const [left, right] = [transferTo(leftTurn, write), transferTo(rightTurn, write)];
  const title = (where: string) => `Load transfer ${where}, ${write.unit("force")}`;
  if (left !== undefined && left === right) return `${title("in that corner")}\n${left}`;
  return [
    ...(left === undefined ? [] : [`${title("in that left turn")}\n${left}`]),
    ...(right === undefined ? [] : [`${title("in that right turn")}\n${right}`]),
  ].join("\n\n");
}

/** From the inner to the outer tyres; nothing where the car tips over. */
function transferTo(side: SideInTurn, { number, value }: Writer): string | undefined {
  const { front, rear, rollAngle } = side;
  if (front === undefined || rear === undefined || rollAngle === undefined) return undefined;
  const part = (name: string, key: "elastic" | "geometric" | "unsprung" | "total") => {
    const way = front.total + rear.total < 0 ? -1 : 1;
    const [inFront, behind] = [way * front[key], way * rear[key]];
    const sum = inFront + behind;
    const share = sum === 0 ? 0.5 : inFront / sum;
    return [
      name,
      number("force", inFront, 0),
      number("force", behind, 0),
      number("share", share, 1),
    ];
  };
  const table = textTable([
    ["", "front", "rear", "front share %"],
    part("springs, bars, tyres", "elastic"),
    part("links, at once", "geometric"),
    part("wheels themselves", "unsprung"),
    part("together", "total"),
  ]);
  const lifted = [...(front.lifted ? ["front"] : []), ...(rear.lifted ? ["rear"] : [])];
  const up = lifted.length === 0 ? "" : ` Inside wheel off the ground: ${lifted.join(" and ")}.`;
  const roll = value("angle", Math.abs(rollAngle.front + rollAngle.rear) / 2, 2);
  return `${table}\nThe body rolls ${roll}.${up}`;
}
