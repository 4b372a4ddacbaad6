import { lessRollLessTransfer as facts } from "@rollbook/lib";
import { inWords } from "./in-words.js";

export const lessRollLessTransfer = inWords(facts, {
  first: ({ turn, total, lean, change, leanChange }, tell) => {
    const loads = `The load goes from ${tell.newtons(total.before)} to ${tell.newtons(total.after)}`;
    return {
      ask: `With much stiffer bars at both ends the lean of this car at ${tell.turn(turn)} goes from ${tell.degrees(lean.before)} to ${tell.degrees(lean.after)}: that is ${tell.percent(leanChange, 0)} less. By how much does the load that goes to the outside tyres fall, front and rear together?`,
      choices: {
        asLean: {
          text: `By about ${tell.percent(leanChange, 0)}, as the lean does.`,
          because: `${loads}, ${tell.percent(change)} less. What the bars hold, they hold by pushing on the outside tyres.`,
        },
        half: {
          text: `By about half of that, ${tell.percent(leanChange / 2, 0)}: the springs’ part shrinks, the links keep theirs.`,
          because: `${loads}. The springs push less, since they are bent less; the bars push more, by just as much.`,
        },
        grows: {
          text: "It does not fall, it grows: stiff bars press the outside tyres down.",
          because: `${loads}. They press harder for each degree, over fewer degrees.`,
        },
        hardly: {
          text: "By next to nothing.",
          because: `${loads}, ${tell.percent(change)} less, and that is only the body’s weight that hangs out less. Force, height and track did not change.`,
        },
      },
    };
  },
  twin: ({ turn, total, lean, change, leanChange }, tell) => {
    const loads = `The load goes from ${tell.newtons(total.before)} to ${tell.newtons(total.after)}`;
    return {
      ask: `Another member drives a car like yours on springs that are softer by three tenths. At ${tell.turn(turn)} the lean is ${tell.degrees(lean.after)} instead of ${tell.degrees(lean.before)}, ${tell.percent(leanChange, 0)} more than yours. How much more load goes to the outside tyres of that car?`,
      choices: {
        less: {
          text: "Less than to yours: soft springs push less.",
          because: `${loads}. Softer springs are bent further, until they push as hard as they must.`,
        },
        hardly: {
          text: "Hardly any more.",
          because: `${loads}, ${tell.percent(change)} more. A photograph shows the lean; it cannot show the load.`,
        },
        asLean: {
          text: `About ${tell.percent(leanChange, 0)} more, as the lean is.`,
          because: `${loads}, ${tell.percent(change)} more. Lean is how far the springs give under the load, not what brings the load.`,
        },
        half: {
          text: `About half of that, ${tell.percent(leanChange / 2, 0)}: only what goes through springs follows the lean.`,
          because: `${loads}. More lean on softer springs is the same push.`,
        },
      },
    };
  },
});
