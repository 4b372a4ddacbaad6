import { axleLoadsOf, type Car, Refusal } from "@rollbook/lib";
import type { Draw, Misconception } from "./question.js";
import { briskTurn, withRollCentres } from "./set-up.js";
import type { Tell } from "./tell.js";

const seen = 5; // N
const nearly = 0.05; // of the load that moves

/** Loads and lean before and after the roll centres have moved. */
function moved(car: Car, height: { front: number; rear: number }, tell: Tell) {
  const turn = briskTurn(car);
  const [before, after] = [axleLoadsOf(car, turn), axleLoadsOf(withRollCentres(car, height), turn)];
  const pair = (from: number, to: number) => `${tell.newtons(from)} to ${tell.newtons(to)}`;
  return {
    turn,
    before,
    after,
    total: after.total / before.total - 1,
    lean: after.rollAngle.front / before.rollAngle.front - 1,
    loads: `The front goes from ${pair(before.front.total, after.front.total)}, the rear from ${pair(before.rear.total, after.rear.total)}, both together from ${pair(before.total, after.total)}`,
    links: before.front.geometric + before.rear.geometric,
  };
}

const first: Draw = (car, tell) => {
  const { front, rear } = car;
  const by = 0.08; // m
  const height = {
    front: front.geometry.rollCentreHeight + by,
    rear: rear.geometry.rollCentreHeight,
  };
  const { turn, before, after, total, loads } = moved(car, height, tell);
  const [own, other] = [
    after.front.total - before.front.total,
    after.rear.total - before.rear.total,
  ];
  return {
    ask: `New links raise the front roll centre of this car by ${tell.millimetres(by)}; body, springs and bars stay as they are. In the same corner, at ${tell.turn(turn)}, what changes in the load that goes to the outside tyres?`,
    choices: [
      {
        text: "The front moves less: what the links hold does not reach its tyres.",
        isSo: own < -seen,
        because: `${loads}. What the links hold they hold against the tyres; no link can push on the air.`,
        idea: "roll-centre-removes",
      },
      {
        text: "Nothing, neither front nor rear: springs and bars are the same.",
        isSo: Math.abs(own) <= seen && Math.abs(other) <= seen,
        because: `${loads}. Springs and bars share out only what the links leave them.`,
        idea: "links-have-no-say",
      },
      {
        text: "The front moves more, and the rear as much as before.",
        isSo: own > seen && Math.abs(other) <= seen,
        because: `${loads}. With more through the front links the body leans less, so the rear springs move less.`,
        idea: "other-end-stays",
      },
      {
        text: "The front moves more, the rear less; the sum hardly changes.",
        isSo: own > seen && other < -seen && Math.abs(total) <= nearly,
        because: `${loads}. A higher roll centre stiffens its end without a spring: it takes more of the same sum.`,
      },
    ],
  };
};

const twin: Draw = (car, tell) => {
  const { turn, total, lean, loads, links, before, after } = moved(
    car,
    { front: 0, rear: 0 },
    tell,
  );
  if (!(links > 0.05 * before.total))
    throw new Refusal("does-not-suit", "its links carry hardly any load as it is.");
  const share = links / before.total;
  const leans = `The lean goes from ${tell.degrees(before.rollAngle.front)} to ${tell.degrees(after.rollAngle.front)}.`;
  return {
    ask: `In this car the links carry ${tell.newtons(links)} of the load that moves at ${tell.turn(turn)}. Other links put both roll centres on the ground, where links carry nothing of the body. What happens to the load that goes to the outside tyres?`,
    choices: [
      {
        text: "Nothing changes at all, not even the lean.",
        isSo: Math.abs(lean) <= 0.01,
        because: `${leans} ${loads}. The springs now have to do what the links did.`,
        idea: "links-have-no-say",
      },
      {
        text: `It falls by those ${tell.newtons(links)}.`,
        isSo: total <= -0.5 * share,
        because: `${loads}. ${leans} What the links no longer carry, springs and bars must.`,
        idea: "roll-centre-removes",
      },
      {
        text: "It stays nearly the same; springs and bars carry more of it.",
        isSo: Math.abs(total) <= nearly && Math.abs(total) < 0.5 * share && Math.abs(lean) > 0.01,
        because: `${loads}. ${leans} The roll centre chooses the road, not the amount.`,
      },
      {
        text: "It clearly grows: the body leans further.",
        isSo: total > nearly,
        because: `${leans} ${loads}. What little it grows is the body’s weight hanging out further.`,
        idea: "roll-moves-load",
      },
    ],
  };
};

export const rollCentreRemoves: Misconception = {
  idea: "roll-centre-removes",
  chapter: "04-roll-centre",
  first,
  twin,
};
