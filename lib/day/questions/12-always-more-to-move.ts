import { axleLoadsOf, carInRoll } from "../../car/axle-loads.js";
import { withBars } from "../../car/bars.js";
import type { Car } from "../../car/car.js";
import { otherEnd } from "../../change/change.js";
import { firstWheelLift } from "../../load/first-lift.js";
import { Refusal } from "../../refusal.js";
import { fromHandy } from "../../units.js";
import { held, type Misconception, meant } from "./question.js";

const seen = 1; // N
const tighter = 0.3; // m/s² beyond the turn that lifts the wheel
const stiffBar = fromHandy("rollStiffness", 700);

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

const first = (car: Car) => {
  const { set, lift, turn, loads } = onThreeWheels(car);
  const { axle } = lift;
  const extra = fromHandy("rollStiffness", 150);
  const bars = { front: 0, rear: stiffBar, [axle]: (axle === "rear" ? stiffBar : 0) + extra };
  const stiffer = axleLoadsOf(withBars(set, bars), turn)[axle];
  const moved = { before: loads[axle].total, after: stiffer.total };
  const change = moved.after - moved.before;
  return {
    axle,
    bar: stiffBar,
    extra,
    /** The turn that lifts the wheel. */
    lift: lift.lateralAcceleration,
    /** Load that the axle moves. */
    moved,
    claims: {
      more: held("always-more-to-move", change > seen),
      pressed: held("bar-pulls-down", change < -seen && !stiffer.lifted),
      same: meant(Math.abs(change) <= seen),
      handed: held("stiff-end-sheds", change < -seen && stiffer.lifted),
    },
  };
};

const twin = (car: Car) => {
  const { set, lift, turn, loads } = onThreeWheels(car);
  const { axle } = lift;
  const harder = axleLoadsOf(set, turn + tighter);
  if (harder.tipped) throw new Refusal("does-not-suit", "it tips over before it turns any harder.");
  const more = (end: "front" | "rear") => harder[end].total - loads[end].total;
  const [own, other] = [more(axle), more(otherEnd(axle))];
  return {
    axle,
    turn: { before: turn, after: turn + tighter },
    /** Load that each axle moves in addition. */
    more: { own, other },
    claims: {
      other: meant(Math.abs(own) <= seen && other > seen),
      own: held("always-more-to-move", own > other && other > seen),
      shared: held("share-is-fixed", own > seen && own <= other),
      neither: held("lift-ends-it", Math.abs(own) <= seen && Math.abs(other) <= seen),
    },
  };
};

export const alwaysMoreToMove = {
  idea: "always-more-to-move",
  chapter: "03-distribution-between-axles",
  first,
  twin,
} satisfies Misconception;
