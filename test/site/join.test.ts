import { expect, it } from "vitest";
import { cellAt, join } from "../../site/build/join.js";
import { parseNotebook } from "../../site/build/notebook.js";
import { notebookText } from "./small-course.js";

const notebook = parseNotebook(
  "01-small",
  notebookText([
    ["code", "first", "const a = 1;\nconst b = 2;"],
    ["markdown", "words", "between"],
    ["code", "second", "const c = a + b;"],
  ]),
);

it("joins the code cells in order and leaves the words out", () => {
  expect(join(notebook).source).toBe("const a = 1;\nconst b = 2;\nconst c = a + b;\nexport {};\n");
});

it("finds the way back from a joined line to cell and line", () => {
  expect(cellAt(join(notebook), 2)).toEqual({ id: "first", line: 2 });
  expect(cellAt(join(notebook), 3)).toEqual({ id: "second", line: 1 });
});
