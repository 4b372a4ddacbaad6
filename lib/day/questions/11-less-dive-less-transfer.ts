import { rideRateOf } from "../../car/axle.js";
import type { Car } from "../../car/car.js";
import { rigidCarOf } from "../../car/rigid-car.js";
import type { End } from "../../change/change.js";
import { longitudinalLoadTransfer } from "../../load/transfer.js";
import { held, type Misconception, meant } from "./question.js";
import { withSpringsAt } from "./set-up.js";

/** What stiffer springs at one end do to how far it sinks, m, and to the load that arrives there, N. */
function sinking(car: Car, end: End, times: number, longitudinalAcceleration: number) {
  const at = (which: Car) => {
    const moved = longitudinalLoadTransfer({ ...rigidCarOf(which), longitudinalAcceleration });
    const load = Math.abs(moved);
    return { load, sinks: load / 2 / rideRateOf(which[end]) };
  };
  const [before, after] = [at(car), at(withSpringsAt(car, end, times))];
  return {
    acceleration: longitudinalAcceleration,
    load: { before: before.load, after: after.load },
    sinks: { before: before.sinks, after: after.sinks },
    /** Shares by which load and sinking have grown. */
    change: after.load / before.load - 1,
    sank: after.sinks / before.sinks - 1,
  };
}

const same = 0.01;

const first = (car: Car) => {
  const found = sinking(car, "front", 2, -8); // m/s²
  const { change, sank } = found;
  return {
    ...found,
    claims: {
      asDive: held("less-dive-less-transfer", change <= 0.75 * sank),
      more: held("stiffer-moves-more", change > same),
      same: meant(Math.abs(change) <= same),
      half: held("only-links-stay", change < -same && change > 0.75 * sank),
    },
  };
};

const twin = (car: Car) => {
  const found = sinking(car, "rear", 1.5, 3); // m/s²
  const { change, sank } = found;
  return {
    ...found,
    claims: {
      same: meant(Math.abs(change) <= same),
      asSquat: held("less-dive-less-transfer", change <= 0.75 * sank),
      more: held("stiffer-moves-more", change > same),
      some: held("only-links-stay", change < -same && change > 0.75 * sank),
    },
  };
};

export const lessDiveLessTransfer = {
  idea: "less-dive-less-transfer",
  chapter: "01-load-transfer",
  first,
  twin,
} satisfies Misconception;
