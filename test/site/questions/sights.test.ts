import { type Car, demoCar, fromShown, type Parameter } from "@rollbook/lib";
import { describe, expect, it } from "vitest";
import { readNotebooks } from "../../../site/build/build.js";
import { startValues } from "../../../site/cells/spec.js";
import { ideas } from "../../../site/pages/questions/bank/ideas.js";
import { misconceptions } from "../../../site/pages/questions/bank/index.js";
import { figuresOf } from "./figures-of-chapter.js";
import { otherCars } from "./other-cars.js";

const notebooks = readNotebooks();
const cars: readonly Car[] = [demoCar, ...otherCars];
const figures = new Map(
  cars.map((car) => [
    car.name,
    new Map(notebooks.map((notebook) => [notebook.name, figuresOf(notebook, car)])),
  ]),
);

function siValue(text: string, { quantity, min, max }: Parameter): number {
  if (text === "least") return min;
  return text === "most" ? max : fromShown(quantity, Number(text));
}

describe.each(Object.entries(ideas))("the sight of %s", (_, { sight, belief }) => {
  it.each(cars.map(({ name }) => name))("is there for %s, in range, and draws", (name) => {
    const figure = figures.get(name)?.get(sight.chapter)?.get(sight.figure);
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
    if (name === demoCar.name) expect(values).not.toEqual(start);
  });

  it("says what to look at, and what one would say who holds the idea", () => {
    expect(Object.keys(sight.state).length).toBeGreaterThan(0);
    expect(sight.look).toMatch(/[.?]$/);
    expect(belief).toMatch(/\.$/);
  });
});

describe("the chapter of a misconception", () => {
  it("is there, and no sight of it comes from a chapter that is not", () => {
    const names = notebooks.map(({ name }) => name);
    for (const { chapter, idea } of misconceptions) {
      expect(names).toContain(chapter);
      expect(names).toContain(ideas[idea].sight.chapter);
    }
  });
});
