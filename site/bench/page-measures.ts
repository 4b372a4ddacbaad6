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
 */
export async function usualArrival(
  browser: Browser,
  url: string,
  live = "[data-live]",
): Promise<Arrival> {
  const seen: Arrival[] = [];
  for (let visit = 0; visit < visits; visit += 1) seen.push(await arrival(browser, url, live));
  const middle = (key: keyof Arrival) =>
    quantile(
      seen.map((times) => times[key]),
      0.5,
    );
  return { paint: middle("paint"), live: middle("live") };
}

/** Milliseconds that each slider event takes until its figure's elements are as they should be. */
async function eventToDom(browser: Browser, url: string, sliders: string): Promise<number[]> {
  const page = await slowPage(browser);
  await page.goto(url, { waitUntil: "networkidle" });
  await unlock(page);
  const times = await page.evaluate(
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
  await page.context().close();
  return times;
}

/** Two frames, as a reader has who looks at a slider before moving it. */
const settled = (page: Page) =>
  page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
  );

/** Milliseconds from a real key press on a slider to the next paint, as the browser reports them. */
async function keyToPaint(browser: Browser, url: string, sliders: string): Promise<number[]> {
  const page = await slowPage(browser);
  await page.goto(url, { waitUntil: "networkidle" });
  await unlock(page);
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
      await page.keyboard.press(press < keyPresses / 2 ? "ArrowRight" : "ArrowLeft");
      await page.waitForTimeout(keyRepeat);
      pressed += 1;
    }
  }
  await page.waitForTimeout(200);
  const reported = await page.evaluate(
    () => (window as unknown as { durations: number[] }).durations,
  );
  await page.context().close();
  const unreported = Array.from({ length: Math.max(0, pressed - reported.length) }, () => 16);
  return [...reported, ...unreported];
}

/** Weight, arrival and answer of a site's pages in a browser slowed down. */
export const measurePages = ({ folder, pages, sliders }: Site): Promise<PageMeasures> =>
  withSite(async (browser, origin) => {
    const urls = pages.map((name) => `${origin}/${name}.html`);
    const [first, ...next] = await weights(await browser.newPage(), urls);
    const arrivals: Arrival[] = [];
    const events: number[] = [];
    const paints: number[] = [];
    for (const url of urls) {
      arrivals.push(await usualArrival(browser, url));
      events.push(...(await eventToDom(browser, url, sliders)));
      paints.push(...(await keyToPaint(browser, url, sliders)));
    }
    return {
      first: first ?? { bytes: 0, requests: 0 },
      heaviestNext: Math.max(...next.map(({ bytes }) => bytes)),
      arrival: {
        paint: Math.max(...arrivals.map(({ paint }) => paint)),
        live: Math.max(...arrivals.map(({ live }) => live)),
      },
      eventToDom: quantile(events, 0.95),
      keyToPaint: quantile(paints, 0.98),
    };
  }, folder);
