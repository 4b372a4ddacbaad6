import { barRollStiffnessOf, type Car, eachAxle, fromShown, withBars } from "@rollbook/lib";
import { gripChoices } from "./grip-of-ends.js";
import type { Draw, Misconception } from "./question.js";
import { briskTurn, type End } from "./set-up.js";

/** The car with a bar stiffer by so much at one end; with one where there was none. */
function withMoreBar(car: Car, end: End, stiffness: number): Car {
  const own = eachAxle(car, barRollStiffnessOf);
  return withBars(car, { ...own, [end]: own[end] + stiffness });
}

const doneTo = (car: Car, end: End, stiffness: string) =>
  barRollStiffnessOf(car[end]) > 0
    ? `make the ${end} bar stiffer by ${stiffness}`
    : `fit a ${end} bar of ${stiffness}`;

const first: Draw = (car, tell) => {
  const turn = briskTurn(car);
  const extra = fromShown("rollStiffness", 100);
  const after = withMoreBar(car, "rear", extra);
  const { changes, own, other } = gripChoices(car, after, "rear", turn, tell);
  return {
    ask: `Suppose that the rear slides first in a long steady corner. To hold it, you ${doneTo(car, "rear", tell.rollStiffness(extra))}. What happens to the grip of the two axles, at ${tell.turn(turn)}?`,
    choices: [
      {
        text: "The rear grips better: the bar holds it up. The front is none the better.",
        isSo: own > 0 && other <= 0.5,
        because: `${changes} A bar carries no weight: what it lifts off its inside tyre it puts on its outside one. The rear slides sooner.`,
        idea: "bar-helps-own-end",
      },
      {
        text: "Both grip better: the car stands flatter.",
        isSo: own > 0 && other > 0.5,
        because: `${changes} It does stand flatter. But flat is not grip; how evenly the tyres are loaded is.`,
        idea: "flat-car-grips",
      },
      {
        text: "The rear grips less, the front better.",
        isSo: own < 0 && other > 0.5,
        because: `${changes} A bar costs grip at its own end and gives it to the other one.`,
      },
      {
        text: "The rear grips less, the front stays: it has its own bar.",
        isSo: own < 0 && Math.abs(other) <= 0.5,
        because: `${changes} The axles share one sum, so what the rear takes over the front is spared.`,
        idea: "other-end-stays",
      },
    ],
  };
};

const twin: Draw = (car, tell) => {
  const turn = briskTurn(car);
  const extra = fromShown("rollStiffness", 160);
  const after = withMoreBar(car, "front", extra);
  const { changes, own, other } = gripChoices(car, after, "front", turn, tell);
  return {
    ask: `The nose runs wide and leans hard on its outside tyre. A neighbour says: ${doneTo(car, "front", tell.rollStiffness(extra))}, that holds the nose up. You do it, and nothing else. What has each axle gained or lost at ${tell.turn(turn)}?`,
    choices: [
      {
        text: "The front has lost grip, the rear has gained some.",
        isSo: own < 0 && other > 0.5,
        because: `${changes} It now runs wider still, with a flatter nose.`,
      },
      {
        text: "The front has lost grip, the rear has what it had.",
        isSo: own < 0 && Math.abs(other) <= 0.5,
        because: `${changes} One sum is shared by two axles.`,
        idea: "other-end-stays",
      },
      {
        text: "Both have gained: less roll, more grip.",
        isSo: own > 0 && other > 0.5,
        because: `${changes} Less roll may keep the wheels more upright, but the load that this end moves has grown.`,
        idea: "flat-car-grips",
      },
      {
        text: "The front has gained: its outside tyre is spared.",
        isSo: own > 0 && other <= 0.5,
        because: `${changes} The bar presses its outside tyre harder; that is how it holds the nose up.`,
        idea: "bar-helps-own-end",
      },
    ],
  };
};

export const barHelpsOwnEnd: Misconception = {
  idea: "bar-helps-own-end",
  chapter: "03-distribution-between-axles",
  first,
  twin,
};
