import { lessDiveLessTransfer as facts } from "@rollbook/lib";
import { inWords } from "./in-words.js";

export const lessDiveLessTransfer = inWords(facts, {
  first: ({ acceleration, load, sinks, sank }, tell) => {
    const loads = `The load was ${tell.newtons(load.before)} and is ${tell.newtons(load.after)}`;
    return {
      ask: `You fit front springs twice as stiff. In a straight stop at ${tell.turn(-acceleration)} the nose now sinks by ${tell.millimetres(sinks.after)} instead of ${tell.millimetres(sinks.before)}. What happens to the load that moves from the rear tyres to the front ones?`,
      choices: {
        asDive: {
          text: `It falls by as much as the dive, ${tell.percent(sank, 0)}.`,
          because: `${loads}. Dive is how far the springs give under the load that arrives. Stiffer springs give less under the same load.`,
        },
        more: {
          text: "It rises: a stiff nose digs its tyres in.",
          because: `${loads}. A spring can only pass on the load that it is given.`,
        },
        same: {
          text: "It stays as it was.",
          because: `${loads}. Mass, braking, height and wheelbase settle it, and none of them is a spring.`,
        },
        half: {
          text: "It falls by half as much: only the front was changed.",
          because: `${loads}. Front and rear are two ends of one sum: what the rear loses the front gains.`,
        },
      },
    };
  },
  twin: ({ acceleration, load, sinks, sank }, tell) => {
    const loads = `The load was ${tell.newtons(load.before)} and is ${tell.newtons(load.after)}`;
    return {
      ask: `Somebody minds how the tail squats when the car pulls away, and fits rear springs half as stiff again. At ${tell.turn(acceleration)} it now sinks by ${tell.millimetres(sinks.after)} instead of ${tell.millimetres(sinks.before)}. What about the load that moves from the front tyres to the rear ones?`,
      choices: {
        same: {
          text: "It is what it was.",
          because: `${loads}. The car is as heavy and as tall as before, and it gains speed as fast.`,
        },
        asSquat: {
          text: `It is ${tell.percent(sank, 0)} less: less squat, less load.`,
          because: `${loads}. Squat shows the load through soft springs; with stiff ones you only see it less.`,
        },
        more: {
          text: "It is more: stiff springs press the driven wheels down.",
          because: `${loads}. They press harder per millimetre, over fewer millimetres.`,
        },
        some: {
          text: "It is somewhat less: the part through the springs has shrunk.",
          because: `${loads}. Whatever the links do not carry goes through the springs, be they stiff or soft.`,
        },
      },
    };
  },
});
