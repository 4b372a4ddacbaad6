import { barRollStiffnessOf } from "../../car/axle.js";
import { withBars } from "../../car/bars.js";
import type { Car } from "../../car/car.js";
import type { End } from "../../change/change.js";
import { eachAxle } from "../../load/wheels.js";
import { fromHandy } from "../../units.js";
import { gripOfEnds } from "./grip-of-ends.js";
import { held, type Misconception, meant } from "./question.js";
import { briskTurn } from "./set-up.js";

/** The grip of both ends with a bar stiffer by so much at one; with one where there was none. */
function withMoreBar(car: Car, end: End, stiffness: number) {
  const turn = briskTurn(car);
  const own = eachAxle(car, barRollStiffnessOf);
  const after = withBars(car, { ...own, [end]: own[end] + stiffness });
  return {
    ...gripOfEnds(car, after, end, turn),
    /** By how much stiffer. */
    stiffness,
    hadBar: own[end] > 0,
  };
}

const seen = 0.5; // N

const first = (car: Car) => {
  const grip = withMoreBar(car, "rear", fromHandy("rollStiffness", 100));
  const [own, other] = [grip.own.change, grip.other.change];
  return {
    ...grip,
    claims: {
      ownGains: held("bar-helps-own-end", own > 0 && other <= seen),
      both: held("flat-car-grips", own > 0 && other > seen),
      traded: meant(own < 0 && other > seen),
      ownLoses: held("other-end-stays", own < 0 && Math.abs(other) <= seen),
    },
  };
};

const twin = (car: Car) => {
  const grip = withMoreBar(car, "front", fromHandy("rollStiffness", 160));
  const [own, other] = [grip.own.change, grip.other.change];
  return {
    ...grip,
    claims: {
      traded: meant(own < 0 && other > seen),
      ownLoses: held("other-end-stays", own < 0 && Math.abs(other) <= seen),
      both: held("flat-car-grips", own > 0 && other > seen),
      ownGains: held("bar-helps-own-end", own > 0 && other <= seen),
    },
  };
};

export const barHelpsOwnEnd = {
  idea: "bar-helps-own-end",
  chapter: "03-distribution-between-axles",
  first,
  twin,
} satisfies Misconception;
