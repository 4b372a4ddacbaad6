import {
  axleLoadsOf,
  type Car,
  carInRoll,
  firstWheelLift,
  fromShown,
  Refusal,
  withBars,
} from "@rollbook/lib";
import type { Draw, Misconception } from "./question.js";
import { otherEnd } from "./set-up.js";

const seen = 1; // N
const tighter = 0.3; // m/s² beyond the turn that lifts the wheel
const stiffBar = fromShown("rollStiffness", 700);

/** The car with no front bar and a very stiff rear one, in a turn that has just lifted a wheel. */
function onThreeWheels(car: Car) {
  const set = withBars(car, { front: 0, rear: stiffBar });
  const lift = firstWheelLift(carInRoll(set));
  const turn = lift.lateralAcceleration + tighter;
  const loads = axleLoadsOf(set, turn);
  if (!loads[lift.axle].lifted || loads.tipped)
    throw new Refusal("does-not-suit", "it does not go round a corner on three wheels.");
  return { set, lift, turn, loads };
}

const first: Draw = (car, tell) => {
  const { set, lift, turn, loads } = onThreeWheels(car);
  const { axle } = lift;
  const extra = fromShown("rollStiffness", 150);
  const bars = { front: 0, rear: stiffBar, [axle]: (axle === "rear" ? stiffBar : 0) + extra };
  const stiffer = axleLoadsOf(withBars(set, bars), turn);
  const change = stiffer[axle].total - loads[axle].total;
  const moved = `That axle moves ${tell.newtons(loads[axle].total)} before and ${tell.newtons(stiffer[axle].total)} after`;
  return {
    ask: `With no front bar and ${tell.rollStiffness(stiffBar)} behind, this car lifts its inside ${axle} wheel at ${tell.turn(lift.lateralAcceleration)}. In a turn a little harder than that the wheel is in the air. You now make the ${axle} bar stiffer still, by ${tell.rollStiffness(extra)}. What does the outside ${axle} tyre carry in that same turn?`,
    choices: [
      {
        text: "More: the stiffer axle takes more of the transfer.",
        isSo: change > seen,
        because: `${moved}: all that its inside tyre ever had. There is nothing left to take.`,
        idea: "always-more-to-move",
      },
      {
        text: "Less: the bar presses the lifted wheel back on to the road.",
        isSo: change < -seen && !stiffer[axle].lifted,
        because: `${moved}. A bar pulls its inside wheel up, never down; a softer one would bring it down.`,
        idea: "bar-pulls-down",
      },
      {
        text: "The same.",
        isSo: Math.abs(change) <= seen,
        because: `${moved}. It had moved all it has. Whatever else crosses in this turn crosses at the ${otherEnd(axle)}.`,
      },
      {
        text: `Less: so stiff an axle hands load to the ${otherEnd(axle)}.`,
        isSo: change < -seen && stiffer[axle].lifted,
        because: `${moved}. Stiffness takes load on; it never hands it away.`,
        idea: "stiff-end-sheds",
      },
    ],
  };
};

const twin: Draw = (car, tell) => {
  const { set, lift, turn, loads } = onThreeWheels(car);
  const { axle } = lift;
  const other = otherEnd(axle);
  const harder = axleLoadsOf(set, turn + tighter);
  if (harder.tipped) throw new Refusal("does-not-suit", "it tips over before it turns any harder.");
  const own = harder[axle].total - loads[axle].total;
  const rest = harder[other].total - loads[other].total;
  const more = `Of ${tell.newtons(own + rest)} more, the ${axle} moves ${tell.newtons(own)} and the ${other} ${tell.newtons(rest)}`;
  return {
    ask: `Photographs show the same car, set up like that, with its inside ${axle} wheel in the air at ${tell.turn(turn)}. It goes faster, until it turns at ${tell.turn(turn + tighter)}, and the wheel stays up. Which axle moves the load that crosses in addition?`,
    choices: [
      {
        text: `The ${other} alone.`,
        isSo: Math.abs(own) <= seen && rest > seen,
        because: `${more}. The axle in the air has moved all it had.`,
      },
      {
        text: `The ${axle}, for the most part: it is the stiff one.`,
        isSo: own > rest && rest > seen,
        because: `${more}. An axle can only move what its inside tyre still carries, and this one carries nothing.`,
        idea: "always-more-to-move",
      },
      {
        text: "Both, in the shares they had before.",
        isSo: own > seen && own <= rest,
        because: `${more}. Stiffness shares the transfer only as long as all four wheels are down.`,
        idea: "share-is-fixed",
      },
      {
        text: "Neither: with a wheel in the air no more load can move.",
        isSo: Math.abs(own) <= seen && Math.abs(rest) <= seen,
        because: `${more}. The turn asks for it, and as long as the other inside tyre carries something it can be moved.`,
        idea: "lift-ends-it",
      },
    ],
  };
};

export const alwaysMoreToMove: Misconception = {
  idea: "always-more-to-move",
  chapter: "03-distribution-between-axles",
  first,
  twin,
};
