import {
  type Car,
  candidatesFor,
  demoCar,
  type Practice,
  practiceCorner,
  practiceCorners,
  practiceFrom,
} from "@rollbook/lib";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { standingCar } from "../../../lib/balance/standing-car.js";
import { otherCars } from "../../../site/chapter/other-cars.js";
import { cornerOf } from "../../../site/say/practice/puzzle.js";
import { whyOf } from "../../../site/say/practice/why.js";

type Place = (typeof practiceCorners)[keyof typeof practiceCorners];

/** A puzzle of a car in one of the corners; nothing where nothing of this car can be felt there. */
function puzzleOf(car: Car, place: Place, seed: number): Practice | undefined {
  try {
    return practiceFrom(seed, cornerOf(place), car);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

const anyPuzzle = fc.tuple(
  fc.constantFrom(demoCar, ...otherCars),
  fc.constantFrom(...Object.values(practiceCorners)),
  fc.nat(2 ** 31 - 1),
);

describe("the reason of a hidden change", () => {
  test("points the way in which balance moved", () => {
    fc.assert(
      fc.property(anyPuzzle, (asked) => {
        const puzzle = puzzleOf(...asked);
        if (puzzle === undefined) return;
        const {
          hidden: [hidden],
          shifts,
        } = puzzle;
        if (hidden === undefined) throw new Error("nothing hidden");
        const { because } = whyOf(hidden);
        const said = /the (front|rear) slides (sooner|later)/.exec(because);
        if (said === null) return;
        const way = (said[1] === "front" ? 1 : -1) * (said[2] === "sooner" ? 1 : -1);
        const at = hidden.lever === "brakeFrontShare" ? "braking in" : "middle";
        const most = Object.values(shifts).reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
        expect(Math.sign(most), `${JSON.stringify(hidden)}: ${because}`).toBe(way);
        if (Math.abs(shifts[at]) > 0.02) expect(Math.sign(shifts[at])).toBe(way);
      }),
      { numRuns: 40 }, // each may be another car, of which all changes are worked out
    );
  });

  test("is a whole sentence or two for everything that can be felt on a car", () => {
    for (const car of [demoCar, ...otherCars])
      for (const { change } of candidatesFor(standingCar(car), practiceCorner.speed)) {
        const { because } = whyOf(change);
        expect(because).toMatch(/^[A-Z][^.]+\.( [A-Z][^.]+\.)?$/);
        expect(because).not.toMatch(/undefined|NaN/);
      }
  });
});
