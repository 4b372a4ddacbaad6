import type { Car } from "../../car/car.js";
import { axleWeightsOf } from "../../car/masses.js";
import { tyreOf } from "../../car/tyres.js";
import { Refusal } from "../../refusal.js";
import { bestPressure } from "../../tyre/grip-against-pressure.js";
import { held, type Misconception, meant } from "./question.js";

const round = 5e3; // Pa

/** Two tyres like those in front, one below and one above the pressure that grips best: Pa, N. */
function twoTyres(car: Car, by: number, [below, above]: readonly [number, number]) {
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
  const at = (pressure: number) => tyre.peakSideForce({ load, pressure });
  const changed = (from: number) => ({
    pressure: { before: from, after: from + by },
    grip: { before: at(from), after: at(from + by) },
    change: at(from + by) - at(from),
  });
  return { load, by, best, soft: changed(start.soft), hard: changed(start.hard) };
}

const seen = 0.5; // N

const first = (car: Car) => {
  const tyres = twoTyres(car, -15e3, [35e3, 45e3]);
  const [soft, hard] = [tyres.soft.change, tyres.hard.change];
  return {
    ...tyres,
    claims: {
      bothMore: held("less-air-grips", soft > seen && hard > seen),
      neither: held("rubber-alone", Math.abs(soft) <= seen && Math.abs(hard) <= seen),
      onlyHard: meant(soft < -seen && hard > seen),
      bothLess: held("more-air-grips", soft < -seen && hard < -seen),
    },
  };
};

const twin = (car: Car) => {
  const tyres = twoTyres(car, 20e3, [50e3, 30e3]);
  const [soft, hard] = [tyres.soft.change, tyres.hard.change];
  return {
    ...tyres,
    claims: {
      bothMore: held("more-air-grips", soft > seen && hard > seen),
      bothLess: held("less-air-grips", soft < -seen && hard < -seen),
      neither: held("rubber-alone", Math.abs(soft) <= seen && Math.abs(hard) <= seen),
      onlySoft: meant(soft > seen && hard < -seen),
    },
  };
};

export const pressureOneWay = {
  idea: "less-air-grips",
  chapter: "05-tyre-pressure",
  first,
  twin,
} satisfies Misconception;
