import { ruleAgainst } from "../../car/class-rules.js";
import type { Wheels } from "../../load/wheels.js";
import { alignmentBack } from "../../statics/put-back.js";
import { fromHandy } from "../../units.js";
import type { Option, Places } from "./options.js";

/** Something to turn back at one wheel after a change, so that nothing else has changed. */
export interface TurnBack {
  readonly what: "seat" | "camber" | "toe";
  readonly end: "front" | "rear";
  readonly side: "left" | "right";
  /** Turns of the seat, or rad. */
  readonly by: number;
}

/** All that has to be turned back after a change. */
export function turnBackOf({ effect, putBackTurns }: Option, { before }: Places): TurnBack[] {
  const back = alignmentBack(effect.rest, before.rest);
  return [
    ...(putBackTurns === undefined ? [] : atWheels("seat", putBackTurns, Number.MIN_VALUE)),
    ...alignment("camber", back.camber, effect),
    ...alignment("toe", back.toe, effect),
  ].filter(({ what, end }) => what === "seat" || ruleAgainst(effect.car, what, end) === undefined);
}

const WHEELS = [
  ["front", "left"],
  ["front", "right"],
  ["rear", "left"],
  ["rear", "right"],
] as const;

/** What is turned back at each wheel where it is at least so much. */
const atWheels = (what: TurnBack["what"], back: Wheels<number>, least: number): TurnBack[] =>
  WHEELS.map(([end, side]) => ({ what, end, side, by: back[end][side] })).filter(
    ({ by }) => Math.abs(by) >= least,
  );

const SEEN_ANGLE = fromHandy("angle", 0.05); // a step of toe

/** Alignment that height has moved; none for a change of alignment itself. */
function alignment(
  what: "camber" | "toe",
  back: Wheels<number>,
  { moved }: Option["effect"],
): TurnBack[] {
  const { rideHeight } = moved.figures;
  const lowered = Math.max(Math.abs(rideHeight.front), Math.abs(rideHeight.rear)) > 1e-4;
  return lowered ? atWheels(what, back, SEEN_ANGLE) : [];
}
