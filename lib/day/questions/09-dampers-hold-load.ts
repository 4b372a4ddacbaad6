import type { Car } from "../../car/car.js";
import type { End } from "../../change/change.js";
import { damperTransferAtRest, intoTurn, withDampersAt } from "./dampers.js";
import { held, type Misconception, meant } from "./question.js";

const seen = 5; // N

/** Load of an outside tyre soon after the turn begins and settled in it, before and after, N. */
function outsideTyre(car: Car, changed: Car, end: End) {
  const [before, after] = [intoTurn(car), intoTurn(changed)];
  return {
    turn: before.lateralAcceleration,
    soon: { before: before.soon[end].right, after: after.soon[end].right },
    settled: { before: before.settled[end].right, after: after.settled[end].right },
    frontChange: after.settled.front.right - before.settled.front.right,
    change: after.settled[end].right - before.settled[end].right,
  };
}

const first = (car: Car) => {
  const stiff = withDampersAt(withDampersAt(car, "front", 2), "rear", 2);
  const tyre = outsideTyre(car, stiff, "front");
  return {
    ...tyre,
    claims: {
      same: meant(Math.abs(tyre.change) <= seen),
      more: held("dampers-hold-load", tyre.change > seen),
      less: held("dampers-hold-body", tyre.change < -seen),
      direction: held("bump-against-rebound", damperTransferAtRest(stiff) !== 0),
    },
  };
};

const twin = (car: Car) => {
  const tyre = outsideTyre(car, withDampersAt(car, "rear", 0.5), "rear");
  const { change, frontChange } = tyre;
  return {
    ...tyre,
    claims: {
      less: held("dampers-hold-load", change < -seen && frontChange <= seen),
      asBar: held("dampers-are-bars", change < -seen && frontChange > seen),
      same: meant(Math.abs(change) <= seen),
      more: held("roll-moves-load", change > seen),
    },
  };
};

export const dampersHoldLoad = {
  idea: "dampers-hold-load",
  chapter: "07-how-fast-the-load-arrives",
  first,
  twin,
} satisfies Misconception;
