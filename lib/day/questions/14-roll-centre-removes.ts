import { axleLoadsOf } from "../../car/axle-loads.js";
import type { Car } from "../../car/car.js";
import type { End } from "../../change/change.js";
import { Refusal } from "../../refusal.js";
import { held, type Misconception, meant } from "./question.js";
import { briskTurn, withRollCentres } from "./set-up.js";

const seen = 5; // N
const nearly = 0.05; // of the load that moves

/** Loads, N, and lean before and after the roll centres have moved. */
function moved(car: Car, height: Readonly<Record<End, number>>) {
  const turn = briskTurn(car);
  const [before, after] = [axleLoadsOf(car, turn), axleLoadsOf(withRollCentres(car, height), turn)];
  return {
    turn,
    front: { before: before.front.total, after: after.front.total },
    rear: { before: before.rear.total, after: after.rear.total },
    total: { before: before.total, after: after.total },
    lean: { before: before.rollAngle.front, after: after.rollAngle.front },
    /** Share by which the total has grown. */
    change: after.total / before.total - 1,
    /** What the links carried before. */
    links: before.front.geometric + before.rear.geometric,
  };
}

const first = (car: Car) => {
  const { front, rear } = car;
  const by = 0.08; // m
  const found = moved(car, {
    front: front.geometry.rollCentreHeight + by,
    rear: rear.geometry.rollCentreHeight,
  });
  const own = found.front.after - found.front.before;
  const other = found.rear.after - found.rear.before;
  return {
    ...found,
    by,
    claims: {
      less: held("roll-centre-removes", own < -seen),
      nothing: held("links-have-no-say", Math.abs(own) <= seen && Math.abs(other) <= seen),
      ownOnly: held("other-end-stays", own > seen && Math.abs(other) <= seen),
      traded: meant(own > seen && other < -seen && Math.abs(found.change) <= nearly),
    },
  };
};

const twin = (car: Car) => {
  const found = moved(car, { front: 0, rear: 0 });
  const { change, links, total } = found;
  if (!(links > 0.05 * total.before))
    throw new Refusal("does-not-suit", "its links carry hardly any load as it is.");
  const share = links / total.before;
  const lean = found.lean.after / found.lean.before - 1;
  return {
    ...found,
    claims: {
      nothing: held("links-have-no-say", Math.abs(lean) <= 0.01),
      removed: held("roll-centre-removes", change <= -0.5 * share),
      same: meant(
        Math.abs(change) <= nearly && Math.abs(change) < 0.5 * share && Math.abs(lean) > 0.01,
      ),
      more: held("roll-moves-load", change > nearly),
    },
  };
};

export const rollCentreRemoves = {
  idea: "roll-centre-removes",
  chapter: "04-roll-centre",
  first,
  twin,
} satisfies Misconception;
