import { describe, expect, test } from "vitest";
import { type Parameter, type ParameterKey, parameters } from "../../lib/parameters.js";
import { toShown } from "../../site/say/units.js";

const rows = Object.entries(parameters) as [ParameterKey, Parameter][];
const whole = (x: number) => Math.abs(x - Math.round(x)) < 1e-6;

describe.each(rows)("the row of %s", (_, row) => {
  test("starts inside its range", () => {
    expect(row.min).toBeLessThan(row.max);
    expect(row.start).toBeGreaterThanOrEqual(row.min);
    expect(row.start).toBeLessThanOrEqual(row.max);
  });

  test("reaches its start from its least value in whole steps", () => {
    expect(whole((row.start - row.min) / row.step)).toBe(true);
    expect(whole((row.max - row.min) / row.step)).toBe(true);
  });

  test("shows every step with its decimals", () => {
    expect(whole(toShown(row.quantity, row.step) * 10 ** row.decimals)).toBe(true);
  });
});

test("no two rows share a name", () => {
  const names = rows.map(([, row]) => row.name);
  expect(new Set(names).size).toBe(names.length);
});
