import {
  type Car,
  cornerSpeed,
  meanOf,
  pairLimit,
  Refusal,
  rigidCarOf,
  together,
  totalMassOf,
  tyreNamed,
} from "@rollbook/lib";
import type { Draw, Misconception } from "./question.js";

const radius = 50; // m

/** Speed of the car in a corner with some mass added, its four tyres sharing evenly, m/s. */
function speedWith(car: Car, mass: number, height: number): number {
  const tyre = tyreNamed(car.front.tyre.name);
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

const first: Draw = (car, tell) => {
  const [mass, height] = [40, 0.2];
  const [empty, loaded] = [speedWith(car, 0, 0), speedWith(car, mass, height)];
  const change = loaded / empty - 1;
  const speeds = `It goes from ${tell.speed(empty, 2)} to ${tell.speed(loaded, 2)}`;
  const needs = `Weight grows by ${tell.percent(mass / totalMassOf(car).mass)}, grip by ${tell.percent((1 + mass / totalMassOf(car).mass) * (1 + change) ** 2 - 1)}`;
  return {
    ask: `This car rounds a steady corner of ${tell.metres(radius, 0)} radius as fast as its tyres allow, ${tell.speed(empty)}. The class now wants ${tell.kilograms(mass)} of ballast, and you bolt it down ${tell.metres(height)} above the road, so that the balance stays. What happens to that speed?`,
    choices: [
      {
        text: "It rises: weight presses the tyres on to the road.",
        isSo: change > 1e-4,
        because: `${speeds}. ${needs}: the corner asks for more than the tyres add.`,
        idea: "weight-is-grip",
      },
      {
        text: "It falls a little.",
        isSo: change < -1e-4 && change > -0.05,
        because: `${speeds}. ${needs}. What is missing, you drive slower by.`,
      },
      {
        text: "It stays: grip and need both grow with mass.",
        isSo: Math.abs(change) <= 1e-4,
        because: `${speeds}. Mass would cancel if grip grew in proportion to load. ${needs}.`,
        idea: "ballast-is-free",
      },
      {
        text: "It rises: so low down, it lowers the centre of gravity.",
        isSo: change > 0,
        because: `${speeds}. It does lower it, and a little less load crosses for each newton of side force; but its own weight costs more than that.`,
        idea: "low-ballast-pays",
      },
    ],
  };
};

const twin: Draw = (car, tell) => {
  const mass = 60;
  const whole = totalMassOf(car);
  const [full, light] = [speedWith(car, 0, 0), speedWith(car, -mass, whole.height)];
  const gain = light / full - 1;
  const proportion = Math.sqrt(whole.mass / (whole.mass - mass)) - 1;
  const speeds = `It goes from ${tell.speed(full, 2)} to ${tell.speed(light, 2)}`;
  return {
    ask: `Over the winter ${tell.kilograms(mass)} come out of this car, all at the height of its centre of gravity. Nothing else changes. What becomes of its fastest ${tell.speed(full)} through a long corner of ${tell.metres(radius, 0)} radius?`,
    choices: [
      {
        text: "It stays: lightness pays on the straight, in a corner mass cancels.",
        isSo: Math.abs(gain) <= 1e-4,
        because: `${speeds}. It pays on the straight more, but not only there: lighter loaded tyres grip better for each newton.`,
        idea: "ballast-is-free",
      },
      {
        text: "It falls: less weight on the tyres is less grip.",
        isSo: gain < -1e-4,
        because: `${speeds}. There is less grip, and still less to hold.`,
        idea: "weight-is-grip",
      },
      {
        text: `It rises by ${tell.percent(proportion)}: the grip is the same, the mass is not.`,
        isSo: gain > 0.7 * proportion,
        because: `${speeds}, ${tell.percent(gain, 2)}. The grip is not the same: less load on a tyre is less grip.`,
        idea: "rubber-alone",
      },
      {
        text: `It rises, by ${tell.percent(gain, 2)} or so.`,
        isSo: gain > 1e-4 && gain <= 0.7 * proportion,
        because: `${speeds}. The tyres carry less, and what they carry they hold better.`,
      },
    ],
  };
};

export const ballastIsFree: Misconception = {
  idea: "ballast-is-free",
  chapter: "02-tyre-nonlinearity",
  first,
  twin,
};
