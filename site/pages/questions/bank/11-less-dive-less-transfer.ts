import { type Car, longitudinalLoadTransfer, rideRateOf, rigidCarOf } from "@rollbook/lib";
import type { Draw, Misconception } from "./question.js";
import { type End, withSpringsAt } from "./set-up.js";
import type { Tell } from "./tell.js";

/** What stiffer springs at one end do to how far it sinks and to the load that arrives there. */
function sinking(car: Car, end: End, times: number, longitudinalAcceleration: number, tell: Tell) {
  const at = (which: Car) => {
    const moved = longitudinalLoadTransfer({ ...rigidCarOf(which), longitudinalAcceleration });
    const load = Math.abs(moved);
    return { load, sinks: load / 2 / rideRateOf(which[end]) };
  };
  const [before, after] = [at(car), at(withSpringsAt(car, end, times))];
  const sank = after.sinks / before.sinks - 1;
  return {
    load: after.load / before.load - 1,
    sank,
    sinks: { before: tell.millimetres(before.sinks), after: tell.millimetres(after.sinks) },
    loads: `The load was ${tell.newtons(before.load)} and is ${tell.newtons(after.load)}`,
  };
}

const same = 0.01;

const first: Draw = (car, tell) => {
  const braking = -8; // m/s²
  const { load, sank, sinks, loads } = sinking(car, "front", 2, braking, tell);
  return {
    ask: `You fit front springs twice as stiff. In a straight stop at ${tell.turn(-braking)} the nose now sinks by ${sinks.after} instead of ${sinks.before}. What happens to the load that moves from the rear tyres to the front ones?`,
    choices: [
      {
        text: `It falls by as much as the dive, ${tell.percent(sank, 0)}.`,
        isSo: load <= 0.75 * sank,
        because: `${loads}. Dive is how far the springs give under the load that arrives. Stiffer springs give less under the same load.`,
        idea: "less-dive-less-transfer",
      },
      {
        text: "It rises: a stiff nose digs its tyres in.",
        isSo: load > same,
        because: `${loads}. A spring can only pass on the load that it is given.`,
        idea: "stiffer-moves-more",
      },
      {
        text: "It stays as it was.",
        isSo: Math.abs(load) <= same,
        because: `${loads}. Mass, braking, height and wheelbase settle it, and none of them is a spring.`,
      },
      {
        text: "It falls by half as much: only the front was changed.",
        isSo: load < -same && load > 0.75 * sank,
        because: `${loads}. Front and rear are two ends of one sum: what the rear loses the front gains.`,
        idea: "only-links-stay",
      },
    ],
  };
};

const twin: Draw = (car, tell) => {
  const driving = 3; // m/s²
  const { load, sank, sinks, loads } = sinking(car, "rear", 1.5, driving, tell);
  return {
    ask: `Somebody minds how the tail squats when the car pulls away, and fits rear springs half as stiff again. At ${tell.turn(driving)} it now sinks by ${sinks.after} instead of ${sinks.before}. What about the load that moves from the front tyres to the rear ones?`,
    choices: [
      {
        text: "It is what it was.",
        isSo: Math.abs(load) <= same,
        because: `${loads}. The car is as heavy and as tall as before, and it gains speed as fast.`,
      },
      {
        text: `It is ${tell.percent(sank, 0)} less: less squat, less load.`,
        isSo: load <= 0.75 * sank,
        because: `${loads}. Squat shows the load through soft springs; with stiff ones you only see it less.`,
        idea: "less-dive-less-transfer",
      },
      {
        text: "It is more: stiff springs press the driven wheels down.",
        isSo: load > same,
        because: `${loads}. They press harder per millimetre, over fewer millimetres.`,
        idea: "stiffer-moves-more",
      },
      {
        text: "It is somewhat less: the part through the springs has shrunk.",
        isSo: load < -same && load > 0.75 * sank,
        because: `${loads}. Whatever the links do not carry goes through the springs, be they stiff or soft.`,
        idea: "only-links-stay",
      },
    ],
  };
};

export const lessDiveLessTransfer: Misconception = {
  idea: "less-dive-less-transfer",
  chapter: "01-load-transfer",
  first,
  twin,
};
