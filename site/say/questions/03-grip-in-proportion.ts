import { gripInProportion as facts } from "@rollbook/lib";
import { inWords } from "./in-words.js";
import type { Tell } from "./tell.js";

type Tyre = Pick<ReturnType<typeof facts.first>, "load" | "grip">;

const asKnown = ({ load, grip }: Tyre, tell: Tell) =>
  `The tyre gives ${tell.newtons(grip.after)} under ${tell.newtons(load.after)}, and ${tell.newtons(grip.before)} under ${tell.newtons(load.before)}`;

function perNewton({ load, grip }: Tyre): string {
  const per = (force: number, carried: number) => (force / carried).toFixed(3);
  return `${per(grip.after, load.after)} instead of ${per(grip.before, load.before)} for each newton it carries`;
}

export const gripInProportion = inWords(facts, {
  first: (tyre, tell) => {
    const { load, grip } = tyre;
    const known = asKnown(tyre, tell);
    return {
      ask: `One front tyre of this car carries ${tell.newtons(load.before)} and can push sideways with ${tell.newtons(grip.before)}. Now it carries half as much again, ${tell.newtons(load.after)}. How hard can it push?`,
      choices: {
        same: {
          text: `${tell.newtons(grip.before)}, as before: grip is rubber.`,
          because: `${known}. The load presses the rubber into the road; without load there is no grip.`,
        },
        inProportion: {
          text: `${tell.newtons(grip.inProportion)}: half as much again, too.`,
          because: `School physics says so; rubber does not. ${known}: ${perNewton(tyre)}.`,
        },
        less: {
          text: `Less than ${tell.newtons(grip.before)}: it is overloaded.`,
          because: `${known}. More load is still more grip, within what the tyre is made for; each newton only brings less.`,
        },
        between: {
          text: `${tell.newtons(grip.after)}: more, but not half as much again.`,
          because: `It gives ${perNewton(tyre)}. That number falls with load, and the rest of the course stands on it.`,
        },
      },
    };
  },
  twin: (tyre, tell) => {
    const { load, grip } = tyre;
    const known = asKnown(tyre, tell);
    return {
      ask: `The same tyre, on the inside of a corner: of its ${tell.newtons(load.before)} a third has gone, and ${tell.newtons(load.after)} is left. At ${tell.newtons(load.before)} it could push with ${tell.newtons(grip.before)}. And now?`,
      choices: {
        between: {
          text: `${tell.newtons(grip.after)}: less, but it has kept more than two thirds.`,
          because: `A light tyre is a good tyre: ${perNewton(tyre)}.`,
        },
        same: {
          text: `${tell.newtons(grip.before)}, as before: the rubber is the same.`,
          because: `${known}. The same rubber, less pressed into the road.`,
        },
        more: {
          text: `More than ${tell.newtons(grip.before)}: it is no longer overloaded.`,
          because: `${known}. Each newton brings more, but there are fewer of them.`,
        },
        inProportion: {
          text: `${tell.newtons(grip.inProportion)}: a third less, too.`,
          because: `It loses less than that. ${known}: ${perNewton(tyre)}.`,
        },
      },
    };
  },
});
