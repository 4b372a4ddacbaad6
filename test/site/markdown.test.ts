import { describe, expect, it } from "vitest";
import { render, slug } from "../../site/build/markdown.js";
import { openTerms } from "../../site/build/term-links.js";

describe("markdown", () => {
  it("lets the first word of a paragraph for each part of a car carry its tone, where asked", () => {
    const source =
      "## A spring\n\nA spring, a **bar**, $k_s$, springs, [a tyre](a.html), tyres.\n\nBars.";
    const words = (html: string) =>
      [...html.matchAll(/data-part="(\w+)">(\w+)</g)].map(([, part, word]) => `${part} ${word}`);
    expect(words(render(source, { partWords: true }))).toEqual([
      ...["springs spring", "bar bar", "tyres tyres", "bar Bars"],
    ]);
    expect(words(render(source))).toEqual([]);
    expect(render(source, { partWords: true })).toContain('<h2 id="a-spring">A spring</h2>');
  });

  it("links each word of the glossary where a chapter first uses it, the longer of two, but no heading and no link", () => {
    const term = (name: string) => ({ id: name.replace(" ", "-"), name, also: [], meaning: "" });
    const terms = openTerms(["roll", "roll centre", "track"].map(term));
    const linked = (source: string) =>
      [
        ...render(source, { terms }).matchAll(
          /<a class="term" href="words.html#([^"]+)">([^<]+)</g,
        ),
      ].map(([, id, text]) => `${id}: ${text}`);
    expect(
      linked("## Roll\n\nThe Roll centres, a [track](a.html), unroll; a *roll*, a roll."),
    ).toEqual(["roll-centre: Roll centres", "roll: roll"]);
    expect(linked("A roll centre, a **track**.")).toEqual(["track: track"]);
  });

  it("gives each heading a stable anchor and lists it", () => {
    expect(render("## What else it moves?")).toBe(
      '<h2 id="what-else-it-moves">What else it moves?</h2>\n',
    );
  });

  it("sets formulas as MathML and as text for the eye", () => {
    const html = render("The load $F_z$ moves.");
    expect(html).toContain("<math");
    expect(html).toContain('class="katex-html"');
  });

  it("takes as a formula what stands between dollars beside no word, in a line or as lines of their own", () => {
    const sources = (text: string) =>
      [...render(text).matchAll(/<annotation[^>]*>([^<]*)</g)].map(([, source]) => source);
    expect(sources("Two of $a$, ($b + \\$1$) and $c$.")).toEqual(["a", "b + \\$1", "c"]);
    expect(sources("It costs $5 here, a$b$c, `$d$`, \\$e$.")).toEqual([]);
    expect(sources("So\n$$\nx = 1\n$$\nand $$ y $$")).toEqual(["x = 1"]);
    expect(sources("> $$ z $$")).toEqual(["z"]);
    expect(render("$$ x $$\n\nNext.")).toMatch(/^<p><span class="katex-display">[\s\S]*<p>Next/);
    expect(render("$$\nnever ends")).toBe("<p>$$\nnever ends</p>\n");
  });

  it("says what of a formula cannot be read", () => {
    expect(render("$\\frac{a$")).toContain('class="katex-error" title="ParseError');
  });

  it("marks a quotation that opens with Caution as a safety notice", () => {
    expect(render("> **Caution.** Use stands.")).toContain('<blockquote class="caution">');
    expect(render("> Just words.")).toContain("<blockquote>");
  });

  it("shows HTML in the source as text", () => {
    expect(render("<script>alert(1)</script>")).not.toContain("<script>");
  });

  it("makes anchors of letters and digits alone", () => {
    expect(slug("Front, rear & 10 % more")).toBe("front-rear-10-more");
    expect(slug("  Übung 2  ")).toBe("ubung-2");
  });
});
