import type { Car } from "../../car/car.js";
import { type End, otherEnd } from "../../change/change.js";
import { gripAt } from "./set-up.js";

const seen = 0.5; // N

/** The grip of both ends before and after one of them is changed, N. */
export function gripOfEnds(before: Car, after: Car, end: End, turn: number) {
  const at = (which: End) => {
    const grip = { before: gripAt(before, which, turn), after: gripAt(after, which, turn) };
    return { ...grip, change: grip.after - grip.before };
  };
  const [own, other] = [at(end), at(otherEnd(end))];
  return {
    turn,
    /** The end that was changed. */
    end,
    own,
    other,
    both: own.change > seen && other.change > seen,
    ownOnly: own.change > seen && Math.abs(other.change) <= seen,
  };
}

export type GripOfEnds = ReturnType<typeof gripOfEnds>;
