import { parseHTML } from "linkedom";
import { withoutDrawings } from "./drawings.js";

const WORDS = 200; // a minute, of an explanation that is to be understood; 238 for easy prose (Brysbaert 2019, from memory)
/** Minutes that each thing takes beside its words; common practice, no source. */
const TAKES = {
  "figure[data-explained]": 2, // things to do, and a sentence
  "figure[data-figure]:not(.beside, [data-inputs='0'], [data-explained])": 0.8,
  "figure.beside:not([data-inputs='0'], [data-explained])": 0.4, // one slider, one state of an explanation
  "figure[data-inputs='0']": 0.2,
  ".predict": 1,
  ".exercise": 2,
  ".worked": 0.2,
  ".katex-display": 0.3,
} as const;

/** What is folded away or stands in a picture is not read on the way. */
const unread = "details, svg, .code, .katex-mathml, .locked";

/** How many minutes a part of a chapter takes to be read and worked through. */
export function minutesOf(html: string): number {
  const { document } = parseHTML(
    `<!doctype html><html><body>${withoutDrawings(html)}</body></html>`,
  );
  const things = Object.entries(TAKES).reduce(
    (sum, [selector, each]) => sum + each * document.querySelectorAll(selector).length,
    0,
  );
  for (const part of document.querySelectorAll(unread)) part.remove();
  const words = (document.body.textContent ?? "").split(/\s+/).filter((word) => word !== "").length;
  return words / WORDS + things;
}
