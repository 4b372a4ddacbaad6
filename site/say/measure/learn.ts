import { measurementWords } from "./measurements.js";
import { fieldWords, foundWords } from "./words.js";

/** What is said where a car learns from readings of several kinds. */
export const learnWords = {
  title: "What all readings together say",
  lead: "Ride rates, lean under a weight, the circle: they bear on several numbers at once. All that was read and is not in the car yet is laid beside what its file has, each by its spread, and the most probable numbers are found. Nothing is written but what you take over, number by number; what you take over stays marked as estimated, with the smaller spread.",
  begin: "Work it out",
  working: (done: number, of: number) => `Working it out: ${done} of ${of}.`,
  none: "Nothing was read yet that is not in the car already.",
  refused: (why: string) => `That cannot be worked out: ${why}`,
  stale: "Readings or the car have changed since: work it out again.",
  table: "Numbers before and after",
  columns: ["number", "before", "after", "because of", "into the car"],
  take: "Take over",
  takeThis: (what: string) => `Take over: ${what}`,
  taken: "taken over",
  shared: "belongs to no single place",
  unmoved: "No number has moved or become surer.",
  together: (often: boolean) =>
    often
      ? "Readings and estimates go together."
      : "Readings and estimates lie further apart than chance makes once in twenty: look at the readings again.",
  odd: (what: string) => `Without this one all goes together: ${what}.`,
} as const;

/** A reading by its id, such as "ride-rate.front.rideRate". */
export function readingInWords(id: string): string {
  const [form = "", ...rest] = id.split(".");
  const key = rest.at(-1) ?? "";
  const end = rest.length > 1 ? ` (${rest[0]})` : "";
  const title = measurementWords[form]?.title ?? form;
  const what = foundWords[key] ?? fieldWords[key] ?? key;
  return `${title}${end}: ${what.toLowerCase()}`;
}
