import { expect, test } from "vitest";
import { clubTyre } from "../../../lib/tyre/club-tyre.js";
import { referenceTyre } from "../../../lib/tyre/magic-formula-61.js";
import { tyreSquash } from "../../../lib/tyre/squash.js";

test("the published road tyre sinks by its load over its published stiffness", () => {
  // Cz 187.33, 209.65, 231.97 N/mm at 187, 220, 253 kPa – Pacejka 2012, Appendix 3
  const at = (pressure: number) => tyreSquash(referenceTyre, { load: 4000, pressure }) * 1e3;
  expect(at(187e3)).toBeCloseTo(4000 / 187.33, 2);
  expect(at(220e3)).toBeCloseTo(4000 / 209.65, 2);
  expect(at(253e3)).toBeCloseTo(4000 / 231.97, 2);
});

test("more air lifts the wheel, and an unloaded tyre is not squashed", () => {
  const soft = tyreSquash(clubTyre, { load: 2700, pressure: 180e3 });
  expect(tyreSquash(clubTyre, { load: 2700, pressure: 220e3 })).toBeLessThan(soft);
  expect(tyreSquash(clubTyre, { load: 0 })).toBe(0);
});

test("a load below zero is refused", () => {
  expect(() => tyreSquash(clubTyre, { load: -1 })).toThrow("load is -1 N but must be");
});
