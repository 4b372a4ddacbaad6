import type { Browser } from "playwright-core";
import { quantile, type Row } from "./row.js";
import { heapGrowth, moveSliders } from "./slider-moves.js";
import { courseFolder, withSite } from "./with-site.js";

const frames = 100;
const toExact = 60_000; // ms, long enough for any machine
const settled = ".map[data-drawn=exact]";

/** Milliseconds of each frame while a lever moves: solves, lines and words. */
async function frameTimes(browser: Browser, url: string): Promise<number[]> {
  const page = await browser.newPage();
  await page.goto(url, { waitUntil: "networkidle" });
  await page.waitForSelector(settled, { timeout: toExact });
  await moveSliders(page, frames, 1);
  const seen = await moveSliders(page, frames, 1);
  await page.close();
  return seen.filter(({ drawn }) => drawn === "moving").map(({ milliseconds }) => milliseconds);
}

/** Milliseconds from the last move of a lever until every place of the map is worked out in full. */
async function exactAfter(browser: Browser, url: string): Promise<number> {
  const page = await browser.newPage();
  await page.goto(url);
  const times: number[] = [];
  for (let i = 0; i < 5; i++) {
    await page.waitForSelector(settled, { timeout: toExact });
    await moveSliders(page, 4 + i, 1);
    const rested = performance.now();
    await page.waitForSelector(settled, { timeout: toExact });
    times.push(performance.now() - rested);
  }
  await page.close();
  return quantile(times, 0.5);
}

async function growth(browser: Browser, url: string): Promise<number> {
  const page = await browser.newPage();
  await page.goto(url, { waitUntil: "networkidle" });
  const bytes = await heapGrowth(page);
  await page.close();
  return bytes;
}

/** How long a frame of the set-up map takes, how soon it is exact, and whether it keeps its memory. */
export const mapTimes = (): Promise<Row[]> =>
  withSite(async (browser, origin) => {
    const url = `${origin}/map.html`;
    return [
      {
        what: "set-up map, one frame while a lever moves, middle, at 1×",
        value: quantile(await frameTimes(browser, url), 0.5),
        most: 16,
        unit: "ms",
      },
      {
        what: "set-up map, exact after the lever rests, 64 × 64 in workers",
        value: await exactAfter(browser, url),
        most: 1500,
        unit: "ms",
      },
      {
        what: "set-up map, the same from a folder, in slices on the page",
        value: await exactAfter(browser, `file://${courseFolder}/map.html`),
        most: 1500,
        unit: "ms",
      },
      {
        what: "set-up map, heap growth over 10 000 slider moves",
        value: (await growth(browser, url)) / 1000,
        most: 500,
        unit: "KB",
      },
    ];
  });
