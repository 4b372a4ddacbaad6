import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { fileDocs } from "../../../../site/commands/car-file-docs.js";

// Out of date? Run: npm run car-file-docs && npm run format
const present = (file: string) => readFileSync(file, "utf8");
const made = fileDocs(present);

/** A page without what the formatter decides. */
function plain(markdown = ""): string {
  return markdown.replace(/-{3,}/g, "---").replace(/[*_]/g, "").replace(/ +/g, " ");
}

test.each(["car-file", "class-file", "tyre-file"])(
  "the tables of the %s are those of the shapes",
  (name) => {
    expect(plain(made[`docs/${name}.md`])).toBe(plain(present(`docs/${name}.md`)));
  },
);

test.each(["car-file", "class-file", "tyre-file"])(
  "the JSON Schema of the %s is that of the shapes",
  (name) => {
    const file = `docs/${name}.schema.json`;
    expect(JSON.parse(made[file] ?? "")).toEqual(JSON.parse(present(file)));
  },
);
