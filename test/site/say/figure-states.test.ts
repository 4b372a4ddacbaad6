import {
  type Car,
  type Change,
  demoCar,
  misconceptions,
  nextChoices,
  type Parameter,
} from "@rollbook/lib";
import { describe, expect, it } from "vitest";
import { readNotebooks } from "../../../site/build/build.js";
import { startValues } from "../../../site/cells/spec.js";
import { compiled, onCar } from "../../../site/chapter/on-car.js";
import { otherCars } from "../../../site/chapter/other-cars.js";
import { addressOf, type FigureState } from "../../../site/say/figure-state.js";
import { whyOf } from "../../../site/say/practice/why.js";
import { ideas } from "../../../site/say/questions/ideas.js";
import { fromShown } from "../../../site/say/units.js";

const cars: readonly Car[] = [demoCar, ...otherCars];
const chapters = await Promise.all(
  readNotebooks().map(async (notebook) => ({ name: notebook.name, run: await compiled(notebook) })),
);
const named = (car: Car, chapter: string, id: string) => {
  const found = chapters.find(({ name }) => name === chapter);
  return found && onCar(found.run, car).figures.find((figure) => figure.id === id);
};

function siValue(text: string, { quantity, min, max }: Parameter): number {
  if (text === "least") return min;
  return text === "most" ? max : fromShown(quantity, Number(text));
}

/** Figures that practice leads to: a change of each lever of every car, both ways. */
const whys = new Map<string, FigureState>();
for (const { place } of cars.flatMap(nextChoices))
  for (const by of [-1, 1]) {
    const { shownBy } = whyOf({ ...place, by } as Change); // lever and end come from one table of places
    whys.set(addressOf(shownBy), shownBy);
  }
const shown: readonly (readonly [string, FigureState])[] = [
  ...Object.entries(ideas).map(([name, { shownBy }]) => [name, shownBy] as const),
  ...whys,
];

describe.each(shown)("the figure that shows %s", (_, wanted) => {
  it.each(cars)("is there for $name, in range, and draws", (car) => {
    const figure = named(car, wanted.chapter, wanted.figure);
    if (!figure) throw new Error(`${wanted.chapter} has no figure ${wanted.figure}`);
    expect(Object.keys(figure.inputs)).toEqual(expect.arrayContaining(Object.keys(wanted.state)));
    const state = Object.entries(wanted.state).map(([key, text]): [string, number] => {
      const input = figure.inputs[key] as Parameter;
      const value = siValue(text, input);
      expect(value).toBeGreaterThanOrEqual(input.min);
      expect(value).toBeLessThanOrEqual(input.max);
      return [key, value];
    });
    const start = startValues(figure.inputs);
    const values = { ...start, ...Object.fromEntries(state) };
    expect(figure.says(values)).not.toMatch(/NaN|undefined/);
    for (const panel of figure.panels) expect(panel.draw(values).length).toBeGreaterThan(0);
    if (car === demoCar) expect(values).not.toEqual(start);
  });
});

describe.each(Object.entries(ideas))("the idea %s", (_, { shownBy, belief }) => {
  it("says what to look at, and what one would say who holds the idea", () => {
    expect(Object.keys(shownBy.state).length).toBeGreaterThan(0);
    expect(shownBy.look).toMatch(/[.?]$/);
    expect(belief).toMatch(/\.$/);
  });
});

describe("the chapter of a misconception", () => {
  it("is there, and no figure against it is of a chapter that is not", () => {
    const names = chapters.map(({ name }) => name);
    for (const [, { chapter }] of shown) expect(names).toContain(chapter);
    for (const { chapter, idea } of misconceptions) {
      expect(names).toContain(chapter);
      expect(names).toContain(ideas[idea].shownBy.chapter);
    }
  });
});
