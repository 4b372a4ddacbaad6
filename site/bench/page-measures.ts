import { gzipSync } from "node:zlib";
import type { Browser, Page } from "playwright-core";
import { quantile } from "./row.js";
import { unlock } from "./slider-moves.js";
import { withSite } from "./with-site.js";

/** How many times slower than this machine's the measured pages' processor is. */
export const slowDown = 4;
const keyPresses = 40;
const keyRepeat = 33; // ms between presses while a key is held
const visits = 3;

/** A built site. */
interface Site {
  readonly folder: string;
  /** File names without their ending, in the order in which they are read. */
  readonly pages: readonly string[];
  /** Selects the sliders of a page. */
  readonly sliders: string;
}

/** What a reader of the site has to wait for; times in ms. */
interface PageMeasures {
  readonly first: Weight;
  /** Gzip bytes of the heaviest page after the first. */
  readonly heaviestNext: number;
  /** Of the slowest page. */
  readonly arrival: Arrival;
  /** 95 in 100 slider events take no longer. */
  readonly eventToDom: number;
  /** 98 in 100 key presses take no longer. */
  readonly keyToPaint: number;
}

interface Weight {
  /** After gzip. */
  readonly bytes: number;
  readonly requests: number;
}

/** A phone's page, slowed down. */
export async function slowPage(browser: Browser): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 412, height: 915 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slowDown });
  return page;
}

/** Gzip bytes of what each page asks for that no page before it did. */
async function weights(page: Page, urls: readonly string[]): Promise<Weight[]> {
  const known = new Set<string>();
  const loaded: Weight[] = [];
  for (const url of urls) {
    const bodies: Promise<number>[] = [];
    const take = (response: Awaited<ReturnType<Page["waitForResponse"]>>) => {
      if (known.has(response.url()) || response.url().startsWith("data:")) return;
      known.add(response.url());
      bodies.push(response.body().then((body) => gzipSync(body, { level: 9 }).length));
    };
    page.on("response", take);
    await page.goto(url, { waitUntil: "networkidle" });
    page.off("response", take);
    const sizes = await Promise.all(bodies);
    loaded.push({ bytes: sizes.reduce((sum, size) => sum + size, 0), requests: sizes.length });
  }
  return loaded;
}

/** Milliseconds from the start of the visit. */
export interface Arrival {
  readonly paint: number;
  /** Until the first figure, or what else was asked for, is live. */
  readonly live: number;
}

async function arrival(browser: Browser, url: string, live: string): Promise<Arrival> {
  const page = await slowPage(browser);
  await page.addInitScript((live) => {
    new MutationObserver((_changes, observer) => {
      if (!document.querySelector(live)) return;
      Object.assign(window, { liveAt: performance.now() });
      observer.disconnect();
    }).observe(document, { subtree: true, childList: true, attributeFilter: ["data-live"] });
  }, live);
  await page.goto(url, { waitUntil: "networkidle" });
  await page.waitForFunction(
    () => performance.getEntriesByName("first-contentful-paint").length > 0,
  );
  const times = await page.evaluate(() => ({
    paint: performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? Infinity,
    live: (window as unknown as { liveAt: number }).liveAt,
  }));
  await page.context().close();
  return times;
}

/**
 * The middle of several visits with nothing kept.
 *
 * @param live - selects what is there once the page answers
 * @param seen - visits that were made already
 */
export async function usualArrival(
  browser: Browser,
  url: string,
  live = firstFigure,
  seen: Arrival[] = [],
): Promise<Arrival> {
  while (seen.length < visits) seen.push(await arrival(browser, url, live));
  const middle = (key: keyof Arrival) =>
    quantile(
      seen.map((times) => times[key]),
      0.5,
    );
  return { paint: middle("paint"), live: middle("live") };
}

const firstFigure = "[data-live]";
const slowest = 3; // pages that are visited more than once

