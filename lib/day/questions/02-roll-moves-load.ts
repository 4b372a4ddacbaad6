import { axleLoadsOf } from "../../car/axle-loads.js";
import type { Car } from "../../car/car.js";
import { rigidCarOf } from "../../car/rigid-car.js";
import { lateralLoadTransfer } from "../../load/transfer.js";
import { GRAVITY } from "../../units.js";
import { held, type Misconception, meant } from "./question.js";
import { briskTurn } from "./set-up.js";

const first = (car: Car) => {
  const turn = briskTurn(car);
  const { total, rollAngle } = axleLoadsOf(car, turn);
  const rigid = lateralLoadTransfer({ ...rigidCarOf(car), lateralAcceleration: turn });
  const share = rigid / total;
  return {
    turn,
    total,
    lean: rollAngle.front,
    /** Load that moves on solid blocks, N. */
    rigid,
    claims: {
      none: held("roll-moves-load", share < 0.05),
      same: meant(share >= 0.85 && share <= 1.15),
      less: held("less-roll-less-transfer", share >= 0.05 && share < 0.85),
      more: held("stiffer-moves-more", share > 1.15),
    },
  };
};

/** A kart with its driver, invented. */
const kart = { mass: 160, centreOfGravityHeight: 0.28, track: 1.1 };

const twin = (_car: Car) => {
  const turn = 12; // m/s²
  const moved = lateralLoadTransfer({ ...kart, lateralAcceleration: turn });
  const halfWeight = (kart.mass * GRAVITY) / 2;
  return {
    turn,
    kart,
    moved,
    halfWeight,
    claims: {
      all: held("stiffer-moves-more", moved >= halfWeight),
      none: held("roll-moves-load", moved === 0),
      moment: meant(moved >= 0.1 * halfWeight && moved < halfWeight),
      little: held("less-roll-less-transfer", moved > 0 && moved < 0.1 * halfWeight),
    },
  };
};

export const rollMovesLoad = {
  idea: "roll-moves-load",
  chapter: "01-load-transfer",
  first,
  twin,
} satisfies Misconception;
