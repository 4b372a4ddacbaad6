import { meanOf } from "../../car/axle.js";
import type { Car } from "../../car/car.js";
import { axleWeightsOf } from "../../car/masses.js";
import { dataTyreOf } from "../../car/tyres.js";
import { Refusal } from "../../refusal.js";
import { held, type Misconception, meant } from "./question.js";

/** A front tyre at rest and under another load, N. */
function frontTyre(car: Car, times: number) {
  const tyre = dataTyreOf(car.front.tyre);
  const pressure = meanOf(car.front.tyre.pressure);
  const load = axleWeightsOf(car).front / 2;
  const grip = tyre.peakSideForce({ load, pressure });
  const changed = tyre.peakSideForce({ load: times * load, pressure });
  if (times * load > tyre.valid.load.maximum)
    throw new Refusal("does-not-suit", "its tyres carry more than is known of them.");
  return {
    load: { before: load, after: times * load },
    grip: { before: grip, after: changed, inProportion: times * grip },
  };
}

const alike = (a: number, b: number) => Math.abs(a / b - 1) < 0.005;

const first = (car: Car) => {
  const tyre = frontTyre(car, 1.5);
  const { before, after, inProportion } = tyre.grip;
  const asBefore = alike(after, before);
  const asLoad = alike(after, inProportion);
  return {
    ...tyre,
    claims: {
      same: held("rubber-alone", asBefore),
      inProportion: held("grip-in-proportion", asLoad),
      less: held("overload-slides", after < before && !asBefore),
      between: meant(after > before && after < inProportion && !asBefore && !asLoad),
    },
  };
};

const twin = (car: Car) => {
  const tyre = frontTyre(car, 2 / 3);
  const { before, after, inProportion } = tyre.grip;
  const asBefore = alike(after, before);
  const asLoad = alike(after, inProportion);
  return {
    ...tyre,
    claims: {
      between: meant(after > inProportion && after < before && !asLoad),
      same: held("rubber-alone", asBefore),
      more: held("overload-slides", after > before && !asBefore),
      inProportion: held("grip-in-proportion", asLoad),
    },
  };
};

export const gripInProportion = {
  idea: "grip-in-proportion",
  chapter: "02-tyre-nonlinearity",
  first,
  twin,
} satisfies Misconception;
