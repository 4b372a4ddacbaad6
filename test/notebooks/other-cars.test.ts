import { describe, expect, it } from "vitest";
import { demoCar } from "../../lib/car/demo-car.js";
import { readNotebooks } from "../../site/build/build.js";
import { isChart } from "../../site/cells/layout.js";
import type { Mark, Point } from "../../site/cells/marks.js";
import { ensureLooks } from "../../site/cells/node/ensure-looks.js";
import type { FigureSpec, Inputs, Interval, Panel, ValuesOf } from "../../site/cells/spec.js";
import { looksLeft, startValues } from "../../site/cells/spec.js";
import { compiled, onCar } from "../../site/chapter/on-car.js";
import { otherCars } from "../../site/chapter/other-cars.js";

const notebooks = readNotebooks();
const cars = [demoCar, ...otherCars].map((car) => [`the ${car.name}`, car] as const);

/** Where the sliders start, and every corner of their ranges. */
function settingsOf({ inputs }: FigureSpec<Inputs>): ValuesOf<Inputs>[] {
  const ends = Object.entries(inputs).map(([key, { min, max }]) => [key, min, max] as const);
  const corners = Array.from({ length: 2 ** ends.length }, (_, corner) =>
    Object.fromEntries(ends.map(([key, min, max], bit) => [key, (corner >> bit) & 1 ? max : min])),
  );
  return [startValues(inputs), ...corners];
}

const tolerance = 0.02; // of the axis
const holds = ([from, to]: Interval, value: number) =>
  value >= from - tolerance * (to - from) && value <= to + tolerance * (to - from);

/** Dots that a panel puts outside its frame, undrawn ones aside; lines may run out of it on purpose. */
function lostDots(panel: Panel<ValuesOf<Inputs>>, marks: readonly Mark[]): Point[] {
  const [x, y] = isChart(panel) ? [panel.x.domain, panel.y.domain] : [panel.view.x, panel.view.y];
  return marks.flatMap((mark) => {
    if (mark.kind !== "dot") return [];
    const [across, up] = mark.at;
    if (!Number.isFinite(across) || !Number.isFinite(up)) return [];
    return holds(x, across) && holds(y, up) ? [] : [mark.at];
  });
}

describe.each(notebooks)("chapter $name", async (notebook) => {
  const chapter = await compiled(notebook);

  it.each(cars)("works every number and question out for %s", (_, car) => {
    const { worked, exercises, predictions } = onCar(chapter, car);
    for (const { id, value } of worked) expect(value, id).toSatisfy(Number.isFinite);
    for (const { id, answer } of exercises) expect(answer, id).toSatisfy(Number.isFinite);
    for (const { id, answer, choices } of predictions) expect(choices[answer], id).toBeDefined();
    const text = JSON.stringify([worked, exercises, predictions]);
    expect(text).not.toMatch(/NaN|Infinity|undefined/);
  });

  it.each(cars)("starts its sliders inside their ranges for %s", (_, car) => {
    for (const { id, inputs } of onCar(chapter, car).figures) {
      for (const [key, { min, max, start }] of Object.entries(inputs)) {
        expect(start, `${id}, ${key}`).toBeGreaterThanOrEqual(min - 1e-9);
        expect(start, `${id}, ${key}`).toBeLessThanOrEqual(max + 1e-9);
      }
    }
  });

  it("asks for two or three things to do in each figure that a prediction opens", () => {
    for (const figure of onCar(chapter, demoCar).figures) {
      const { id, after } = figure;
      const count = looksLeft(figure).length;
      expect(count, id).toBeGreaterThanOrEqual(after === undefined ? 0 : 2);
      expect(count, id).toBeLessThanOrEqual(after === undefined ? 0 : 3);
    }
  });

  it("meets likely slips in most exercises, each apart from the answer and from the others", () => {
    const { exercises } = onCar(chapter, demoCar);
    const met = exercises.filter(({ slips = [] }) => slips.length > 0);
    expect(met.length).toBeGreaterThan(exercises.length / 2);
    for (const { id, answer, tolerance = 0.02, slips = [] } of met) {
      const values = [answer, ...slips.map(({ value }) => value)];
      const near = values.flatMap((value, i) =>
        values
          .slice(i + 1)
          .filter(
            (other) => Math.abs(other - value) <= tolerance * Math.max(Math.abs(value), 1e-12),
          )
          .map((other) => `${id}: ${value} and ${other}`),
      );
      expect(near).toEqual([]);
      for (const { because } of slips) expect(because, id).toMatch(/^[a-z].*\.$/);
    }
  });

  it.each(cars)("asks for nothing that no slider does for %s", (_, car) => {
    for (const figure of onCar(chapter, car).figures) ensureLooks(figure);
  });

  it.each(cars)("keeps every dot in its frame and every sentence readable for %s", (_, car) => {
    for (const figure of onCar(chapter, car).figures) {
      for (const values of settingsOf(figure)) {
        const at = `${figure.id} at ${JSON.stringify(values)}`;
        expect(figure.says(values), at).not.toMatch(/NaN|Infinity|undefined/);
        for (const panel of figure.panels) {
          expect(lostDots(panel, panel.draw(values)), at).toEqual([]);
        }
      }
    }
  });
});
