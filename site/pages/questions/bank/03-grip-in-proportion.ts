import { axleWeightsOf, type Car, meanOf, Refusal, tyreNamed } from "@rollbook/lib";
import type { Draw, Misconception } from "./question.js";
import type { Tell } from "./tell.js";

/** A front tyre at rest and under another load. */
function frontTyre(car: Car, times: number, tell: Tell) {
  const tyre = tyreNamed(car.front.tyre.name);
  const pressure = meanOf(car.front.tyre.pressure);
  const load = axleWeightsOf(car).front / 2;
  const grip = tyre.peakSideForce({ load, pressure });
  const changed = tyre.peakSideForce({ load: times * load, pressure });
  if (times * load > tyre.valid.load.maximum)
    throw new Refusal("does-not-suit", "its tyres carry more than is known of them.");
  const per = (force: number, carried: number) => (force / carried).toFixed(3);
  return {
    load,
    grip,
    changed,
    asKnown: `The tyre gives ${tell.newtons(changed)} under ${tell.newtons(times * load)}, and ${tell.newtons(grip)} under ${tell.newtons(load)}`,
    perNewton: `${per(changed, times * load)} instead of ${per(grip, load)} for each newton it carries`,
  };
}

const alike = (a: number, b: number) => Math.abs(a / b - 1) < 0.005;

const first: Draw = (car, tell) => {
  const times = 1.5;
  const { load, grip, changed, asKnown, perNewton } = frontTyre(car, times, tell);
  return {
    ask: `One front tyre of this car carries ${tell.newtons(load)} and can push sideways with ${tell.newtons(grip)}. Now it carries half as much again, ${tell.newtons(times * load)}. How hard can it push?`,
    choices: [
      {
        text: `${tell.newtons(grip)}, as before: grip is rubber.`,
        isSo: alike(changed, grip),
        because: `${asKnown}. The load presses the rubber into the road; without load there is no grip.`,
        idea: "rubber-alone",
      },
      {
        text: `${tell.newtons(times * grip)}: half as much again, too.`,
        isSo: alike(changed, times * grip),
        because: `School physics says so; rubber does not. ${asKnown}: ${perNewton}.`,
        idea: "grip-in-proportion",
      },
      {
        text: `Less than ${tell.newtons(grip)}: it is overloaded.`,
        isSo: changed < grip && !alike(changed, grip),
        because: `${asKnown}. More load is still more grip, within what the tyre is made for; each newton only brings less.`,
        idea: "overload-slides",
      },
      {
        text: `${tell.newtons(changed)}: more, but not half as much again.`,
        isSo:
          changed > grip &&
          changed < times * grip &&
          !alike(changed, grip) &&
          !alike(changed, times * grip),
        because: `It gives ${perNewton}. That number falls with load, and the rest of the course stands on it.`,
      },
    ],
  };
};

const twin: Draw = (car, tell) => {
  const times = 2 / 3;
  const { load, grip, changed, asKnown, perNewton } = frontTyre(car, times, tell);
  return {
    ask: `The same tyre, on the inside of a corner: of its ${tell.newtons(load)} a third has gone, and ${tell.newtons(times * load)} is left. At ${tell.newtons(load)} it could push with ${tell.newtons(grip)}. And now?`,
    choices: [
      {
        text: `${tell.newtons(changed)}: less, but it has kept more than two thirds.`,
        isSo: changed > times * grip && changed < grip && !alike(changed, times * grip),
        because: `A light tyre is a good tyre: ${perNewton}.`,
      },
      {
        text: `${tell.newtons(grip)}, as before: the rubber is the same.`,
        isSo: alike(changed, grip),
        because: `${asKnown}. The same rubber, less pressed into the road.`,
        idea: "rubber-alone",
      },
      {
        text: `More than ${tell.newtons(grip)}: it is no longer overloaded.`,
        isSo: changed > grip && !alike(changed, grip),
        because: `${asKnown}. Each newton brings more, but there are fewer of them.`,
        idea: "overload-slides",
      },
      {
        text: `${tell.newtons(times * grip)}: a third less, too.`,
        isSo: alike(changed, times * grip),
        because: `It loses less than that. ${asKnown}: ${perNewton}.`,
        idea: "grip-in-proportion",
      },
    ],
  };
};

export const gripInProportion: Misconception = {
  idea: "grip-in-proportion",
  chapter: "02-tyre-nonlinearity",
  first,
  twin,
};
