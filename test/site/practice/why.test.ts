import {
  type Car,
  candidatesFor,
  demoCar,
  practiceCorner,
  practiceCorners,
  practiceFrom,
} from "@rollbook/lib";
import { describe, expect, test } from "vitest";
import { standingCar } from "../../../lib/balance/standing-car.js";
import { cornerOf } from "../../../site/say/practice/puzzle.js";
import { whyOf } from "../../../site/say/practice/why.js";
import { otherCars } from "../other-cars.js";

/** Puzzles of a car, as many as it gives. */
const puzzles = (car: Car) =>
  Object.values(practiceCorners).flatMap((place) =>
    Array.from({ length: 10 }, (_, seed) => {
      try {
        return practiceFrom(seed, cornerOf(place), car);
      } catch (error) {
        if (error instanceof RangeError) return undefined; // nothing of this car can be felt
        throw error;
      }
    }).filter((practice) => practice !== undefined),
  );

describe("the reason of a hidden change", () => {
  test.each([demoCar, ...otherCars])("of $name points the way in which balance moved", (car) => {
    for (const { hidden, shifts } of puzzles(car)) {
      const { because } = whyOf(hidden);
      const said = /the (front|rear) slides (sooner|later)/.exec(because);
      if (said === null) continue;
      const way = (said[1] === "front" ? 1 : -1) * (said[2] === "sooner" ? 1 : -1);
      const at = hidden.lever === "brakeFrontShare" ? "braking in" : "middle";
      const most = Object.values(shifts).reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
      expect(Math.sign(most), `${JSON.stringify(hidden)}: ${because}`).toBe(way);
      if (Math.abs(shifts[at]) > 0.02) expect(Math.sign(shifts[at])).toBe(way);
    }
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
