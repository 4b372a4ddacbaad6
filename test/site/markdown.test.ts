import { describe, expect, it } from "vitest";
import { render, slug } from "../../site/build/markdown.js";

describe("markdown", () => {
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
