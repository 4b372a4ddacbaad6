import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readNotebooks } from "../../site/build/build.js";
import { codeCells } from "../../site/build/notebook.js";
import { inRoot } from "../../site/build/paths.js";

const sections = [
  "Puzzle",
  "Predict",
  "What happens",
  "Why",
  "In numbers",
  "What shifts it",
  "Try it on the car",
  "What else that change moves",
  "Where this picture ends",
  "Summary",
  "Exercises",
];

const count = (text: string, pattern: RegExp) => text.match(pattern)?.length ?? 0;

describe.each(readNotebooks().map((notebook) => [notebook.name, notebook] as const))(
  "chapter %s",
  (name, notebook) => {
    const code = codeCells(notebook).map(({ source }) => source);
    const prose = notebook.cells.filter(({ kind }) => kind === "markdown");

    it("goes from puzzle to exercises in the order readers know", () => {
      const headings = prose.flatMap(({ source }) =>
        [...source.matchAll(/^## (?:Deeper: )?(.+)$/gm)].map(([, text]) => text),
      );
      expect(headings).toEqual(sections);
    });

    it("is a chapter's length, asks first, and comes alive more than once", () => {
      const all = code.join("\n");
      expect(notebook.cells.length).toBeGreaterThanOrEqual(30);
      expect(notebook.cells.length).toBeLessThanOrEqual(66); // chapter 9 has luck and how sure too
      expect(count(all, /^predict\(/gm)).toBeGreaterThanOrEqual(1);
      expect(count(all, /^figure\(/gm)).toBeGreaterThanOrEqual(3);
      expect(count(all, /^worked\(/gm)).toBeGreaterThanOrEqual(4);
      expect(count(all, /^exercise\(/gm)).toBeGreaterThanOrEqual(4);
    });

    it("warns before it sends anyone to a car", () => {
      const warned = prose.some(({ source }) => /^> \*\*Caution/m.test(source));
      expect(warned).toBe(true);
    });

    it("imports once", () => {
      const importing = code.filter((source) => /^import /m.test(source));
      expect(importing).toEqual([code[0]]);
    });

    it("is kept without results, so that a change shows what its author changed", () => {
      const raw = JSON.parse(readFileSync(inRoot(`notebooks/${name}.ipynb`), "utf8"));
      const kept = raw.cells.filter(
        (cell: { outputs?: unknown[]; execution_count?: number | null }) =>
          (cell.outputs ?? []).length > 0 || (cell.execution_count ?? null) !== null,
      );
      expect(kept).toEqual([]);
    });

    it("leaves figures with units to the kernel", () => {
      const typed = prose.flatMap(({ id, source }) =>
        source
          .split("\n")
          .filter((line) =>
            /\d\s?(N|kN|kg|mm|m|kPa|bar|psi|km\/h|m\/s²|Hz|N\/mm|Nm|°)(?![\w/])/.test(line),
          )
          .filter((line) => !/common practice, no source|\(\D*\d{4}\)/.test(line))
          .map((line) => `${id}: ${line}`),
      );
      expect(typed).toEqual([]);
    });
  },
);
