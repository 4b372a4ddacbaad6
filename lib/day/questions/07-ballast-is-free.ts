import { cornerSpeed } from "../../balance/corner-speed.js";
import { pairLimit } from "../../balance/pair-limit.js";
import { meanOf } from "../../car/axle.js";
import type { Car } from "../../car/car.js";
import { together, totalMassOf } from "../../car/masses.js";
import { rigidCarOf } from "../../car/rigid-car.js";
import { dataTyreOf } from "../../car/tyres.js";
import { Refusal } from "../../refusal.js";
import { held, type Misconception, meant } from "./question.js";

const radius = 50; // m

/** Speed of the car in a corner with some mass added, its four tyres sharing evenly, m/s. */
function speedWith(car: Car, mass: number, height: number): number {
  const tyre = dataTyreOf(car.front.tyre);
  const pressure = meanOf(car.front.tyre.pressure);
  const whole = totalMassOf(car);
  const loaded = together([whole, { ...whole, mass, height }]);
  const limit = pairLimit((load) => tyre.peakSideForce({ load, pressure }), {
    mass: loaded.mass / 2,
    centreOfGravityHeight: loaded.height,
    track: rigidCarOf(car).track,
  });
  if (limit.lifts)
    throw new Refusal("does-not-suit", "it tips before it slides, so its tyres do not decide.");
  if (loaded.mass * 9 > 4 * tyre.valid.load.maximum)
    throw new Refusal("does-not-suit", "its tyres carry more than is known of them.");
  return cornerSpeed(limit.lateralAcceleration, radius);
}

const first = (car: Car) => {
  const [mass, height] = [40, 0.2];
  const speed = { before: speedWith(car, 0, 0), after: speedWith(car, mass, height) };
  const change = speed.after / speed.before - 1;
  const heavier = mass / totalMassOf(car).mass;
  return {
    radius,
    mass,
    height,
    speed,
    /** Shares by which weight and grip have grown. */
    grown: { weight: heavier, grip: (1 + heavier) * (1 + change) ** 2 - 1 },
    claims: {
      weight: held("weight-is-grip", change > 1e-4),
      slower: meant(change < -1e-4 && change > -0.05),
      same: held("ballast-is-free", Math.abs(change) <= 1e-4),
      low: held("low-ballast-pays", change > 0),
    },
  };
};

const twin = (car: Car) => {
  const mass = 60;
  const whole = totalMassOf(car);
  const speed = { before: speedWith(car, 0, 0), after: speedWith(car, -mass, whole.height) };
  const gain = speed.after / speed.before - 1;
  const proportion = Math.sqrt(whole.mass / (whole.mass - mass)) - 1;
  return {
    radius,
    mass,
    speed,
    gain,
    /** The gain with the grip that there was. */
    proportion,
    claims: {
      same: held("ballast-is-free", Math.abs(gain) <= 1e-4),
      slower: held("weight-is-grip", gain < -1e-4),
      inProportion: held("rubber-alone", gain > 0.7 * proportion),
      faster: meant(gain > 1e-4 && gain <= 0.7 * proportion),
    },
  };
};

export const ballastIsFree = {
  idea: "ballast-is-free",
  chapter: "02-tyre-nonlinearity",
  first,
  twin,
} satisfies Misconception;
