import { demoCar, referenceTyre, tyreNamed } from "@rollbook/lib";
import { expect, test } from "vitest";
import { pressedTyre, tyrePressed } from "../../../site/cells/living/pressed.js";
import type { LabelMark, LineMark } from "../../../site/cells/marks.js";
import { format } from "../../../site/cells/reader.js";

const at = (load: number) => tyrePressed(demoCar.front, { load, pressure: 200e3 });

test("a pressed tyre stands on the road and its wheel sinks as far as the tyre is squashed", () => {
  const marks = pressedTyre(at(3000), at(1500), 6000);
  const lines = marks.filter(
    (mark): mark is LineMark => mark.kind === "line" && mark.part === "tyres",
  );
  const heights = lines.flatMap(({ points }) => points.map(([, z]) => z));
  expect(Math.min(...heights)).toBe(0);
  const axle = lines.findLast(({ points, tone }) => points.length === 2 && tone === "tyres");
  expect(axle?.points[0]?.[1]).toBeCloseTo(0.29 - 0.01467, 4); // 0.29·(20.7833 − 18.7602)/40
});

test("a pressed tyre's patch is written and drawn as large as the tyre's data say", () => {
  const { area, halfLength } = tyreNamed("club").contactPatch({ load: 3000, pressure: 200e3 });
  const marks = pressedTyre(at(3000), at(1500), 6000);
  const written = marks.filter((mark): mark is LabelMark => mark.kind === "label");
  expect(written.map(({ text }) => text)).toContain(format("area", area, 0));
  expect(4 * halfLength * at(3000).patch.halfWidth).toBeCloseTo(area, 12);
});

test("twice the load makes less than twice the patch, on both tyres that are known", () => {
  for (const tyre of [tyreNamed("club"), referenceTyre]) {
    const [once, twice] = [2500, 5000].map(
      (load) => tyre.contactPatch({ load, pressure: 200e3 }).area,
    );
    expect(twice).toBeGreaterThan(once ?? 0);
    expect(twice).toBeLessThan(2 * (once ?? 0)); // as measured: 2^0.87 – Tse 2024
  }
});
