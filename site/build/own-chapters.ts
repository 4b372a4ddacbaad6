import { readdirSync, readFileSync, writeFileSync } from "node:fs";

/** Which chapters an outside course has, and where the others are; empty where nobody said. */
interface Held {
  readonly chapters: readonly string[];
  /** Files of the course by name. */
  readonly files: ReadonlySet<string>;
  /** Address of the course with the other chapters, with a slash at its end. */
  readonly rest: string;
}

const link = /<a ([^>]*?)href="([^":#?]+\.html)([#?][^"]*)?"([^>]*)>(.*?)<\/a>/gs;

/**
 * A page of an outside course whose links lead to what is there, or to the course with the other
 * chapters; where nobody said where that is, only their words stay. Scripts go by what its head says.
 */
export const withOwnLinks = (html: string, { chapters, files, rest }: Held): string =>
  html
    .replace(link, (whole, before, file: string, end = "", after, text) => {
      if (files.has(file)) return whole;
      return rest ? `<a ${before}href="${rest}${file}${end}"${after}>${text}</a>` : text;
    })
    .replace(
      /^(<!doctype html>\s*<html )/,
      `$1data-chapters="${chapters.join(" ")}" data-rest="${rest}" `,
    );

/** Keeps every page of an outside course to the chapters that it has. */
export function keepToOwn(out: string, chapters: readonly string[], rest: string): void {
  const files = new Set(readdirSync(out));
  for (const file of files) {
    if (!file.endsWith(".html") || file === "404.html") continue;
    const html = readFileSync(`${out}/${file}`, "utf8");
    writeFileSync(`${out}/${file}`, withOwnLinks(html, { chapters, files, rest }));
  }
}
