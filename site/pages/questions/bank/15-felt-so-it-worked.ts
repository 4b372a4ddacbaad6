import {
  axleWeightsOf,
  bestPressure,
  type Car,
  limitBalanceOf,
  meanOf,
  Refusal,
  tyreNamed,
} from "@rollbook/lib";
import type { Draw, Misconception } from "./question.js";
import { type End, withPressureAt, withSpringsAt } from "./set-up.js";
import type { Tell } from "./tell.js";

const seen = 0.005; // m/s² of the limit

/**
 * Two changes at the end that lets go first: each alone and both together, m/s² of the limit.
 *
 * @param springs - the softer springs, as a multiple
 * @param away - Pa by which the pressure goes away from the best one
 */
function twoChanges(car: Car, springs: number, away: number, tell: Tell) {
  const { first, lateralAcceleration: limit } = limitBalanceOf(car);
  const end: End = first === "rear" ? "rear" : "front";
  const [pressure, best] = pressuresOf(car, end);
  const air = pressure > best ? away : -away;
  const softer = withSpringsAt(car, end, springs);
  const gain = (which: Car) => limitBalanceOf(which).lateralAcceleration - limit;
  const aired = (which: Car) => withPressureAt(which, end, pressure + air);
  const alone = { springs: gain(softer), air: gain(aired(car)) };
  const both = gain(aired(softer));
  const signed = (value: number) =>
    `${value < 0 ? "−" : "+"}${tell.acceleration(Math.abs(value), 3)}`;
  return {
    end,
    alone,
    both,
    air: `${tell.pressure(away)} ${air < 0 ? "less" : "more"} in its tyres`,
    found: `By the model the car’s limit, ${tell.acceleration(limit)}, moves by ${signed(alone.springs)} with the springs alone, by ${signed(alone.air)} with the air alone, and by ${signed(both)} with both.`,
  };
}

/** Mean pressure of an end and the one that grips best, Pa. */
function pressuresOf(car: Car, end: End): [number, number] {
  const tyre = tyreNamed(car[end].tyre.name);
  const load = axleWeightsOf(car)[end] / 2;
  return [meanOf(car[end].tyre.pressure), bestPressure(tyre, { load })];
}

const first: Draw = (car, tell) => {
  const { end, alone, both, air, found } = twoChanges(car, 0.7, 10e3, tell);
  if (!(both > seen))
    throw new Refusal("does-not-suit", "it would not feel better after these two changes.");
  return {
    ask: `The ${end} of this car lets go first. At lunch that end gets springs that are softer by three tenths and, to save a run, ${air} as well. In the afternoon the car reaches further, ${tell.acceleration(both)} more, and it feels better. What is now known about the change of air?`,
    choices: [
      {
        text: "It helps: the car got better.",
        isSo: alone.air > seen,
        because: `${found} The feeling was right, and it belongs to both changes together. One of them did the work of two.`,
        idea: "felt-so-it-worked",
      },
      {
        text: "Nothing: one run, two changes.",
        isSo: alone.air < -seen && alone.springs > seen,
        because: `${found} To know, make one change, run, put it back, run again.`,
      },
      {
        text: "At least it did no harm: that would have been felt.",
        isSo: Math.abs(alone.air) <= seen && Math.abs(alone.springs) > seen,
        because: `${found} A smaller harm hides behind a larger help.`,
        idea: "no-harm-felt",
      },
      {
        text: "Too little to matter: the springs were the bigger change.",
        isSo: Math.abs(alone.air) < 0.1 * Math.abs(alone.springs) && Math.abs(alone.air) > seen,
        because: `${found} How big a change looks says nothing of what it does.`,
        idea: "bigger-change-did-it",
      },
    ],
  };
};

const twin: Draw = (car, tell) => {
  const { end, alone, both, air, found } = twoChanges(car, 0.93, 45e3, tell);
  if (!(both < -seen))
    throw new Refusal("does-not-suit", "it would not feel worse after these two changes.");
  return {
    ask: `Another day, the other way about: the ${end} gets springs that are softer by 7 % and ${air}. The car reaches less far than before, by ${tell.acceleration(-both)}, and it feels worse. What is now known about the softer springs?`,
    choices: [
      {
        text: "They are wrong for this car: it got worse.",
        isSo: alone.springs < -seen,
        because: `${found} The afternoon judged the two together, and the springs were judged for what the air did.`,
        idea: "felt-so-it-worked",
      },
      {
        text: "They do next to nothing: the air decided.",
        isSo: Math.abs(alone.springs) <= seen,
        because: `${found} A smaller help hides behind a larger harm, just as well as the other way about.`,
        idea: "bigger-change-did-it",
      },
      {
        text: "Either they helped or they did harm: the run cannot tell.",
        isSo: alone.springs > seen && alone.air < -seen,
        because: `${found} Put one of the two back and run again; then it can.`,
      },
      {
        text: "Two changes, one result: each did half of the harm.",
        isSo: Math.abs(alone.springs - alone.air) < 0.2 * Math.abs(both),
        because: `${found} Effects do not share themselves out evenly, and these two do not even point the same way.`,
        idea: "each-did-half",
      },
    ],
  };
};

export const feltSoItWorked: Misconception = {
  idea: "felt-so-it-worked",
  chapter: "05-tyre-pressure",
  first,
  twin,
};
