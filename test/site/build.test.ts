import { existsSync, readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildCourse } from "../../site/build/build.js";
import { notebookText, opening, smallCourse } from "./small-course.js";

const course = smallCourse("faults");
const page = () => readFileSync(`${course.options.out}/01-small.html`, "utf8");
const build = (...cells: Parameters<typeof notebookText>[0]) => {
  course.write(notebookText([opening, ...cells]));
  return buildCourse(course.options);
};

const good = `import { worked } from "@rollbook/cells";
worked({ id: "kept", label: "Kept", value: 3, quantity: "force", decimals: 0, how: "1 + 2" });`;

describe("a build", () => {
  beforeAll(() => build(["code", "good", good]));
  afterAll(course.remove);

  it("puts what a cell displays into the page, with a link to its code", () => {
    expect(page()).toContain('<p class="worked" id="kept" data-worked="3">');
    expect(page()).toContain('href="01-small.code.html#good"');
    const listing = readFileSync(`${course.options.out}/01-small.code.html`, "utf8");
    expect(listing).toContain('<h2 id="good">');
    expect(listing).toContain("import { worked } from &quot;@rollbook/cells&quot;;");
  });

  it("names notebook, cell and line of a cell that throws", async () => {
    const source = 'const load = 3;\n\nif (load > 2) throw new RangeError("no such load");';
    await expect(build(["code", "throws", source])).rejects.toThrow(
      "01-small.ipynb, cell 2 (throws), line 3: RangeError: no such load",
    );
  });

  it("names notebook, cell and line of a type error, also one that only the strict compiler sees", async () => {
    const loose = "const first = 1;\nfunction twice(load) {\n  return 2 * load;\n}";
    await expect(build(["code", "one", "const a = 1;"], ["code", "loose", loose])).rejects.toThrow(
      "01-small.ipynb, cell 3 (loose), line 2: Parameter 'load' implicitly has an 'any' type.",
    );
  });

  it("fails a cell whose promise is rejected after the cell ended", async () => {
    const source = 'void Promise.reject(new RangeError("too late"));';
    await expect(build(["code", "late", source])).rejects.toThrow(/cell 2 \(late\).*too late/);
  });

  it("names the cell of a formula that KaTeX cannot read", async () => {
    await expect(build(["markdown", "formula", "A $\\frac{a$ b"])).rejects.toThrow(
      /^01-small.ipynb, cell 2 \(formula\): ParseError: KaTeX/,
    );
  });

  it("refuses an import that a page could not have", async () => {
    await expect(build(["code", "reads", 'import "d3";'])).rejects.toThrow(
      "01-small.ipynb, cell 2 (reads), line 1: a cell may import @rollbook/lib and @rollbook/cells, not d3",
    );
  });

  it("refuses a notebook that is not JSON, by its name", async () => {
    course.write("{ not json");
    await expect(buildCourse(course.options)).rejects.toThrow(/^01-small: not a notebook, /);
  });

  it("refuses two cells of one id and a notebook without title and idea", async () => {
    await expect(build(["code", "twin", "1;"], ["code", "twin", "2;"])).rejects.toThrow(
      "01-small: two cells have the id twin",
    );
    course.write(notebookText([["markdown", "title", "No title here"]]));
    await expect(buildCourse(course.options)).rejects.toThrow(/01-small.ipynb, cell 1: open with/);
  });

  it("keeps the last good course through every failure and leaves nothing half-made", () => {
    expect(page()).toContain('id="kept"');
    expect(existsSync(`${course.options.out}.next`)).toBe(false);
    expect(existsSync(`${course.options.out}.old`)).toBe(false);
  });
});
