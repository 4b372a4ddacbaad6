import type { Browser, Page } from "playwright-core";
import { slowDown, slowPage } from "./page-measures.js";
import { quantile, type Row } from "./row.js";
import { withSite } from "./with-site.js";

/** The pages on which a living picture plays. */
const playing = ["index", "06-springs-and-put-back", "07-how-fast-the-load-arrives"];
const plays = 3; // of each picture

/** ms */
interface Frames {
  /** Of the page's own work in each frame. */
  readonly work: readonly number[];
  /** From one frame to the next. */
  readonly between: readonly number[];
}

/** Runs in the page, before its scripts: takes the time of what is done in frames that follow each other. */
function watchFrames(): void {
  const seen = { work: [] as number[], between: [] as number[] };
  Object.assign(window, { seen });
  const plain = window.requestAnimationFrame.bind(window);
  let last = Number.NaN;
  window.requestAnimationFrame = (work) =>
    plain((now) => {
      const started = performance.now();
      work(now);
      seen.work.push(performance.now() - started);
      if (now - last < 1000) seen.between.push(now - last);
      last = now;
    });
}

/** Lets one picture play to its end, again and again. */
async function playThrough(page: Page, index: number): Promise<void> {
  const play = page.locator(".player .play").nth(index);
  await play.scrollIntoViewIfNeeded();
  for (let i = 0; i < plays; i += 1) {
    await play.click();
    await page.waitForTimeout(100);
    await play.filter({ hasText: "Play" }).waitFor({ timeout: 60_000 });
  }
}

async function framesOf(browser: Browser, url: string): Promise<Frames> {
  const page = await slowPage(browser);
  await page.addInitScript(watchFrames);
  await page.goto(url, { waitUntil: "networkidle" });
  const unasked = page.locator(".filing .plain").first();
  if ((await unasked.count()) > 0) await unasked.click();
  const count = await page.locator(".player .play").count();
  for (let index = 0; index < count; index += 1) await playThrough(page, index);
  const frames = await page.evaluate(() => (window as unknown as { seen: Frames }).seen);
  await page.context().close();
  return frames;
}

/** What a frame of a living picture that plays costs, and how evenly frames follow each other. */
export const livingTimes = (): Promise<Row[]> =>
  withSite(async (browser, origin) => {
    const frames: Frames[] = [];
    for (const page of playing) frames.push(await framesOf(browser, `${origin}/${page}.html`));
    const all = (key: keyof Frames) => frames.flatMap((one) => one[key]);
    const row = (what: string, key: keyof Frames, part: number, most: number): Row => ({
      what: `living picture, ${what}, p${100 * part}, at ${slowDown}× throttle`,
      value: quantile(all(key), part),
      most,
      unit: "ms",
    });
    return [
      row("work in a frame", "work", 0.95, 16),
      row("work in a frame", "work", 0.99, 33),
      row("from frame to frame", "between", 0.95, 33),
    ];
  });
