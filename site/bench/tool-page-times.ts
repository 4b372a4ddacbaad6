import type { Browser } from "playwright-core";
import { type Arrival, slowDown, usualArrival } from "./page-measures.js";
import type { Row } from "./row.js";
import { withSite } from "./with-site.js";

/** The pages that hands work with, and what of each is there once it answers. */
const tools = [
  { name: "workshop", live: "#workshop button:enabled" },
  { name: "your-car", live: "#cars-and-form button:enabled" },
  { name: "practice", live: "#practice button:enabled" },
] as const;

async function arrivals(browser: Browser, origin: string): Promise<Arrival[]> {
  const seen: Arrival[] = [];
  for (const { name, live } of tools)
    seen.push(await usualArrival(browser, `${origin}/${name}.html`, live));
  return seen;
}

/** How soon the pages beside the chapters are to be seen, and take the first press of a button. */
export const toolPageTimes = (): Promise<Row[]> =>
  withSite(async (browser, origin) => {
    const seen = await arrivals(browser, origin);
    const row = (what: string, key: keyof Arrival, most: number): Row => ({
      what: `Workshop, Your car, Practice: ${what}, slowest of them, at ${slowDown}× throttle`,
      value: Math.max(...seen.map((arrival) => arrival[key])),
      most,
      unit: "ms",
    });
    return [row("first paint", "paint", 400), row("usable", "live", 900)];
  });
