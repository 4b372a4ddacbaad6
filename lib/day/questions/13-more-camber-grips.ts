import { meanOf } from "../../car/axle.js";
import { axleLoadsOf } from "../../car/axle-loads.js";
import type { Car } from "../../car/car.js";
import { dataTyreOf } from "../../car/tyres.js";
import { Refusal } from "../../refusal.js";
import { bestInclination } from "../../tyre/grip-against-pressure.js";
import { held, type Misconception, meant } from "./question.js";
import { briskTurn } from "./set-up.js";

const degree = Math.PI / 180;
const seen = 1; // N

/** What the outside front tyre of a car gives at several leans into the corner. */
function outsideFront(car: Car) {
  const tyre = dataTyreOf(car.front.tyre);
  const pressure = meanOf(car.front.tyre.pressure);
  const load = axleLoadsOf(car, briskTurn(car)).front.load.right;
  const gripAt = (inclination: number) => tyre.peakSideForce({ load, pressure, inclination });
  const most = tyre.valid.inclination.maximum;
  const best = Math.round(bestInclination(tyre, { load, pressure }) / degree) * degree;
  if (best < 2 * degree || best > most - degree)
    throw new Refusal(
      "does-not-suit",
      "its tyres grip best at an end of the leans that are known of them.",
    );
  const at = (lean: number) => ({ lean, grip: gripAt(lean) });
  return { load, at, most, best };
}

const first = (car: Car) => {
  const { load, at, most, best } = outsideFront(car);
  const forces = [at(0), at(best), at(most)] as const;
  const [upright, top, far] = [forces[0].grip, forces[1].grip, forces[2].grip];
  return {
    load,
    best,
    most,
    /** Grip at each lean, N. */
    forces,
    claims: {
      upright: held("upright-is-best", upright > top + seen && upright > far + seen),
      most: held("more-camber-grips", far > top + seen && far > upright + seen),
      between: meant(top > upright + seen && top > far + seen),
      noOdds: held(
        "rubber-alone",
        Math.max(upright, top, far) - Math.min(upright, top, far) <= seen,
      ),
    },
  };
};

const twin = (car: Car) => {
  const { at, most, best } = outsideFront(car);
  const more = Math.min(2 * degree, most - best);
  const step = Math.min(best, 3 * degree);
  const forces = [at(best - step), at(best), at(best + more)] as const;
  const gained = forces[1].grip - forces[0].grip;
  const further = forces[2].grip - forces[1].grip;
  const asBefore = 0.75 * gained * (more / step);
  return {
    best,
    /** Lean added last time, and now. */
    step,
    more,
    gained,
    forces,
    claims: {
      asMuch: held("more-camber-grips", further > asBefore),
      less: meant(further < -seen),
      fading: held("camber-gain-fades", further > seen && further <= asBefore),
      nothing: held("rubber-alone", Math.abs(further) <= seen),
    },
  };
};

export const moreCamberGrips = {
  idea: "more-camber-grips",
  chapter: "04-roll-centre",
  first,
  twin,
} satisfies Misconception;
