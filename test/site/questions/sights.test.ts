import { type Car, type Change, demoCar, fromShown, type Parameter } from "@rollbook/lib";
import { describe, expect, it } from "vitest";
import { readNotebooks } from "../../../site/build/build.js";
import { startValues } from "../../../site/cells/spec.js";
import { nextChoices } from "../../../site/pages/practice/puzzle/answers.js";
import { whyOf } from "../../../site/pages/practice/puzzle/why.js";
import { ideas } from "../../../site/pages/questions/bank/ideas.js";
import { misconceptions } from "../../../site/pages/questions/bank/index.js";
import { addressOf, type Sight } from "../../../site/pages/sight.js";
import { compiled, onCar } from "../../notebooks/chapter-on-car.js";
import { otherCars } from "../other-cars.js";

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

/** Sights of practice: a change of each lever of every car, both ways. */
const whys = new Map<string, Sight>();
for (const { place } of cars.flatMap(nextChoices))
  for (const by of [-1, 1]) {
    const { sight } = whyOf({ ...place, by } as Change); // lever and end come from one table of places
    whys.set(addressOf(sight), sight);
  }
const sights: readonly (readonly [string, Sight])[] = [
  ...Object.entries(ideas).map(([name, { sight }]) => [name, sight] as const),
  ...whys,
];

describe.each(sights)("the sight of %s", (_, sight) => {
  it.each(cars)("is there for $name, in range, and draws", (car) => {
    const figure = named(car, sight.chapter, sight.figure);
    if (!figure) throw new Error(`${sight.chapter} has no figure ${sight.figure}`);
    expect(Object.keys(figure.inputs)).toEqual(expect.arrayContaining(Object.keys(sight.state)));
    const state = Object.entries(sight.state).map(([key, text]): [string, number] => {
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

describe.each(Object.entries(ideas))("the idea %s", (_, { sight, belief }) => {
  it("says what to look at, and what one would say who holds the idea", () => {
    expect(Object.keys(sight.state).length).toBeGreaterThan(0);
    expect(sight.look).toMatch(/[.?]$/);
    expect(belief).toMatch(/\.$/);
  });
});

describe("the chapter of a misconception", () => {
  it("is there, and no sight of it comes from a chapter that is not", () => {
    const names = chapters.map(({ name }) => name);
    for (const [, { chapter }] of sights) expect(names).toContain(chapter);
    for (const { chapter, idea } of misconceptions) {
      expect(names).toContain(chapter);
      expect(names).toContain(ideas[idea].sight.chapter);
    }
  });
});
