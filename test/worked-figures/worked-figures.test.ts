import { existsSync } from "node:fs";
import { expect, it } from "vitest";
import { readNotebooks } from "../../site/build/build.js";
import { cachedOutputs } from "../../site/build/cache.js";
import { inRoot } from "../../site/build/paths.js";
import { figuresIn, type Pins, pinFaults } from "../../site/chapter/pins.js";

const notebooks = readNotebooks();
const outputs = await cachedOutputs(notebooks, () => {});

it.each(notebooks)(
  "chapter $name works out each figure as it is pinned, and no other",
  async ({ name }) => {
    expect(existsSync(inRoot(`test/worked-figures/${name}.ts`)), "a pins file").toBe(true);
    const { pins } = (await import(`./${name}.ts`)) as { pins: Pins };
    const figures = figuresIn(outputs.get(name) ?? {});
    expect(figures.size).toBeGreaterThan(0);
    expect(pinFaults(pins, figures)).toEqual([]);
  },
);
