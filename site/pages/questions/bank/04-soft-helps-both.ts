import type { Car } from "@rollbook/lib";
import { gripChoices } from "./grip-of-ends.js";
import type { Draw, Misconception } from "./question.js";
import { briskTurn, type End, withSpringsAt } from "./set-up.js";

const softened = (car: Car, end: End, by: number) => withSpringsAt(car, end, 1 - by);

const first: Draw = (car, tell) => {
  const turn = briskTurn(car);
  const { changes, own, other, both, ownOnly } = gripChoices(
    car,
    softened(car, "front", 0.2),
    "front",
    turn,
    tell,
  );
  return {
    ask: `You fit front springs that are softer by a fifth and leave the rear alone. What happens to the grip of the two axles in a long steady corner, at ${tell.turn(turn)}?`,
    choices: [
      {
        text: "The front grips better, the rear less.",
        isSo: own > 0 && other < 0,
        because: `${changes} The soft end moves less load between its tyres; the total has to go somewhere, so the other end moves more. Few newtons, but they decide which end slides first.`,
      },
      {
        text: "Both grip better: a softer car lets its tyres work.",
        isSo: both,
        because: `${changes} A softer front does keep its own tyres more evenly loaded, and the rear pays for it in the same corner.`,
        idea: "soft-helps-both",
      },
      {
        text: "The front grips better, the rear stays as it was.",
        isSo: ownOnly,
        because: `${changes} The turn settles the sum of what both axles move: nobody can touch one of them alone.`,
        idea: "other-end-stays",
      },
      {
        text: "The front grips less: nothing holds it up. The rear gains.",
        isSo: own < 0 && other > 0,
        because: `${changes} Holding a body up is pressing on one tyre and lifting the other, and that costs grip.`,
        idea: "bar-helps-own-end",
      },
    ],
  };
};

const twin: Draw = (car, tell) => {
  const turn = briskTurn(car) - 1;
  const { changes, own, other, both, ownOnly } = gripChoices(
    car,
    softened(car, "rear", 0.3),
    "rear",
    turn,
    tell,
  );
  return {
    ask: `A member has had enough of a nervous rear and fits rear springs that are softer by three tenths; the front stays. At ${tell.turn(turn)} in a steady corner, which tyres can give more side force than before, and which less?`,
    choices: [
      {
        text: "The rear ones less: the rear falls over. The front ones more.",
        isSo: own < 0 && other > 0,
        because: `${changes} A soft end leans no further than the rest of the body, and it moves less load from tyre to tyre.`,
        idea: "bar-helps-own-end",
      },
      {
        text: "The rear ones more, the front ones as much as before.",
        isSo: ownOnly,
        because: `${changes} What the rear no longer moves, the front must move.`,
        idea: "other-end-stays",
      },
      {
        text: "All of them more.",
        isSo: both,
        because: `${changes} Grip that moves to one end has come from the other.`,
        idea: "soft-helps-both",
      },
      {
        text: "The rear ones more, the front ones less.",
        isSo: own > 0 && other < 0,
        because: `${changes} Softening an end is handing its load transfer to the other one.`,
      },
    ],
  };
};

export const softHelpsBoth: Misconception = {
  idea: "soft-helps-both",
  chapter: "03-distribution-between-axles",
  first,
  twin,
};
