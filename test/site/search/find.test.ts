import { describe, expect, it } from "vitest";
import { searchData } from "../../../site/build/search-index.js";
import { excerpt } from "../../../site/pages/search/excerpt.js";
import { searcher } from "../../../site/pages/search/find.js";
import type { Entry } from "../../../site/pages/search/index-of.js";
import { waysToSay } from "../../../site/pages/search/ways-to-say.js";

const entry = (id: string, title: string, text: string): Entry => ({
  id,
  title,
  text,
  kind: "section",
  where: "1 Load transfer",
  also: "",
});
const entries = [
  entry("a", "Bars", "The anti-roll bar twists when one wheel rises."),
  entry("b", "Tyres", "A tyre grips less for each newton added."),
  entry("c", "Weights", "The cross weight is what stands on one diagonal."),
];
/** Through JSON, as the page gets it. */
const find = searcher(JSON.parse(JSON.stringify(searchData(entries))));
const ids = (query: string) => find(query).map(({ id }) => id);

describe("the search", () => {
  it("finds a word by its trade names", () => {
    expect(ids("sway bar")).toEqual(["a"]);
    expect(ids("wedge")).toEqual(["c"]);
    expect(ids("stabilizer bar")).toEqual(["a"]);
  });

  it("finds either spelling, parts of the last word, and forgives one slip of the finger", () => {
    expect(ids("tire")).toEqual(["b"]);
    expect(ids("tyre gri")).toEqual(["b"]);
    expect(ids("diagnal")).toEqual(["c"]);
  });

  it("wants all words of the query, and finds nothing where there is nothing", () => {
    expect(ids("tyre diagonal")).toEqual([]);
    expect(ids("zebra")).toEqual([]);
    expect(ids("")).toEqual([]);
    expect(ids("the")).toEqual([]);
  });

  it("answers a plain question, and where nothing has all of its words what has most of them", () => {
    expect(ids("Why does my anti-roll bar twist?")).toEqual(["a"]);
    expect(ids("how does a tyre grip a zebra")).toEqual(["b"]);
    expect(ids("how does a tyre twist a zebra")).toEqual([]);
  });

  it("puts each other name in the place of the one that was said", () => {
    const names = [
      ["anti-roll bar", "sway bar"],
      ["load", "tyre load"],
    ];
    expect(waysToSay("my sway bars broke", names)).toEqual([
      ["sway", "bar", "broke"],
      ["anti", "roll", "bar", "broke"],
    ]);
  });
});

describe("an excerpt", () => {
  const said = (text: string, matched: string[]) =>
    excerpt(text, matched)
      .map(({ text, hit }) => (hit ? `[${text}]` : text))
      .join("");

  it("marks the words that matched and leaves the text as it is", () => {
    expect(said("Tyres grip; a tyre slips.", ["tyre"])).toBe("[Tyres] grip; a [tyre] slips.");
  });

  it("is a stretch around the first match, with dots where text is left out", () => {
    const long = `${"before ".repeat(60)}match ${"after ".repeat(60)}`;
    const shown = said(long, ["match"]);
    expect(shown).toMatch(/^… .*\[match\].* …$/);
    expect(shown.length).toBeLessThan(260);
  });
});
