import { dampersHoldLoad as facts } from "@rollbook/lib";
import { inWords } from "./in-words.js";

export const dampersHoldLoad = inWords(facts, {
  first: (tyre, tell) => {
    const settled = `Settled, it carries ${tell.newtons(tyre.settled.before)} before and ${tell.newtons(tyre.settled.after)} after`;
    const soon = `a quarter of a second into the turn ${tell.newtons(tyre.soon.before)} and ${tell.newtons(tyre.soon.after)}`;
    return {
      ask: `You turn all four dampers to twice their rate, bump and rebound. In a long left-hander at ${tell.turn(tyre.turn)} the body has leaned as far as it will and stands still. What does the outside front tyre carry now, against before?`,
      choices: {
        same: {
          text: "The same.",
          because: `${settled}; ${soon}. Dampers have their say while the body rolls, and none once it stands still.`,
        },
        more: {
          text: "More: a stiffer damper pushes it harder.",
          because: `${settled}. A damper pushes in proportion to how fast it moves, and here it does not move.`,
        },
        less: {
          text: "Less: stiff dampers hold the body up.",
          because: `${settled}. They slow the lean; they do not hold it. And what holds a body up presses on a tyre.`,
        },
        direction: {
          text: "That depends on whether bump or rebound is the stiffer one.",
          because: `${settled}. In a settled turn there is neither bump nor rebound.`,
        },
      },
    };
  },
  twin: (tyre, tell) => {
    const settled = `Before it carries ${tell.newtons(tyre.settled.before)}, after ${tell.newtons(tyre.settled.after)}`;
    const soon = `On the way in it makes a difference: ${tell.newtons(tyre.soon.before)} and ${tell.newtons(tyre.soon.after)} after a quarter of a second.`;
    return {
      ask: `Round and round the skid pad, at a steady ${tell.turn(tyre.turn)}, the rear slides. To take load off its outside tyre, somebody halves the rear damping. What does the outside rear tyre carry in the next round?`,
      choices: {
        less: {
          text: "Less: the softer damper presses it less.",
          because: `${settled}. ${soon} In a steady round nothing moves in the damper.`,
        },
        asBar: {
          text: "Less, and the outside front tyre more: as with a softer bar.",
          because: `${settled}. ${soon} A bar is twisted as long as the body leans; a damper works only while the lean changes.`,
        },
        same: {
          text: "What it carried before.",
          because: `${settled}. ${soon}`,
        },
        more: {
          text: "More: with soft dampers the rear rolls further.",
          because: `${settled}. How far it leans is up to springs and bars; dampers decide how soon it gets there.`,
        },
      },
    };
  },
});
