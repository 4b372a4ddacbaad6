import { limitBalanceOf } from "../../balance/limit-balance.js";
import { meanOf } from "../../car/axle.js";
import type { Car } from "../../car/car.js";
import { axleWeightsOf } from "../../car/masses.js";
import { dataTyreOf } from "../../car/tyres.js";
import type { End } from "../../change/change.js";
import { Refusal } from "../../refusal.js";
import { bestPressure } from "../../tyre/grip-against-pressure.js";
import { held, type Misconception, meant } from "./question.js";
import { withPressureAt, withSpringsAt } from "./set-up.js";

const seen = 0.005; // m/s² of the limit

/**
 * Two changes at the end that lets go first: each alone and both together, m/s² of the limit.
 *
 * @param springs - the softer springs, as a multiple
 * @param away - Pa by which the pressure goes away from the best one
 */
function twoChanges(car: Car, springs: number, away: number) {
  const { first, lateralAcceleration: limit } = limitBalanceOf(car);
  const end: End = first === "rear" ? "rear" : "front";
  const [pressure, best] = pressuresOf(car, end);
  const air = pressure > best ? away : -away;
  const softer = withSpringsAt(car, end, springs);
  const gain = (which: Car) => limitBalanceOf(which).lateralAcceleration - limit;
  const aired = (which: Car) => withPressureAt(which, end, pressure + air);
  const alone = { springs: gain(softer), air: gain(aired(car)) };
  return {
    end,
    /** Pa, above 0 for more. */
    air,
    limit,
    alone,
    both: gain(aired(softer)),
  };
}

/** Mean pressure of an end and the one that grips best, Pa. */
function pressuresOf(car: Car, end: End): [number, number] {
  const tyre = dataTyreOf(car[end].tyre);
  const load = axleWeightsOf(car)[end] / 2;
  return [meanOf(car[end].tyre.pressure), bestPressure(tyre, { load })];
}

const first = (car: Car) => {
  const found = twoChanges(car, 0.7, 10e3);
  if (!(found.both > seen))
    throw new Refusal("does-not-suit", "it would not feel better after these two changes.");
  const { springs, air } = found.alone;
  const little = Math.abs(air) < 0.1 * Math.abs(springs) && Math.abs(air) > seen;
  return {
    ...found,
    claims: {
      helped: held("felt-so-it-worked", air > seen),
      unknown: meant(air < -seen && springs > seen),
      noHarm: held("no-harm-felt", Math.abs(air) <= seen && Math.abs(springs) > seen),
      little: held("bigger-change-did-it", little),
    },
  };
};

const twin = (car: Car) => {
  const found = twoChanges(car, 0.93, 45e3);
  if (!(found.both < -seen))
    throw new Refusal("does-not-suit", "it would not feel worse after these two changes.");
  const { springs, air } = found.alone;
  return {
    ...found,
    claims: {
      harmed: held("felt-so-it-worked", springs < -seen),
      nothing: held("bigger-change-did-it", Math.abs(springs) <= seen),
      unknown: meant(springs > seen && air < -seen),
      half: held("each-did-half", Math.abs(springs - air) < 0.2 * Math.abs(found.both)),
    },
  };
};

export const feltSoItWorked = {
  idea: "felt-so-it-worked",
  chapter: "05-tyre-pressure",
  first,
  twin,
} satisfies Misconception;
