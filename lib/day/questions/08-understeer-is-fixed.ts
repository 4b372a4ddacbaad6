import { carBalance } from "../../balance/car-balance.js";
import { handlingCarOf } from "../../balance/handling-car-of.js";
import { type PhaseName, phases } from "../../balance/phases.js";
import type { Car } from "../../car/car.js";
import { Refusal } from "../../refusal.js";
import { either, held, type Misconception } from "./question.js";

const speed = 25; // m/s
const alike = 0.1; // m/s²

/** Which end lets go first in the middle of a corner, and how that moves in another part of it, m/s². */
function inOtherPhase(car: Car, phase: PhaseName) {
  const handling = handlingCarOf(car);
  const middle = carBalance(handling, { speed, ...phases.middle });
  const other = carBalance(handling, { speed, ...phases[phase] });
  const { first } = middle;
  if (first === "both") throw new Refusal("does-not-suit", "both its ends let go together.");
  const ahead = (margin: number) => (first === "front" ? margin : -margin);
  const [before, after] = [ahead(middle.understeerMargin), ahead(other.understeerMargin)];
  return {
    end: first,
    phase,
    /** How far that end is ahead in the middle. */
    before,
    push: phases[phase].longitudinalAcceleration ?? 0,
    margin: { middle: middle.understeerMargin, other: other.understeerMargin },
    towardsFront: other.understeerMargin > middle.understeerMargin,
    even: Math.abs(after) <= alike,
    same: after > alike && Math.abs(after - before) <= alike,
    more: after > alike && after - before > alike,
    swapped: after < -alike,
  };
}

const first = (car: Car) => {
  const found = inOtherPhase(car, "braking in");
  return {
    ...found,
    claims: {
      same: held("understeer-is-fixed", found.same),
      even: either("pushing-takes-alike", found.even),
      more: either("loaded-end-slides", found.more),
      swapped: either("brakes-change-ends", found.swapped),
    },
  };
};

const twin = (car: Car) => {
  const found = inOtherPhase(car, "power on");
  return {
    ...found,
    claims: {
      more: either("loaded-end-slides", found.more),
      same: held("understeer-is-fixed", found.same),
      swapped: either("power-frees-it", found.swapped),
      even: either("pushing-takes-alike", found.even),
    },
  };
};

export const understeerIsFixed = {
  idea: "understeer-is-fixed",
  chapter: "07-how-fast-the-load-arrives",
  first,
  twin,
} satisfies Misconception;
