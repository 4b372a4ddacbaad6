import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildIfChanged } from "../../site/build/build-if-changed.js";
import { hashFiles } from "../../site/build/hash.js";
import { parseNotebook } from "../../site/build/notebook.js";
import { inRoot } from "../../site/build/paths.js";
import { checkChapter } from "../../site/chapter/check.js";
import { courseFolder } from "../../site/chapter/folder.js";
import { newChapter } from "../../site/chapter/new.js";
import { physicsFaults, unusedFaults } from "../../site/chapter/own-physics.js";
import { shapeFaults } from "../../site/chapter/shape.js";
import { notebookText } from "./small-course.js";

const base = mkdtempSync(join(tmpdir(), "rollbook-chapter-"));
const folder = courseFolder(base);
afterAll(() => rmSync(base, { recursive: true, force: true }));

const withCells = (...cells: Parameters<typeof notebookText>[0]) =>
  parseNotebook("10-own", notebookText(cells));

describe("a chapter of one's own, outside the repository", () => {
  let made: ReturnType<typeof newChapter>;
  beforeAll(() => {
    made = newChapter("Where the ballast sits", folder);
  });

  it("begins as a notebook with the sections, its pins and a list of calls about its title", () => {
    expect(made.notebook).toBe(`${base}/00-where-the-ballast-sits.ipynb`);
    expect(readFileSync(made.calls, "utf8")).toMatch(
      /names\n\n- `rideRateByBallast` \(lib\/measure\//,
    );
    expect(newChapter("Another", folder).number).toBe("01");
    expect(() => newChapter("…", folder)).toThrow(/^A title has letters/);
  });

  it("is looked at alone, and answered in the guide's sentences", async () => {
    const { faults, pinned } = await checkChapter("0", folder, () => {});
    expect(pinned).toBe(1);
    expect(faults[0]).toMatch(/^Still to be written: title, puzzle, .* and exercises\.$/);
    expect(faults.slice(1)).toEqual([
      "In *Predict*: one or more predictions, found none.",
      "In *What happens* and *What shifts it*: three or more figures, found none.",
      "In *In numbers*: four or more worked numbers, found one.",
      "In *Exercises*: four or more exercises, found none.",
      "It has 15 cells; a chapter has 30 to 66, one thought a cell.",
    ]);
  });

  it("is told where a number is not as it is pinned, and where the pins are missing", async () => {
    const other = `${base}/pins/01-another.ts`;
    writeFileSync(other, readFileSync(other, "utf8").replace("810 + 80", "730 + 80"));
    const pinned = await checkChapter("1", folder, () => {});
    expect(pinned.faults.at(-1)).toMatch(
      /^mass is 1080, but its pin says 1000 \(the demo car's body/,
    );
    rmSync(made.pins);
    const { faults } = await checkChapter("0", folder, () => {});
    expect(faults.at(-1)).toMatch(
      /^There is no pins file .*pins\/00-where-the-ballast-sits\.ts; each/,
    );
    await expect(checkChapter("7", folder, () => {})).rejects.toThrow(
      "There is no chapter 7; there are 00 and 01.",
    );
  });

  it("is built with the chapters beside it, once for what they say", async () => {
    const options = { notebooks: base, out: `${base}/dist`, joined: inRoot(".cache/test-own") };
    expect(await buildIfChanged(() => {}, options)).toBe(true);
    const page = readFileSync(`${base}/dist/00-where-the-ballast-sits.html`, "utf8");
    expect(page).toContain('data-worked="1080"'); // by hand: 810 + 80 + 30 + 75 + 85
    expect(existsSync(`${base}/dist/01-another.html`)).toBe(true);
    expect(await buildIfChanged(() => {}, options)).toBe(false);
  });
});

describe("what a chapter's cells may not do", () => {
  it("is to work out physics, save as a slip of an exercise", () => {
    const own =
      "const moved = (car.mass * turn * car.height) / car.track;\nconst half = 2 * moved;";
    const slip = "exercise({ slips: [{ value: (mass * turn * height) / track }] });";
    expect(physicsFaults(withCells(["code", "own", own], ["code", "slip", slip]))).toEqual([
      '10-own.ipynb, cell 1 (own), line 1: "(car.mass * turn * car.height) / car.track" is physics; call the library for it, or add it there.',
    ]);
    const symbols = withCells(["code", "symbols", "const F = (m * a * h) / t;"]);
    expect(physicsFaults(symbols)).toHaveLength(1);
  });

  it("is to import what they do not use", () => {
    const tools = 'import {\n  type Car, GRAVITY, meanOf,\n} from "@rollbook/lib";';
    const uses = 'const weigh = (car: Car) => "meanOf"; // GRAVITY';
    expect(unusedFaults(withCells(["code", "tools", tools], ["code", "uses", uses]))).toEqual([
      "10-own.ipynb, cell 1 (tools), line 2: GRAVITY is imported and never used.",
      "10-own.ipynb, cell 1 (tools), line 2: meanOf is imported and never used.",
    ]);
  });

  it("is told by section where headings are missing, strange or astray", () => {
    const faults = shapeFaults(
      withCells(["markdown", "a", "## Puzzle\n\n## Why\n\n## Aside\n\nWith 12 mm."]),
    );
    expect(faults).toContain("There is no *Predict*; it follows *Puzzle*.");
    expect(faults).toContain("*Aside* is no section of a chapter; inside one, use ###.");
    expect(faults.find((fault) => fault.includes("12 mm"))).toMatch(/cell 1 \(a\), line 7: /);
  });
});

it("a hash of files does not hang on where they lie", () => {
  const twin = mkdtempSync(join(tmpdir(), "rollbook-twin-"));
  const [one, two] = [join(base, "one"), join(twin, "two")];
  for (const place of [one, two]) {
    mkdirSync(place);
    newChapter("Alike", { notebooks: place, pinsOf: (name) => `${place}/pins/${name}.ts` });
  }
  expect(hashFiles([one])).toBe(hashFiles([two]));
  writeFileSync(`${two}/more.ts`, "");
  expect(hashFiles([one])).not.toBe(hashFiles([two]));
  rmSync(twin, { recursive: true, force: true });
});
