import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { glossary } from "../../../site/build/glossary.js";
import { inRoot } from "../../../site/build/paths.js";

const dist = process.env.DIST ?? inRoot("dist");
const pages = readdirSync(dist).filter((file) => file.endsWith(".html"));
const read = (file: string) => readFileSync(`${dist}/${file}`, "utf8");
const hrefsIn = (html: string) =>
  [...html.matchAll(/href="([^"]+)"/g)].map(([, href = ""]) => href);
const hasAnchor = (file: string, anchor: string) => read(file).includes(`id="${anchor}"`);

describe("the page of words", () => {
  it("has an anchor for each word", () => {
    const missing = glossary().filter(({ id }) => !hasAnchor("words.html", id));
    expect(missing).toEqual([]);
  });

  it("leads from each word to a page and an anchor that are there", () => {
    const links = hrefsIn(read("words.html")).filter((href) => /\.html/.test(href));
    const broken = links.filter((href) => {
      const [file = "", anchor] = href.split("#");
      return !pages.includes(file) || (anchor !== undefined && !hasAnchor(file, anchor));
    });
    expect(broken).toEqual([]);
  });

  it("is reached only by anchors that it has", () => {
    const links = pages.flatMap((file) => hrefsIn(read(file)));
    const anchors = links.flatMap((href) => /^words\.html#(.+)$/.exec(href)?.[1] ?? []);
    expect(anchors.filter((anchor) => !hasAnchor("words.html", anchor))).toEqual([]);
  });

  it("says where a word is explained", () => {
    expect(read("words.html")).toMatch(
      /<dt id="wheel-rate">.*?Explained in:<\/span> <a href="03-[^"]+#from-spring-to-wheel"/s,
    );
  });
});
