import { axleLoadsOf, Refusal, withBars } from "@rollbook/lib";
import { damperTransferAtRest } from "./dampers.js";
import type { Draw, Misconception } from "./question.js";
import { briskTurn, withSprings } from "./set-up.js";

const nearly = 0.05; // of the load that moves

const first: Draw = (car, tell) => {
  const turn = briskTurn(car);
  const [before, after] = [axleLoadsOf(car, turn), axleLoadsOf(withSprings(car, 1.5), turn)];
  const change = after.total / before.total - 1;
  const loads = `${tell.newtons(before.total)} before, ${tell.newtons(after.total)} after`;
  const lean = `from ${tell.degrees(before.rollAngle.front)} to ${tell.degrees(after.rollAngle.front)}`;
  return {
    ask: `You fit springs half as stiff again at all four corners and take the same corner at the same speed, ${tell.turn(turn)}. How much load now goes from the inside tyres to the outside ones, front and rear together?`,
    choices: [
      {
        text: "Clearly more: stiffer springs push the outside tyres harder.",
        isSo: change > nearly,
        because: `A stiffer spring pushes harder for each degree of lean, but the body then leans less, ${lean}. The push comes out the same: ${loads}.`,
        idea: "stiffer-moves-more",
      },
      {
        text: "Clearly less: the car rolls less.",
        isSo: change < -nearly,
        because: `It does roll less, ${lean}. The load hardly noticed: ${loads}. Roll is what load transfer does to a soft car, not what moves the load.`,
        idea: "less-roll-less-transfer",
      },
      {
        text: "Nearly as much as before.",
        isSo: Math.abs(change) <= nearly,
        because: `Mass, turn, height and track are what they were, and they settle it: ${loads}. The springs settle how far the body leans, ${lean}.`,
      },
      {
        text: "That is for the dampers to decide.",
        isSo: damperTransferAtRest(car) !== 0,
        because: `A damper pushes only while it moves. Once the body has settled in its lean, it adds ${tell.newtons(damperTransferAtRest(car))}.`,
        idea: "dampers-decide",
      },
    ],
  };
};

const twin: Draw = (car, tell) => {
  const turn = briskTurn(car);
  if (!car.front.bar && !car.rear.bar)
    throw new Refusal("does-not-suit", "it has no anti-roll bar to take off.");
  const bare = withBars(car, { front: 0, rear: 0 });
  const [before, after] = [axleLoadsOf(car, turn), axleLoadsOf(bare, turn)];
  const change = after.total / before.total - 1;
  const loads = `from ${tell.newtons(before.total)} to ${tell.newtons(after.total)}`;
  const lean = `from ${tell.degrees(before.rollAngle.front)} to ${tell.degrees(after.rollAngle.front)}`;
  return {
    ask: `For a wet afternoon the anti-roll bars come off. Suppose the same corner is taken at the same ${tell.turn(turn)}. What becomes of the load that goes to the outside tyres, front and rear together?`,
    choices: [
      {
        text: "It is clearly less: the soft car no longer presses on its outside tyres.",
        isSo: change < -nearly && change > -0.5,
        because: `Springs and body do what the bars did before, at a greater lean, ${lean}. The load goes ${loads}.`,
        idea: "stiffer-moves-more",
      },
      {
        text: "It stays nearly the same.",
        isSo: Math.abs(change) <= nearly,
        because: `It goes ${loads}; the lean goes ${lean}. What the bars moved, the springs now move.`,
      },
      {
        text: "It is clearly more: the car rolls further.",
        isSo: change > nearly,
        because: `The lean goes ${lean}, the load only ${loads}. The little that it grows is the body’s weight hanging out further.`,
        idea: "roll-moves-load",
      },
      {
        text: "Hardly any load moves now: it was the bars that moved it.",
        isSo: change <= -0.5,
        because: `Bars were never needed for it: cars without any still load their outside tyres. Here it goes ${loads}.`,
        idea: "bars-move-it",
      },
    ],
  };
};

export const stifferMovesMore: Misconception = {
  idea: "stiffer-moves-more",
  chapter: "01-load-transfer",
  first,
  twin,
};
