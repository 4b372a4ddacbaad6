import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { courseFolder } from "../../site/bench/with-site.js";
import { readNotebooks } from "../../site/build/build.js";

const textOf = (file: string) => readFileSync(`${courseFolder}/${file}`, "utf8");

/** A page and the scripts and styles that it asks for. */
const askedFor = (page: string): string[] => [
  page,
  ...[...textOf(page).matchAll(/(?:<script defer[^>]* src|stylesheet" href)="([^"]+)"/g)].map(
    ([, file = ""]) => file,
  ),
];

const kilobytes = (files: readonly string[]): number =>
  files.reduce((sum, file) => sum + gzipSync(textOf(file), { level: 9 }).length, 0) / 1000;

const [first = "", ...next] = readNotebooks().map(({ name }) => `${name}.html`);

describe("what a visit transfers", () => {
  it.each([
    ["index.html", 110],
    [first, 122],
  ])(
    "is small on a first one to %s, with no more requests than an icon and these",
    (page, most) => {
      const files = askedFor(page);
      expect(files.length).toBeLessThanOrEqual(5);
      expect(kilobytes(files)).toBeLessThan(most);
    },
  );

  it("leaves the club's day and what only later chapters call to their own scripts", () => {
    const shared = textOf("course.js");
    expect(shared).not.toMatch(/\b(exampleLog|debriefOf|applyChange|magicFormula1987)\b/);
    expect(shared).toMatch(/\blateralLoadTransfer\b/);
    const before = new Set(askedFor(first));
    const own = next.map((page) => kilobytes(askedFor(page).filter((file) => !before.has(file))));
    expect(Math.max(...own)).toBeLessThan(56);
  });
});
