import { damperTransferAtRest, intoTurn, withDampersAt } from "./dampers.js";
import type { Draw, Misconception } from "./question.js";

const seen = 5; // N

const first: Draw = (car, tell) => {
  const stiff = withDampersAt(withDampersAt(car, "front", 2), "rear", 2);
  const [before, after] = [intoTurn(car), intoTurn(stiff)];
  const change = after.settled.front.right - before.settled.front.right;
  const settled = `Settled, it carries ${tell.newtons(before.settled.front.right)} before and ${tell.newtons(after.settled.front.right)} after`;
  const soon = `a quarter of a second into the turn ${tell.newtons(before.soon.front.right)} and ${tell.newtons(after.soon.front.right)}`;
  return {
    ask: `You turn all four dampers to twice their rate, bump and rebound. In a long left-hander at ${tell.turn(before.lateralAcceleration)} the body has leaned as far as it will and stands still. What does the outside front tyre carry now, against before?`,
    choices: [
      {
        text: "The same.",
        isSo: Math.abs(change) <= seen,
        because: `${settled}; ${soon}. Dampers have their say while the body rolls, and none once it stands still.`,
      },
      {
        text: "More: a stiffer damper pushes it harder.",
        isSo: change > seen,
        because: `${settled}. A damper pushes in proportion to how fast it moves, and here it does not move.`,
        idea: "dampers-hold-load",
      },
      {
        text: "Less: stiff dampers hold the body up.",
        isSo: change < -seen,
        because: `${settled}. They slow the lean; they do not hold it. And what holds a body up presses on a tyre.`,
        idea: "dampers-hold-body",
      },
      {
        text: "That depends on whether bump or rebound is the stiffer one.",
        isSo: damperTransferAtRest(stiff) !== 0,
        because: `${settled}. In a settled turn there is neither bump nor rebound.`,
        idea: "bump-against-rebound",
      },
    ],
  };
};

const twin: Draw = (car, tell) => {
  const soft = withDampersAt(car, "rear", 0.5);
  const [before, after] = [intoTurn(car), intoTurn(soft)];
  const change = after.settled.rear.right - before.settled.rear.right;
  const front = after.settled.front.right - before.settled.front.right;
  const settled = `Before it carries ${tell.newtons(before.settled.rear.right)}, after ${tell.newtons(after.settled.rear.right)}`;
  const soon = `On the way in it makes a difference: ${tell.newtons(before.soon.rear.right)} and ${tell.newtons(after.soon.rear.right)} after a quarter of a second.`;
  return {
    ask: `Round and round the skid pad, at a steady ${tell.turn(before.lateralAcceleration)}, the rear slides. To take load off its outside tyre, somebody halves the rear damping. What does the outside rear tyre carry in the next round?`,
    choices: [
      {
        text: "Less: the softer damper presses it less.",
        isSo: change < -seen && front <= seen,
        because: `${settled}. ${soon} In a steady round nothing moves in the damper.`,
        idea: "dampers-hold-load",
      },
      {
        text: "Less, and the outside front tyre more: as with a softer bar.",
        isSo: change < -seen && front > seen,
        because: `${settled}. ${soon} A bar is twisted as long as the body leans; a damper works only while the lean changes.`,
        idea: "dampers-are-bars",
      },
      {
        text: "What it carried before.",
        isSo: Math.abs(change) <= seen,
        because: `${settled}. ${soon}`,
      },
      {
        text: "More: with soft dampers the rear rolls further.",
        isSo: change > seen,
        because: `${settled}. How far it leans is up to springs and bars; dampers decide how soon it gets there.`,
        idea: "roll-moves-load",
      },
    ],
  };
};

export const dampersHoldLoad: Misconception = {
  idea: "dampers-hold-load",
  chapter: "07-how-fast-the-load-arrives",
  first,
  twin,
};
