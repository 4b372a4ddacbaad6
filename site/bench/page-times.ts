import { readNotebooks } from "../build/build.js";
import { measurePages, slowDown } from "./page-measures.js";
import type { Row } from "./row.js";
import { courseFolder, courseSliders } from "./with-site.js";

/** Weight, arrival and answer of the course's pages. */
export async function pageTimes(): Promise<Row[]> {
  const pages = readNotebooks().map(({ name }) => name);
  const site = { folder: courseFolder, pages, sliders: courseSliders };
  const { first, heaviestNext, arrival, eventToDom, keyToPaint } = await measurePages(site);
  const slow = `at ${slowDown}× throttle`;
  return [
    { what: "first chapter, gzip", value: first.bytes / 1000, most: 120, unit: "KB" },
    { what: "first chapter, requests", value: first.requests, most: 6, unit: "" },
    { what: "heaviest next chapter, gzip", value: heaviestNext / 1000, most: 30, unit: "KB" },
    {
      what: `first paint, slowest chapter, ${slow}`,
      value: arrival.paint,
      most: 500,
      unit: "ms",
    },
    {
      what: `first figure live, slowest chapter, ${slow}`,
      value: arrival.live,
      most: 1000,
      unit: "ms",
    },
    { what: `slider event to DOM, p95, ${slow}`, value: eventToDom, most: 14, unit: "ms" },
    { what: `key press to paint, p98, ${slow}`, value: keyToPaint, most: 40, unit: "ms" },
  ];
}
