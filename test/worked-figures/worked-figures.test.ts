import { expect, it } from "vitest";
import { readNotebooks } from "../../site/build/build.js";
import { cachedOutputs } from "../../site/build/cache.js";
import { inRoot } from "../../site/build/paths.js";
import { readPins } from "../../site/chapter/folder.js";
import { figuresIn, pinFaults } from "../../site/chapter/pins.js";

const notebooks = readNotebooks();
const outputs = await cachedOutputs(notebooks, { progress() {}, typesChecked: true });

it.each(notebooks)(
  "chapter $name works out each figure as it is pinned, and no other",
  async ({ name }) => {
    const path = inRoot(`test/worked-figures/${name}.ts`);
    const pins = await readPins(path);
    if (pins === undefined) throw new Error(`There is no pins file ${path}.`);
    const figures = figuresIn(outputs.get(name) ?? {});
    expect(figures.size).toBeGreaterThan(0);
    expect(pinFaults(pins, figures)).toEqual([]);
  },
);
