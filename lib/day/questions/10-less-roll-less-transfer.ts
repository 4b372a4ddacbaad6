import { barRollStiffnessOf } from "../../car/axle.js";
import { withBars } from "../../car/bars.js";
import type { Car } from "../../car/car.js";
import { eachAxle } from "../../load/wheels.js";
import { fromHandy } from "../../units.js";
import { loadsAndLean } from "./loads-and-lean.js";
import { held, type Misconception, meant } from "./question.js";
import { briskTurn, withSprings } from "./set-up.js";

/** How lean and load of a car differ between two set-ups, also as shares. */
function compared(before: Car, after: Car) {
  const loads = loadsAndLean(before, after, briskTurn(before));
  const leanChange = loads.lean.after / loads.lean.before - 1;
  return {
    ...loads,
    leanChange,
    /** Of the change of lean, how much the load has followed. */
    followed: loads.change / leanChange,
  };
}

const first = (car: Car) => {
  const extra = fromHandy("rollStiffness", 250);
  const bars = eachAxle(car, (axle) => barRollStiffnessOf(axle) + extra);
  const found = compared(car, withBars(car, bars));
  const { change, followed } = found;
  return {
    ...found,
    claims: {
      asLean: held("less-roll-less-transfer", followed > 0.75),
      half: held("only-links-stay", followed > 0.25 && followed <= 0.75),
      grows: held("stiffer-moves-more", change > 0.005),
      hardly: meant(followed <= 0.25 && change <= 0.005),
    },
  };
};

const twin = (car: Car) => {
  const found = compared(car, withSprings(car, 0.7));
  const { change, followed } = found;
  return {
    ...found,
    claims: {
      less: held("stiffer-moves-more", change < -0.005),
      hardly: meant(followed <= 0.25 && change >= -0.005),
      asLean: held("less-roll-less-transfer", followed > 0.75),
      half: held("only-links-stay", followed > 0.25 && followed <= 0.75),
    },
  };
};

export const lessRollLessTransfer = {
  idea: "less-roll-less-transfer",
  chapter: "01-load-transfer",
  first,
  twin,
} satisfies Misconception;
