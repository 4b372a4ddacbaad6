import {
  axleLoadsOf,
  barRollStiffnessOf,
  type Car,
  eachAxle,
  fromShown,
  withBars,
} from "@rollbook/lib";
import type { Draw, Misconception } from "./question.js";
import { briskTurn, withSprings } from "./set-up.js";
import type { Tell } from "./tell.js";

/** How lean and load of a car differ between two set-ups, in words and as shares. */
function leanAndLoad(before: Car, after: Car, tell: Tell) {
  const turn = briskTurn(before);
  const [old, now] = [axleLoadsOf(before, turn), axleLoadsOf(after, turn)];
  const lean = now.rollAngle.front / old.rollAngle.front - 1;
  const load = now.total / old.total - 1;
  return {
    turn,
    lean,
    load,
    leans: { old: tell.degrees(old.rollAngle.front), now: tell.degrees(now.rollAngle.front) },
    loads: `The load goes from ${tell.newtons(old.total)} to ${tell.newtons(now.total)}`,
    /** Of the change of lean, how much the load has followed. */
    followed: load / lean,
  };
}

const first: Draw = (car, tell) => {
  const extra = fromShown("rollStiffness", 250);
  const bars = eachAxle(car, (axle) => barRollStiffnessOf(axle) + extra);
  const { turn, lean, load, leans, loads, followed } = leanAndLoad(car, withBars(car, bars), tell);
  return {
    ask: `With much stiffer bars at both ends the lean of this car at ${tell.turn(turn)} goes from ${leans.old} to ${leans.now}: that is ${tell.percent(lean, 0)} less. By how much does the load that goes to the outside tyres fall, front and rear together?`,
    choices: [
      {
        text: `By about ${tell.percent(lean, 0)}, as the lean does.`,
        isSo: followed > 0.75,
        because: `${loads}, ${tell.percent(load)} less. What the bars hold, they hold by pushing on the outside tyres.`,
        idea: "less-roll-less-transfer",
      },
      {
        text: `By about half of that, ${tell.percent(lean / 2, 0)}: the springs’ part shrinks, the links keep theirs.`,
        isSo: followed > 0.25 && followed <= 0.75,
        because: `${loads}. The springs push less, since they are bent less; the bars push more, by just as much.`,
        idea: "only-links-stay",
      },
      {
        text: "It does not fall, it grows: stiff bars press the outside tyres down.",
        isSo: load > 0.005,
        because: `${loads}. They press harder for each degree, over fewer degrees.`,
        idea: "stiffer-moves-more",
      },
      {
        text: "By next to nothing.",
        isSo: followed <= 0.25 && load <= 0.005,
        because: `${loads}, ${tell.percent(load)} less, and that is only the body’s weight that hangs out less. Force, height and track did not change.`,
      },
    ],
  };
};

const twin: Draw = (car, tell) => {
  const { turn, lean, load, leans, loads, followed } = leanAndLoad(
    car,
    withSprings(car, 0.7),
    tell,
  );
  return {
    ask: `Another member drives a car like yours on springs that are softer by three tenths. At ${tell.turn(turn)} the lean is ${leans.now} instead of ${leans.old}, ${tell.percent(lean, 0)} more than yours. How much more load goes to the outside tyres of that car?`,
    choices: [
      {
        text: "Less than to yours: soft springs push less.",
        isSo: load < -0.005,
        because: `${loads}. Softer springs are bent further, until they push as hard as they must.`,
        idea: "stiffer-moves-more",
      },
      {
        text: "Hardly any more.",
        isSo: followed <= 0.25 && load >= -0.005,
        because: `${loads}, ${tell.percent(load)} more. A photograph shows the lean; it cannot show the load.`,
      },
      {
        text: `About ${tell.percent(lean, 0)} more, as the lean is.`,
        isSo: followed > 0.75,
        because: `${loads}, ${tell.percent(load)} more. Lean is how far the springs give under the load, not what brings the load.`,
        idea: "less-roll-less-transfer",
      },
      {
        text: `About half of that, ${tell.percent(lean / 2, 0)}: only what goes through springs follows the lean.`,
        isSo: followed > 0.25 && followed <= 0.75,
        because: `${loads}. More lean on softer springs is the same push.`,
        idea: "only-links-stay",
      },
    ],
  };
};

export const lessRollLessTransfer: Misconception = {
  idea: "less-roll-less-transfer",
  chapter: "01-load-transfer",
  first,
  twin,
};
