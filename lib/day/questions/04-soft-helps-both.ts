import type { Car } from "../../car/car.js";
import type { End } from "../../change/change.js";
import { gripOfEnds } from "./grip-of-ends.js";
import { held, type Misconception, meant } from "./question.js";
import { briskTurn, withSpringsAt } from "./set-up.js";

const softened = (car: Car, end: End, by: number) => withSpringsAt(car, end, 1 - by);

const first = (car: Car) => {
  const grip = gripOfEnds(car, softened(car, "front", 0.2), "front", briskTurn(car));
  const { own, other, both, ownOnly } = grip;
  return {
    ...grip,
    claims: {
      traded: meant(own.change > 0 && other.change < 0),
      both: held("soft-helps-both", both),
      ownOnly: held("other-end-stays", ownOnly),
      otherWay: held("bar-helps-own-end", own.change < 0 && other.change > 0),
    },
  };
};

const twin = (car: Car) => {
  const grip = gripOfEnds(car, softened(car, "rear", 0.3), "rear", briskTurn(car) - 1);
  const { own, other, both, ownOnly } = grip;
  return {
    ...grip,
    claims: {
      otherWay: held("bar-helps-own-end", own.change < 0 && other.change > 0),
      ownOnly: held("other-end-stays", ownOnly),
      both: held("soft-helps-both", both),
      traded: meant(own.change > 0 && other.change < 0),
    },
  };
};

export const softHelpsBoth = {
  idea: "soft-helps-both",
  chapter: "03-distribution-between-axles",
  first,
  twin,
} satisfies Misconception;
