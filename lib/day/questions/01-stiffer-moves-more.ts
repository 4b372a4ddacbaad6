import { withBars } from "../../car/bars.js";
import type { Car } from "../../car/car.js";
import { Refusal } from "../../refusal.js";
import { damperTransferAtRest } from "./dampers.js";
import { loadsAndLean } from "./loads-and-lean.js";
import { held, type Misconception, meant } from "./question.js";
import { briskTurn, withSprings } from "./set-up.js";

const nearly = 0.05; // of the load that moves

const first = (car: Car) => {
  const loads = loadsAndLean(car, withSprings(car, 1.5), briskTurn(car));
  const byDampers = damperTransferAtRest(car);
  return {
    ...loads,
    byDampers,
    claims: {
      more: held("stiffer-moves-more", loads.change > nearly),
      less: held("less-roll-less-transfer", loads.change < -nearly),
      same: meant(Math.abs(loads.change) <= nearly),
      dampers: held("dampers-decide", byDampers !== 0),
    },
  };
};

const twin = (car: Car) => {
  const turn = briskTurn(car);
  if (!car.front.bar && !car.rear.bar)
    throw new Refusal("does-not-suit", "it has no anti-roll bar to take off.");
  const loads = loadsAndLean(car, withBars(car, { front: 0, rear: 0 }), turn);
  const { change } = loads;
  return {
    ...loads,
    claims: {
      less: held("stiffer-moves-more", change < -nearly && change > -0.5),
      same: meant(Math.abs(change) <= nearly),
      more: held("roll-moves-load", change > nearly),
      none: held("bars-move-it", change <= -0.5),
    },
  };
};

export const stifferMovesMore = {
  idea: "stiffer-moves-more",
  chapter: "01-load-transfer",
  first,
  twin,
} satisfies Misconception;
