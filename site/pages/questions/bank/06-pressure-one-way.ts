import { axleWeightsOf, bestPressure, type Car, Refusal, tyreOf } from "@rollbook/lib";
import type { Draw, Misconception } from "./question.js";
import type { Tell } from "./tell.js";

const round = 5e3; // Pa

/** Two tyres like those in front, one below and one above the pressure that grips best. */
function twoTyres(car: Car, by: number, [below, above]: readonly [number, number], tell: Tell) {
  const tyre = tyreOf(car.front);
  const load = axleWeightsOf(car).front / 2;
  const { minimum, maximum } = tyre.valid.pressure;
  const best = Math.round(bestPressure(tyre, { load }) / round) * round;
  const start = { soft: best - below, hard: best + above };
  if (
    Math.min(start.soft, start.soft + by) < minimum ||
    Math.max(start.hard, start.hard + by) > maximum
  )
    throw new Refusal(
      "does-not-suit",
      "its tyres grip best at an end of the pressures that are known of them.",
    );
  const gripAt = (pressure: number) => tyre.peakSideForce({ load, pressure });
  const change = (pressure: number) => gripAt(pressure + by) - gripAt(pressure);
  const said = (pressure: number) =>
    `from ${tell.pressure(pressure)} to ${tell.pressure(pressure + by)} it goes from ${tell.newtons(gripAt(pressure))} to ${tell.newtons(gripAt(pressure + by))}`;
  return {
    load,
    start,
    soft: change(start.soft),
    hard: change(start.hard),
    changes: `This tyre grips best near ${tell.pressure(best)}: ${said(start.soft)}, ${said(start.hard)}.`,
  };
}

const seen = 0.5; // N

const first: Draw = (car, tell) => {
  const by = -15e3;
  const { load, start, soft, hard, changes } = twoTyres(car, by, [35e3, 45e3], tell);
  return {
    ask: `Two tyres like the front ones of this car, each under ${tell.newtons(load)}. Warm, one stands at ${tell.pressure(start.soft)}, the other at ${tell.pressure(start.hard)}. You let ${tell.pressure(-by)} out of each. What happens to their grip?`,
    choices: [
      {
        text: "Both grip better: more print on the road.",
        isSo: soft > seen && hard > seen,
        because: `${changes} A bigger print is no use by itself; it counts how evenly the load lies on it.`,
        idea: "less-air-grips",
      },
      {
        text: "Neither changes: it is the same rubber under the same load.",
        isSo: Math.abs(soft) <= seen && Math.abs(hard) <= seen,
        because: `${changes} The air decides how the load is spread over the rubber.`,
        idea: "rubber-alone",
      },
      {
        text: "The harder one grips better, the softer one less.",
        isSo: soft < -seen && hard > seen,
        because: `${changes} The same step leads up one side of the hill and down the other.`,
      },
      {
        text: "Both grip less: they go soft.",
        isSo: soft < -seen && hard < -seen,
        because: `${changes} A hard tyre may feel quick in your hands, but feel is not grip.`,
        idea: "more-air-grips",
      },
    ],
  };
};

const twin: Draw = (car, tell) => {
  const by = 20e3;
  const { load, start, soft, hard, changes } = twoTyres(car, by, [50e3, 30e3], tell);
  return {
    ask: `Sun is coming. Two members pump ${tell.pressure(by)} into the same kind of tyre, each under ${tell.newtons(load)}: one had ${tell.pressure(start.soft)}, warm, the other ${tell.pressure(start.hard)}. Whose tyre grips better now?`,
    choices: [
      {
        text: "Both: a stiffer tyre holds its shape.",
        isSo: soft > seen && hard > seen,
        because: `${changes} Beyond the top the middle of the tread carries alone.`,
        idea: "more-air-grips",
      },
      {
        text: "Neither: more air is less print, and less print is less grip.",
        isSo: soft < -seen && hard < -seen,
        because: `${changes} The print shrinks for both, and one of them gains.`,
        idea: "less-air-grips",
      },
      {
        text: "Nobody’s: pressure changes feel and wear, not grip.",
        isSo: Math.abs(soft) <= seen && Math.abs(hard) <= seen,
        because: `${changes} Feel changes too, and it tells you little about either.`,
        idea: "rubber-alone",
      },
      {
        text: `That of the one who had ${tell.pressure(start.soft)}.`,
        isSo: soft > seen && hard < -seen,
        because: `${changes} Before you turn a valve, find out on which side of the top you stand.`,
      },
    ],
  };
};

export const pressureOneWay: Misconception = {
  idea: "less-air-grips",
  chapter: "05-tyre-pressure",
  first,
  twin,
};
