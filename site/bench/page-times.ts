import { readNotebooks } from "../build/build.js";
import { livingWeight } from "./living-weight.js";
import { measurePages, slowDown } from "./page-measures.js";
import type { Row } from "./row.js";
import { courseFolder, courseSliders } from "./with-site.js";

/** Weight, arrival and answer of the course's pages. */
export async function pageTimes(): Promise<Row[]> {
  const pages = readNotebooks().map(({ name }) => name);
  const site = { folder: courseFolder, pages, sliders: courseSliders };
  const { first, heaviestNext, arrival, eventToDom, keyToPaint } = await measurePages(site);
  const living = await livingWeight();
  const slow = `at ${slowDown}× throttle`;
  return [
    {
      what: "first chapter without the living car, gzip",
      value: (first.bytes - living) / 1000,
      most: 95,
      unit: "KB",
    },
    { what: "first chapter, requests", value: first.requests, most: 5, unit: "" },
    { what: "living car’s script, gzip", value: living / 1000, most: 25, unit: "KB" },
    { what: "heaviest next chapter, gzip", value: heaviestNext / 1000, most: 22, unit: "KB" },
    {
      what: `first paint, slowest chapter, ${slow}`,
      value: arrival.paint,
      most: 350,
      unit: "ms",
    },
    {
      what: `first figure live, slowest chapter, ${slow}`,
      value: arrival.live,
      most: 650,
      unit: "ms",
    },
    { what: `slider event to DOM, p95, ${slow}`, value: eventToDom, most: 7, unit: "ms" },
    { what: `key press to paint, p98, ${slow}`, value: keyToPaint, most: 32, unit: "ms" },
  ];
}
