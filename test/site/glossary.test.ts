import { describe, expect, it } from "vitest";
import { readNotebooks } from "../../site/build/build.js";
import { glossary, parseGlossary } from "../../site/build/glossary.js";
import type { Notebook } from "../../site/build/notebook.js";
import { fold } from "../../site/pages/search/fold.js";

/** Short bold that stands for stress. New stress is written in italics; this list only ever gets shorter. */
const stressed = new Set(
  "at ground level, can, cannot, down, how far, how soon, left, less, looks, one hole stiffer, sharing, spring, stiffer in front, sum, that, their".split(
    ", ",
  ),
);

/** A word of the course is a few words at most; longer bold is a sentence that matters. */
const isSaying = (text: string): boolean => text.includes(",") || text.split(" ").length > 4;

const key = (text: string): string => fold(text).join(" ");
const known = new Set(glossary().flatMap(({ name, also }) => [name, ...also].map(key)));

/** What a chapter sets in bold inside a sentence; what opens a line or ends a sentence is a small heading. */
function boldIn({ cells }: Notebook): string[] {
  const prose = cells.filter(({ kind }) => kind === "markdown");
  return prose.flatMap(({ source }) =>
    [...source.matchAll(/(^|\n)?(?:[-*>\d. ]*)\*\*([^*]+)\*\*/g)]
      .filter(([, opens, text = ""]) => opens === undefined && !/[.:?!]$/.test(text))
      .map(([, , text = ""]) => text)
      .filter((text) => !isSaying(text)),
  );
}

describe("the glossary", () => {
  it("has every word that a chapter explains", () => {
    const missing = readNotebooks().flatMap((notebook) =>
      boldIn(notebook)
        .filter((text) => !known.has(key(text)) && !stressed.has(text.toLowerCase()))
        .map(
          (text) => `${notebook.name}: put “${text}” in docs/glossary.md, or stress it in italics`,
        ),
    );
    expect(missing).toEqual([]);
  });

  it("has at least sixty words, each with one sentence and no name twice", () => {
    const terms = glossary();
    expect(terms.length).toBeGreaterThanOrEqual(60);
    for (const { name, meaning } of terms) expect(meaning, name).toMatch(/^[A-Z].{20,}[.]$/);
    const names = terms.flatMap(({ name, also }) => [name, ...also]);
    const twice = names.filter((name, index) => names.indexOf(name) !== index);
    expect(twice).toEqual(["anti-pitch"]);
  });

  it("reads name, other names, symbol and standard", () => {
    const text =
      "# Words\n\n## wheel rate\n\nAs felt *here*.\n\n- also: one, two\n- symbol: $k$ in N/m\n- standard: rate\n";
    expect(parseGlossary(text)).toEqual([
      {
        id: "wheel-rate",
        name: "wheel rate",
        meaning: "As felt *here*.",
        also: ["one", "two"],
        symbol: "$k$ in N/m",
        standard: "rate",
      },
    ]);
  });

  it("refuses an entry without a sentence, an unknown line and a word that stands there twice", () => {
    expect(() => parseGlossary("## toe\n\n- also: a\n")).toThrow(
      "glossary, toe: the sentence that explains it is missing",
    );
    expect(() => parseGlossary("## toe\n\nPoints.\n\n- colour: red\n")).toThrow(
      "glossary, toe: “- colour: red” is not a line that opens with also, symbol, standard",
    );
    expect(() => parseGlossary("## toe\n\nPoints.\n\n## Toe\n\nPoints.\n")).toThrow(
      "glossary: Toe stands there twice",
    );
  });
});
