import { describe, expect, it } from "vitest";
import { readNotebooks } from "../../site/build/build.js";
import { cachedOutputs } from "../../site/build/cache.js";
import type { Pins } from "./pins.js";

const notebooks = readNotebooks();
const outputs = await cachedOutputs(notebooks, () => {});

/** Worked figures and exercise answers as the kernel gave them. */
function figuresOf(name: string): Map<string, number> {
  const html = Object.values(outputs.get(name) ?? {}).flat();
  const found = html.flatMap((text) => [
    ...text.matchAll(/id="([^"]+)" data-(?:worked|exercise)="([^"]+)"/g),
  ]);
  return new Map(found.map(([, id = "", value]) => [id, Number(value)]));
}

describe.each(notebooks.map(({ name }) => name))("chapter %s", async (name) => {
  const { pins } = (await import(`./${name}.ts`)) as { pins: Pins };
  const figures = figuresOf(name);

  it("has a pin for each worked figure and exercise, and no other", () => {
    expect(Object.keys(pins).sort()).toEqual([...figures.keys()].sort());
    expect(figures.size).toBeGreaterThan(0);
  });

  it.each(Object.entries(pins))("works out %s as it is pinned", (id, { value, within = 1e-6 }) => {
    const difference = Math.abs((figures.get(id) ?? Number.NaN) - value);
    expect(difference, `${figures.get(id)} is not ${value}`).toBeLessThanOrEqual(
      value === 0 ? within : within * Math.abs(value),
    );
  });
});
