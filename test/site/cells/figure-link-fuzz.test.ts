import { parameters } from "@rollbook/lib";
import fc from "fast-check";
import { expect, it, vi } from "vitest";
import { linkToFigure, wantedFrom } from "../../../site/cells/figure-link.js";
import { shownRange } from "../../../site/say/shown-range.js";
import { FUZZ_RUNS, hurt } from "../../fuzz.js";

vi.setConfig({ testTimeout: 60_000 + 10 * FUZZ_RUNS });

const inputs = parameters;
const keys = Object.keys(parameters) as (keyof typeof parameters)[];
const units = fc.constantFrom("metric" as const, "us" as const);

/** Values are in range, faults are sentences that repeat little of what was given. */
function holds(hash: string, system: "metric" | "us"): void {
  const wanted = wantedFrom(hash, "figure", inputs, system);
  for (const [key, value] of Object.entries(wanted?.values ?? {})) {
    const { min, max, step } = parameters[key as keyof typeof parameters];
    const slack = step * 1e-6;
    expect(value >= min - slack && value <= max + slack, `${key} = ${value}`).toBe(true);
  }
  for (const fault of wanted?.faults ?? []) {
    expect(fault).toMatch(/\.$/);
    expect(fault.length).toBeLessThan(200);
  }
}

it("whatever a link sets, values stay in range and faults are short sentences", () => {
  const value = fc.oneof(
    fc.string({ maxLength: 60 }),
    fc.double().map(String),
    fc.constantFrom("least", "most", "1e999", "-0", "NaN", " ", "0x10", "1_000"),
  );
  const key = fc.oneof(fc.constantFrom<string>(...keys), fc.string(), fc.constant("__proto__"));
  fc.assert(
    fc.property(fc.array(fc.tuple(key, value), { maxLength: 5 }), units, (parts, system) =>
      holds(`#figure?${new URLSearchParams(parts)}`, system),
    ),
    { numRuns: FUZZ_RUNS },
  );
});

it("a link cut, doubled or written over asks for values in range, or for nothing", () => {
  const values = Object.fromEntries(keys.map((key) => [key, parameters[key].max]));
  const link = linkToFigure("figure", inputs, values as Record<keyof typeof parameters, number>);
  fc.assert(
    fc.property(hurt(link ?? ""), units, (broken, system) => holds(broken, system)),
    { numRuns: FUZZ_RUNS / 10 },
  );
});

it("a link to any values in range sets them again", () => {
  const one = fc.constantFrom(...keys).chain((key) => {
    const { min, max } = parameters[key];
    return fc.double({ min, max, noNaN: true }).map((value) => [key, value] as const);
  });
  fc.assert(
    fc.property(one, ([key, value]) => {
      const only = { [key]: parameters[key] };
      const link = linkToFigure("figure", only, { [key]: value });
      if (link === undefined) return;
      const { decimals: _, ...range } = shownRange(parameters[key], "metric");
      const wanted = wantedFrom(link, "figure", only, "metric");
      expect(wanted?.faults, JSON.stringify(range)).toEqual([]);
      const size = Math.max(Math.abs(parameters[key].min), Math.abs(parameters[key].max));
      expect(Math.abs((wanted?.values[key] ?? 0) - value)).toBeLessThanOrEqual(1e-8 * size);
    }),
    { numRuns: FUZZ_RUNS },
  );
});
