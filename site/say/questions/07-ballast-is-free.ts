import { ballastIsFree as facts } from "@rollbook/lib";
import { inWords } from "./in-words.js";

export const ballastIsFree = inWords(facts, {
  first: ({ radius, mass, height, speed, grown }, tell) => {
    const speeds = `It goes from ${tell.speed(speed.before, 2)} to ${tell.speed(speed.after, 2)}`;
    const needs = `Weight grows by ${tell.percent(grown.weight)}, grip by ${tell.percent(grown.grip)}`;
    return {
      ask: `This car rounds a steady corner of ${tell.metres(radius, 0)} radius as fast as its tyres allow, ${tell.speed(speed.before)}. The class now wants ${tell.kilograms(mass)} of ballast, and you bolt it down ${tell.metres(height)} above the road, so that the balance stays. What happens to that speed?`,
      choices: {
        weight: {
          text: "It rises: weight presses the tyres on to the road.",
          because: `${speeds}. ${needs}: the corner asks for more than the tyres add.`,
        },
        slower: {
          text: "It falls a little.",
          because: `${speeds}. ${needs}. What is missing, you drive slower by.`,
        },
        same: {
          text: "It stays: grip and need both grow with mass.",
          because: `${speeds}. Mass would cancel if grip grew in proportion to load. ${needs}.`,
        },
        low: {
          text: "It rises: so low down, it lowers the centre of gravity.",
          because: `${speeds}. It does lower it, and a little less load crosses for each newton of side force; but its own weight costs more than that.`,
        },
      },
    };
  },
  twin: ({ radius, mass, speed, gain, proportion }, tell) => {
    const speeds = `It goes from ${tell.speed(speed.before, 2)} to ${tell.speed(speed.after, 2)}`;
    return {
      ask: `Over the winter ${tell.kilograms(mass)} come out of this car, all at the height of its centre of gravity. Nothing else changes. What becomes of its fastest ${tell.speed(speed.before)} through a long corner of ${tell.metres(radius, 0)} radius?`,
      choices: {
        same: {
          text: "It stays: lightness pays on the straight, in a corner mass cancels.",
          because: `${speeds}. It pays on the straight more, but not only there: lighter loaded tyres grip better for each newton.`,
        },
        slower: {
          text: "It falls: less weight on the tyres is less grip.",
          because: `${speeds}. There is less grip, and still less to hold.`,
        },
        inProportion: {
          text: `It rises by ${tell.percent(proportion)}: the grip is the same, the mass is not.`,
          because: `${speeds}, ${tell.percent(gain, 2)}. The grip is not the same: less load on a tyre is less grip.`,
        },
        faster: {
          text: `It rises, by ${tell.percent(gain, 2)} or so.`,
          because: `${speeds}. The tyres carry less, and what they carry they hold better.`,
        },
      },
    };
  },
});
