import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { inRoot } from "../../site/build/paths.js";

const documents = [
  "README.md",
  "DEVELOPERS.md",
  "CHANGELOG.md",
  ...readdirSync(inRoot("docs"))
    .filter((file) => file.endsWith(".md"))
    .map((file) => `docs/${file}`),
];

const scripts: Record<string, string> = JSON.parse(
  readFileSync(inRoot("package.json"), "utf8"),
).scripts;

describe.each(documents)("%s", (file) => {
  const text = readFileSync(inRoot(file), "utf8");

  it("links to files that are there", () => {
    const links = [...text.matchAll(/\]\(([^)#\s]+)[^)]*\)/g)].map(([, link = ""]) => link);
    const inside = links.filter((link) => !/^https?:/.test(link) && !link.endsWith(".html"));
    const missing = inside.filter((link) => !existsSync(inRoot(join(dirname(file), link))));
    expect(missing).toEqual([]);
  });

  it("names npm scripts that are there", () => {
    const named = [...text.matchAll(/npm run ([\w:-]+)/g)].map(([, name = ""]) => name);
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });
});
