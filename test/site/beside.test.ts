import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { notebookFile } from "../../site/bench/beside/notebook-file.js";
import { notebookKit, vitepress } from "../../site/bench/beside/tool.js";
import { pageFile } from "../../site/bench/beside/vitepress/page-file.js";
import { wrapDisplays } from "../../site/bench/beside/wrap-displays.js";
import { keepTable } from "../../site/bench/keep-table.js";
import { parseNotebook } from "../../site/build/notebook.js";
import { inRoot } from "../../site/build/paths.js";
import { notebookText } from "./small-course.js";

it("wraps a call that shows something", () => {
  expect(wrapDisplays('worked({ id: "a" });\nfigure({ id: "b" });')).toBe(
    'display(worked({ id: "a" }));\ndisplay(figure({ id: "b" }));',
  );
});

it("wraps a call in a condition and in a loop", () => {
  expect(wrapDisplays("if (least !== undefined) worked({ id });")).toBe(
    "if (least !== undefined) display(worked({ id }));",
  );
  expect(wrapDisplays("for (const part of parts) { worked(part as Part); }")).toBe(
    "for (const part of parts) { display(worked(part as Part)); }",
  );
});

it.each([
  "const show = (): void => { worked({}); };",
  "function later() { predict({}); }",
  "const kept = worked;",
  "helper(exercise);",
  'const text = "figure({})"; // figure({})',
])("leaves %s as it is", (source) => {
  expect(wrapDisplays(source)).toBe(source);
});

it("wraps the outer call and leaves what is inside it", () => {
  expect(wrapDisplays("figure({ draw: () => { worked({}); return []; } });")).toBe(
    "display(figure({ draw: () => { worked({}); return []; } }));",
  );
});

const small = (prose: string, code: string) =>
  parseNotebook(
    "01-small",
    notebookText([
      ["markdown", "title", prose],
      ["code", "sum", code],
    ]),
  );

const file = notebookFile(
  small("# Loads & lean\n\nThe load is $W = m\\,g$.", 'worked({ label: "</script>" });'),
);

it("writes prose as a cell of HTML, its formulas rendered", () => {
  expect(file).toContain("<title>Loads &amp; lean</title>");
  expect(file).toMatch(/<script id="1" type="text\/html">\s+<h1[^>]*>Loads &amp; lean<\/h1>/);
  expect(file).toContain('class="katex"');
});

it("writes code as a cell of TypeScript that cannot end its tag", () => {
  expect(file).toContain('<script id="2" type="text/x-typescript">\n    display(worked(');
  expect(file.match(/<\/script>/g)).toHaveLength(2);
});

it("keeps a table between its own marks alone", () => {
  const document = "<!-- a -->\nold\n<!-- end -->\nwords\n<!-- b -->\n<!-- end b -->\n";
  const marksOf = (opening: string, ending: string) => ({ opening, ending });
  expect(keepTable(document, marksOf("<!-- a -->", "<!-- end -->"), "| $1 |")).toBe(
    "<!-- a -->\n| $1 |\n<!-- end -->\nwords\n<!-- b -->\n<!-- end b -->\n",
  );
  expect(keepTable(document, marksOf("<!-- b -->", "<!-- end b -->"), "| 2 |")).toBe(
    "<!-- a -->\nold\n<!-- end -->\nwords\n<!-- b -->\n| 2 |\n<!-- end b -->\n",
  );
  expect(() => keepTable(document, marksOf("<!-- c -->", "<!-- end c -->"), "")).toThrow(
    "no table",
  );
});

it("writes a page of Markdown whose cells run in order once it is mounted", () => {
  const page = pageFile(
    small(
      "# Loads\n\nThe load is $W = m\\,g$, not {{ this }}.",
      'import { a, type B, c as d } from "x";\nworked({ id: "</script>" });',
    ),
  );
  expect(page).toContain('const { a,  c: d } = await import("x");\ndisplay(worked(');
  expect(page).toContain("# Loads\n\nThe load is $W = m\\,g$, not &#123;&#123; this }}.");
  expect(page).toContain('<div id="cell-0"></div>');
  expect(page.match(/<\/script>/g)).toHaveLength(1);
});

it.each([notebookKit, vitepress])(
  "the lock of $name has this course's own version of the plots, and a hash for all",
  ({ locked, packages }) => {
    const version = (file: string, name: string) =>
      JSON.parse(readFileSync(inRoot(file), "utf8")).packages[`node_modules/${name}`].version;
    const lock = `${locked.slice(inRoot("").length)}/package-lock.json`;
    for (const [name, wanted] of Object.entries(packages)) expect(version(lock, name)).toBe(wanted);
    const plot = "@observablehq/plot";
    expect(version("package-lock.json", plot)).toBe(packages[plot]);
    const all = JSON.parse(readFileSync(inRoot(lock), "utf8")).packages as Record<
      string,
      { integrity?: string }
    >;
    const open = Object.entries(all).filter(([at, { integrity }]) => at !== "" && !integrity);
    expect(open).toEqual([]);
  },
);
