import { signed } from "../../change/moved.js";
import type { Wheels } from "../../load/wheels.js";
import { alignmentBack } from "../../statics/put-back.js";
import { toShown, type UnitSystem } from "../../units.js";
import type { Option, Places } from "./options.js";

/** What to turn back after a change so that nothing else has changed, in words. */
export function putBackInWords(
  { effect, putBackTurns }: Option,
  { before }: Places,
  system: UnitSystem,
) {
  const turns = putBackTurns === undefined ? [] : seatsInWords(putBackTurns);
  const back = alignmentBack(effect.rest, before.rest);
  return [
    ...turns,
    ...alignmentInWords("camber", back.camber, effect, system),
    ...alignmentInWords("toe", back.toe, effect, system),
  ];
}

const WHEELS = [
  ["front", "left"],
  ["front", "right"],
  ["rear", "left"],
  ["rear", "right"],
] as const;

function seatsInWords(turns: Wheels<number>): string[] {
  return WHEELS.filter(([end, side]) => turns[end][side] !== 0).map(
    ([end, side]) => `${end} ${side} seat ${signed(turns[end][side], 1)} turns`,
  );
}

const SEEN_ANGLE = 0.05; // degrees, a step of toe

/** Alignment that height has moved; none for a change of alignment itself. */
function alignmentInWords(
  what: "camber" | "toe",
  back: Wheels<number>,
  { moved }: Option["effect"],
  system: UnitSystem,
): string[] {
  const { rideHeight } = moved.figures;
  const lowered = Math.max(Math.abs(rideHeight.front), Math.abs(rideHeight.rear)) > 1e-4;
  if (!lowered) return [];
  return WHEELS.flatMap(([end, side]) => {
    const degrees = toShown("angle", back[end][side], system);
    if (Math.abs(degrees) < SEEN_ANGLE) return [];
    return [`${end} ${side} ${what} ${signed(degrees, 2)}°`];
  });
}
