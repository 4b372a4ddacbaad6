import { expect, test } from "vitest";
import { clubTyre } from "../../../lib/tyre/club-tyre.js";
import { referenceTyre } from "../../../lib/tyre/magic-formula-61.js";
import { tyreSquash } from "../../../lib/tyre/squash.js";

test("the published road tyre sinks to where the book's parabola carries its load", () => {
  // Pacejka 2012, eq. A3.3, Table A3.1 (Q_FZ1 by hand from eq. A3.4), searched by halving
  const sink = (pressure: number) => {
    let [low, high] = [0, 0.05];
    for (let i = 0; i < 50; i++) {
      const middle = (low + high) / 2;
      const x = middle / 0.3135;
      const air = 1 + 0.7098 * ((pressure - 220e3) / 220e3);
      const load = 4000 * air * (14.43575 * x + 15.4 * x * x);
      [low, high] = load < 4000 ? [middle, high] : [low, middle];
    }
    return low * 1e3;
  };
  const at = (pressure: number) => tyreSquash(referenceTyre, { load: 4000, pressure }) * 1e3;
  for (const pressure of [187e3, 220e3, 253e3]) expect(at(pressure)).toBeCloseTo(sink(pressure), 3);
});

test("more air lifts the wheel, and an unloaded tyre is not squashed", () => {
  const soft = tyreSquash(clubTyre, { load: 2700, pressure: 180e3 });
  expect(tyreSquash(clubTyre, { load: 2700, pressure: 220e3 })).toBeLessThan(soft);
  expect(tyreSquash(clubTyre, { load: 0 })).toBe(0);
});

test("a load below zero is refused", () => {
  expect(() => tyreSquash(clubTyre, { load: -1 })).toThrow("load is -1 N but must be");
});
