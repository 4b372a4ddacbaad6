import { expect, it } from "vitest";
import { heapGrowth, unlock } from "../../../site/bench/slider-moves.js";
import { chapters, useBrowser } from "./browser.js";

const { open } = useBrowser();

/** A slider that left one small object behind at each move would be far above it. */
const steady = 500e3; // bytes

it.each([chapters[1] ?? "", "map"])(
  "%s keeps its memory over 10 000 slider moves",
  async (name) => {
    const { page } = await open(name);
    await unlock(page);
    expect(await page.locator(".slider input[type=range]").count()).toBeGreaterThan(0);
    let growth = await heapGrowth(page);
    if (growth >= steady) growth = await heapGrowth(page); // what is warmed up late grows once, a leak again
    expect(growth).toBeLessThan(steady);
  },
  600_000,
);