/** Of the slowest page: all are visited once, those that took longest several times. */
async function slowestArrival(browser: Browser, urls: readonly string[]): Promise<Arrival> {
  const once: { url: string; seen: Arrival }[] = [];
  for (const url of urls) once.push({ url, seen: await arrival(browser, url, firstFigure) });
  const latest = (key: keyof Arrival) =>
    [...once].sort((a, b) => b.seen[key] - a.seen[key]).slice(0, slowest);
  const usual: Arrival[] = [];
  for (const { url, seen } of new Set([...latest("paint"), ...latest("live")]))
    usual.push(await usualArrival(browser, url, firstFigure, [seen]));
  return {
    paint: Math.max(...usual.map(({ paint }) => paint)),
    live: Math.max(...usual.map(({ live }) => live)),
  };
}

/** Milliseconds that each slider event takes until its figure's elements are as they should be. */
function eventToDom(page: Page, sliders: string): Promise<number[]> {
  return page.evaluate(
    ([sliders, count]) => {
      const taken: number[] = [];
      for (const slider of document.querySelectorAll<HTMLInputElement>(sliders)) {
        const [min, max] = [Number(slider.min), Number(slider.max)];
        for (let step = 0; step <= count; step += 1) {
          slider.value = String(min + ((max - min) * step) / count);
          const started = performance.now();
          slider.dispatchEvent(new Event("input", { bubbles: true }));
          taken.push(performance.now() - started);
        }
      }
      return taken;
    },
    [sliders, keyPresses] as const,
  );
}

/** Two frames, as a reader has who looks at a slider before moving it. */
const settled = (page: Page) =>
  page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
  );

/** Milliseconds from a real key press on a slider to the next paint, as the browser reports them. */
async function keyToPaint(page: Page, sliders: string): Promise<number[]> {
  await page.evaluate(() => {
    const durations: number[] = [];
    Object.assign(window, { durations });
    new PerformanceObserver((list) => {
      for (const { name, duration } of list.getEntries()) {
        if (name === "keydown") durations.push(duration);
      }
    }).observe({ type: "event", durationThreshold: 16 } as PerformanceObserverInit);
  });
  let pressed = 0;
  for (const slider of await page.locator(sliders).all()) {
    await slider.focus();
    await settled(page);
    for (let press = 0; press < keyPresses; press += 1) {
      const began = performance.now();
      await page.keyboard.press(press < keyPresses / 2 ? "ArrowRight" : "ArrowLeft");
      await page.waitForTimeout(Math.max(0, keyRepeat - (performance.now() - began)));
      pressed += 1;
    }
  }
  await page.waitForTimeout(200);
  const reported = await page.evaluate(
    () => (window as unknown as { durations: number[] }).durations,
  );
  const unreported = Array.from({ length: Math.max(0, pressed - reported.length) }, () => 16);
  return [...reported, ...unreported];
}

/** Weight, arrival and answer of a site's pages in a browser slowed down. */
export const measurePages = ({ folder, pages, sliders }: Site): Promise<PageMeasures> =>
  withSite(async (browser, origin) => {
    const urls = pages.map((name) => `${origin}/${name}.html`);
    const [first, ...next] = await weights(await browser.newPage(), urls);
    const arrival = await slowestArrival(browser, urls);
    const events: number[] = [];
    const paints: number[] = [];
    for (const url of urls) {
      const page = await slowPage(browser);
      await page.goto(url, { waitUntil: "networkidle" });
      await unlock(page);
      paints.push(...(await keyToPaint(page, sliders)));
      events.push(...(await eventToDom(page, sliders)));
      await page.context().close();
    }
    return {
      first: first ?? { bytes: 0, requests: 0 },
      heaviestNext: Math.max(...next.map(({ bytes }) => bytes)),
      arrival,
      eventToDom: quantile(events, 0.95),
      keyToPaint: quantile(paints, 0.98),
    };
  }, folder);
