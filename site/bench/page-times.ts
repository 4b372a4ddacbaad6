import { gzipSync } from "node:zlib";
import type { Browser, Page } from "playwright-core";
import { readNotebooks } from "../build/build.js";
import { quantile, type Row } from "./row.js";
import { unlock } from "./slider-moves.js";
import { withSite } from "./with-site.js";

const slowDown = 4;
const keyPresses = 40;
const visits = 3;

async function slowPage(browser: Browser): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 412, height: 915 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slowDown });
  return page;
}

/** Gzip bytes of what each page asks for that no page before it did. */
async function weights(
  page: Page,
  urls: readonly string[],
): Promise<{ bytes: number; requests: number }[]> {
  const known = new Set<string>();
  const loaded: { bytes: number; requests: number }[] = [];
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
interface Arrival {
  readonly paint: number;
  /** Until the first figure is live. */
  readonly live: number;
}

async function arrival(browser: Browser, url: string): Promise<Arrival> {
  const page = await slowPage(browser);
  await page.addInitScript(() => {
    new MutationObserver((_changes, observer) => {
      if (!document.querySelector("[data-live]")) return;
      Object.assign(window, { liveAt: performance.now() });
      observer.disconnect();
    }).observe(document, { subtree: true, attributes: true, attributeFilter: ["data-live"] });
  });
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

/** The middle of several visits. */
async function usualArrival(browser: Browser, url: string): Promise<Arrival> {
  const seen: Arrival[] = [];
  for (let visit = 0; visit < visits; visit += 1) seen.push(await arrival(browser, url));
  const middle = (key: keyof Arrival) =>
    quantile(
      seen.map((times) => times[key]),
      0.5,
    );
  return { paint: middle("paint"), live: middle("live") };
}

/** Milliseconds that each slider event takes until its figure's elements are as they should be. */
async function eventToDom(browser: Browser, url: string): Promise<number[]> {
  const page = await slowPage(browser);
  await page.goto(url, { waitUntil: "networkidle" });
  await unlock(page);
  const times = await page.evaluate((count) => {
    const taken: number[] = [];
    for (const slider of document.querySelectorAll<HTMLInputElement>(".slider input[type=range]")) {
      const [min, max] = [Number(slider.min), Number(slider.max)];
      for (let step = 0; step <= count; step += 1) {
        slider.value = String(min + ((max - min) * step) / count);
        const started = performance.now();
        slider.dispatchEvent(new Event("input", { bubbles: true }));
        taken.push(performance.now() - started);
      }
    }
    return taken;
  }, keyPresses);
  await page.context().close();
  return times;
}

/** Two frames, as a reader has who looks at a slider before moving it. */
const settled = (page: Page) =>
  page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
  );

/** Milliseconds from a real key press on a slider to the next paint, as the browser reports them. */
async function keyToPaint(browser: Browser, url: string): Promise<number[]> {
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
  for (const slider of await page.locator(".slider input[type=range]").all()) {
    await slider.focus();
    await settled(page);
    for (let press = 0; press < keyPresses; press += 1) {
      await page.keyboard.press(press < keyPresses / 2 ? "ArrowRight" : "ArrowLeft");
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

/** Weight, arrival and answer of the course's pages in a browser slowed four times. */
export const pageTimes = (): Promise<Row[]> =>
  withSite(async (browser, origin) => {
    const urls = readNotebooks().map(({ name }) => `${origin}/${name}.html`);
    const [first, ...next] = await weights(await browser.newPage(), urls);
    const arrivals: Arrival[] = [];
    const events: number[] = [];
    const paints: number[] = [];
    for (const url of urls) {
      arrivals.push(await usualArrival(browser, url));
      events.push(...(await eventToDom(browser, url)));
      paints.push(...(await keyToPaint(browser, url)));
    }
    const kilobytes = (bytes: number) => bytes / 1000;
    const slow = `at ${slowDown}× throttle`;
    return [
      { what: "first chapter, gzip", value: kilobytes(first?.bytes ?? 0), most: 130, unit: "KB" },
      { what: "first chapter, requests", value: first?.requests ?? 0, most: 6, unit: "" },
      {
        what: "heaviest next chapter, gzip",
        value: kilobytes(Math.max(...next.map(({ bytes }) => bytes))),
        most: 30,
        unit: "KB",
      },
      {
        what: `first paint, slowest chapter, ${slow}`,
        value: Math.max(...arrivals.map(({ paint }) => paint)),
        most: 500,
        unit: "ms",
      },
      {
        what: `first figure live, slowest chapter, ${slow}`,
        value: Math.max(...arrivals.map(({ live }) => live)),
        most: 1000,
        unit: "ms",
      },
      {
        what: `slider event to DOM, p95, ${slow}`,
        value: quantile(events, 0.95),
        most: 14,
        unit: "ms",
      },
      {
        what: `key press to paint, p98, ${slow}`,
        value: quantile(paints, 0.98),
        most: 40,
        unit: "ms",
      },
    ];
  });
