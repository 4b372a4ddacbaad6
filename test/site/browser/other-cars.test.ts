import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import type { Car } from "../../../lib/car/car.js";
import {
  axleWeightsOf,
  lateralLoadTransfer,
  rigidCarOf,
  wheelLiftAcceleration,
} from "../../../lib/index.js";
import { readNotebooks } from "../../../site/build/build.js";
import { compiled, onCar } from "../../../site/chapter/on-car.js";
import { otherCars } from "../../../site/chapter/other-cars.js";
import { eachChapter, useBrowser } from "./browser.js";
import { measureWords } from "./words-outside.js";

const { open } = useBrowser();
const notebooks = readNotebooks().filter(({ name }) => eachChapter.includes(name));
const named = otherCars.map((car) => [car.name, car] as const);

/** Opens a page for a reader who has this car on the device. */
async function openFor(car: Car, name: string) {
  const watched = await open(name, { keeps: { "rollbook:cars": kept(car) } });
  await watched.page.waitForFunction(() =>
    [...document.querySelectorAll("[data-frame]")].every(({ children }) => children.length > 0),
  );
  return watched;
}

const kept = (car: Car): string => JSON.stringify({ cars: [car], current: car.name });

/** Every number on the page by its id. */
const workedOn = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("[data-worked][data-own]")].map(
      ({ id, dataset }) => [id, Number(dataset.worked)] as const,
    ),
  );

/** Numbers of chapter 1 are those of the physics, called for the car itself. */
function expectLoadTransfer(car: Car, shown: ReadonlyMap<string, number>): void {
  const rigid = rigidCarOf(car);
  const moved = lateralLoadTransfer({ ...rigid, lateralAcceleration: 7 });
  expect(shown.get("transfer")).toBeCloseTo(moved, 6);
  expect(shown.get("tip")).toBeCloseTo(wheelLiftAcceleration(rigid), 9);
  expect(shown.get("front-wheel")).toBeCloseTo(axleWeightsOf(car).front / 2, 6);
}

describe.each(notebooks)("chapter $name", async (notebook) => {
  const chapter = await compiled(notebook);

  it.each(named)(
    "says that it shows the %s, works every number out for it, and draws it axes",
    async (_, car) => {
      const { page, errors } = await openFor(car, notebook.name);
      expect(await page.locator("#whose").textContent()).toContain(`Figures for ${car.name}`);
      const { worked } = onCar(chapter, car);
      const shown = await workedOn(page);
      expect(shown.map(([id]) => id)).toEqual(worked.map(({ id }) => id));
      for (const [index, [id, value]] of shown.entries()) {
        const { value: expected = Number.NaN, quantity } = worked[index] ?? {};
        const solved = quantity === "acceleration" ? 1e-4 : 0; // m/s²: two engines, sines apart in the last digit
        const most = 1e-9 * Math.abs(expected) + solved;
        expect(Math.abs(value - expected), id).toBeLessThanOrEqual(most);
      }
      if (notebook.name === "01-load-transfer") expectLoadTransfer(car, new Map(shown));
      await page.evaluate(() => {
        for (const figure of document.querySelectorAll("[data-locked]"))
          figure.removeAttribute("data-locked");
      });
      await measureWords(page);
      const lost = await page.locator("main").evaluate((main) => window.wordsOutside(main));
      expect(lost).toEqual([]);
      expect(await page.locator("[data-frame]:empty").count()).toBe(0);
      expect(errors).toEqual([]);
    },
  );
});

describe("what does not hold for another car", () => {
  const [light] = otherCars as readonly [Car];

  it("is taken away where its file does not give what it takes", async () => {
    const { page } = await openFor(light, "04-roll-centre"); // its class has no least ride height
    expect(await page.locator("#height-left").textContent()).toBe(
      "Not worked out for Wren: its file does not give what this takes.",
    );
  });

  it("is taken away, with the reason, where the chapter fails", async () => {
    const { page } = await openFor(light, "01-load-transfer");
    await page.route("**/01-load-transfer.js", (route) =>
      route.fulfill({
        contentType: "text/javascript",
        body: 'throw new RangeError("no such load");',
      }),
    );
    await page.reload();
    const places = page.locator(".worked, .figure, .predict, .exercise");
    expect(await places.count()).toBeGreaterThan(5);
    for (const text of await places.allTextContents()) {
      expect(text).toBe("Not worked out for Wren: no such load");
    }
  });
});
