import type { Browser } from "playwright-core";
import { quantile, type Row } from "./row.js";
import { heapGrowth, moveSliders } from "./slider-moves.js";
import { withSite } from "./with-site.js";

const frames = 100;
const leftAlone = 250; // ms after which the page has drawn its map in full

/** Milliseconds of each frame with all 64 × 64 places solved and drawn. */
async function frameTimes(browser: Browser, url: string): Promise<number[]> {
  const page = await browser.newPage();
  await page.goto(url, { waitUntil: "networkidle" });
  await moveSliders(page, frames, 1);
  const seen = await moveSliders(page, frames, 1, leftAlone);
  await page.close();
  return seen.filter(({ cells }) => cells === 64).map(({ milliseconds }) => milliseconds);
}

async function growth(browser: Browser, url: string): Promise<number> {
  const page = await browser.newPage();
  await page.goto(url, { waitUntil: "networkidle" });
  const bytes = await heapGrowth(page);
  await page.close();
  return bytes;
}

/** How long a frame of the set-up map takes, and whether the map keeps its memory. */
export const mapTimes = (): Promise<Row[]> =>
  withSite(async (browser, origin) => {
    const url = `${origin}/map.html`;
    const times = await frameTimes(browser, url);
    return [
      {
        what: "set-up map, one frame of 64 × 64 solves, middle, at 1×",
        value: quantile(times, 0.5),
        most: 16,
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
