import { UsageError } from "../commands/usage.js";

const longestName = 80;

/** The organiser's name as given, or a sentence about what is wrong with it. */
export function nameFrom(given: string): string {
  const name = given.trim();
  if (name.length > longestName) {
    throw new UsageError(`name takes up to ${longestName} characters, not ${name.length}.`);
  }
  return name;
}

/** A day such as 2026-11-25 as it is read, "25 November 2026". */
export function dateFrom(given: string): string {
  const day = new Date(`${given}T00:00:00Z`);
  const exact = /^\d{4}-\d\d-\d\d$/.test(given) && !Number.isNaN(day.getTime());
  if (!exact || day.toISOString().slice(0, 10) !== given) {
    throw new UsageError(`date takes a day such as 2026-11-25, not ${given}.`);
  }
  return new Intl.DateTimeFormat("en-GB", { dateStyle: "long", timeZone: "UTC" }).format(day);
}

/** Chapter numbers such as "01,03"; none means all. */
export function numbersFrom(given: string): string[] {
  const numbers = given.split(",").map((number) => number.trim());
  const wanted = numbers.filter(Boolean);
  const strange = wanted.find((number) => !/^\d{1,2}$/.test(number));
  if (strange) {
    throw new UsageError(`chapters takes numbers such as 01,03, not ${strange}.`);
  }
  return wanted;
}

/** The address of the live course, with a slash at its end; empty where none is named. */
export function urlFrom(given: string, option = "url"): string {
  if (given === "") return "";
  const url = URL.canParse(given) ? new URL(given) : undefined;
  if (!url || !/^https?:$/.test(url.protocol) || url.search || url.hash || url.username)
    throw new UsageError(
      `${option} takes an address such as https://club.example/course/, not ${given}.`,
    );
  return url.href.replace(/(\/index\.html|\/)?$/, "/");
}
