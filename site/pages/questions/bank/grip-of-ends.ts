import type { Car } from "@rollbook/lib";
import { type End, gripAt, otherEnd } from "./set-up.js";
import type { Tell } from "./tell.js";

const seen = 0.5; // N

/** How the grip of both ends changes when one of them is changed, N and in a sentence. */
export function gripChoices(before: Car, after: Car, end: End, turn: number, tell: Tell) {
  const gripOf = (car: Car) => ({
    own: gripAt(car, end, turn),
    other: gripAt(car, otherEnd(end), turn),
  });
  const [old, now] = [gripOf(before), gripOf(after)];
  const [own, other] = [now.own - old.own, now.other - old.other];
  const said = (name: End, from: number, to: number) =>
    `the ${name} could give ${tell.newtons(from)} and can now give ${tell.newtons(to)}`;
  return {
    own,
    other,
    both: own > seen && other > seen,
    ownOnly: own > seen && Math.abs(other) <= seen,
    otherOnly: Math.abs(own) <= seen && other > seen,
    changes: `In this turn ${said(end, old.own, now.own)}, ${said(otherEnd(end), old.other, now.other)}.`,
  };
}
