import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { afterAll, beforeAll, expect, it } from "vitest";
import { currentApi } from "../../site/api/kept.js";
import { callsHtml } from "../../site/build/listing-page.js";
import { inRoot } from "../../site/build/paths.js";

const folder = inRoot(".cache/test-api");
const course = inRoot(".cache/test-api-course");
beforeAll(() => {
  mkdirSync(`${folder}/functions`, { recursive: true });
  writeFileSync(`${folder}/.made-from`, "these sources");
  writeFileSync(`${folder}/functions/physics.wheelRate.html`, "<title>wheelRate</title>");
});
afterAll(() => {
  for (const made of [folder, course]) rmSync(made, { recursive: true, force: true });
});

it("leads from a chapter's cells to the page of each function of the library that has one", () => {
  const api = currentApi(folder, "these sources");
  const source = 'import { type Car, GRAVITY, wheelRate } from "@rollbook/lib";';
  expect(api && callsHtml({ source }, api)).toBe(
    '<p>They call <a href="api/index.html">the library</a>’s <a href="api/functions/physics.wheelRate.html">wheelRate</a>.</p>',
  );
  api?.copyTo(course);
  const page = `${course}/api/functions/physics.wheelRate.html`;
  expect(readFileSync(page, "utf8")).toContain("wheelRate");
});

it("offers no pages that were made before the library changed", () => {
  expect(currentApi(folder, "other sources")).toBeUndefined();
});
