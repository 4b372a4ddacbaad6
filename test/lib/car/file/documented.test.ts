import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { carFileDocs } from "../../../../site/commands/car-file-docs.js";

// Out of date? Run: npm run car-file-docs && npm run format
const page = readFileSync("docs/car-file.md", "utf8");
const made = carFileDocs(page);

/** A page without what the formatter decides. */
function plain(markdown = ""): string {
  return markdown.replace(/-{3,}/g, "---").replace(/[*_]/g, "").replace(/ +/g, " ");
}

test("the tables of the car file are those of the parameter table", () => {
  expect(plain(made["docs/car-file.md"])).toBe(plain(page));
});

test("the JSON Schema of the car file is that of the parameter table", () => {
  const schema = readFileSync("docs/car-file.schema.json", "utf8");
  expect(JSON.parse(made["docs/car-file.schema.json"] ?? "")).toEqual(JSON.parse(schema));
});
