import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { codeOf } from "../../../site/hand-over/code.js";
import { answersLive, leadingOn, predictionsLive } from "../../../site/primer/elsewhere.js";
import { inline } from "../../../site/primer/inline.js";
import { ownIds } from "../../../site/primer/own-ids.js";
import { primerHtml } from "../../../site/primer/primer.js";

const room = {
  chapters: new Map([
    ["01-a", "01"],
    ["03-b", "03"],
  ]),
  terms: new Set(["toe"]),
  course: new Map([
    ["01", "01-a"],
    ["02", "02-c"],
    ["03", "03-b"],
  ]),
  url: "",
};
const live = { ...room, url: "https://club.example/course/" };

describe("several chapters in one file", () => {
  it("keep their ids apart", () => {
    const html = '<h2 id="why">Why</h2><figure class="figure" id="bars">x</figure>';
    expect(ownIds(html, "01", room)).toBe(
      '<h2 id="c01-why">Why</h2><figure class="figure" id="c01-bars">x</figure>',
    );
  });

  it("lead their links to places in the file, and leave only the words of others", () => {
    const to = (href: string) => ownIds(`<a href="${href}">there</a>`, "01", room);
    expect(to("#bars?frontBar=480")).toBe('<a href="#c01-bars?frontBar=480">there</a>');
    expect(to("03-b.html#why")).toBe('<a href="#c03-why">there</a>');
    expect(to("03-b.html")).toBe('<a href="#chapter-03">there</a>');
    expect(to("words.html#toe")).toBe('<a href="#word-toe">there</a>');
    expect(to("https://doi.org/x")).toBe('<a href="https://doi.org/x">there</a>');
    for (const away of [
      "02-c.html#why",
      "words.html#camber",
      "search.html",
      "javascript:alert(1)",
    ]) {
      expect(to(away)).toBe("there");
    }
  });

  it("lead on to the live course, where its address is known", () => {
    const to = (href: string) => ownIds(`<a href="${href}">there</a>`, "01", live);
    const at = "https://club.example/course/";
    expect(to("02-c.html#why")).toBe(`<a href="${at}02-c.html#why">there</a>`);
    expect(to("words.html#camber")).toBe(`<a href="${at}words.html#camber">there</a>`);
    expect(to("javascript:alert(1)")).toBe("there");
  });

  it("say of each chapter that they mention where it is, but not of a book's", () => {
    const html =
      "<h2>Chapter 3</h2><p>Chapter 3, then chapter 2 and chapter 2 again; chapter 1, chapter 44. <em>Dynamics</em>, chapter 3.</p>";
    const inFile = '<a href="#chapter-03">Chapter 3</a>, then ';
    const rest = " again; chapter 1, chapter 44. <em>Dynamics</em>, chapter 3.</p>";
    expect(leadingOn(html, "01", room)).toBe(
      `<h2>Chapter 3</h2><p>${inFile}chapter 2 <span class="elsewhere">(in the course, not in this file)</span> and chapter 2${rest}`,
    );
    const link = '<a href="https://club.example/course/02-c.html">chapter 2</a>';
    expect(leadingOn(html, "01", live)).toBe(
      `<h2>Chapter 3</h2><p>${inFile}${link} and ${link}${rest}`,
    );
  });

  it("open each prediction in the live course, by a link and a code", () => {
    const html = '<section class="predict" id="c01-bars">x</section>';
    const shown = predictionsLive(html, "01-a", "01", live.url);
    const address = "https://club.example/course/01-a.html#bars";
    expect(shown).toContain(`<a href="${address}">Predict it in the course</a>`);
    expect(shown).toContain(`<path d="${codeOf(address).path}"`);
    expect(predictionsLive(html, "01-a", "01", "")).toBe(html);
  });

  it("say on paper where the answers of their exercises open", () => {
    const html = '<h2 id="c01-exercises">Exercises</h2><p>x</p>';
    const address = "https://club.example/course/01-a.html#exercises";
    expect(answersLive(html, "01-a", live.url)).toContain(
      `Exercises</h2><p class="at-course"><a href="${address}">`,
    );
    expect(answersLive(html, "01-a", "")).toBe(html);
  });

  it("drop the links to their code", () => {
    const link = '<a class="code" href="01-a.code.html#total">Code</a>';
    expect(ownIds(`<div>x${link}</div>`, "01", room)).toBe("<div>x</div>");
  });
});

describe("code inside the file", () => {
  it("is allowed by its hash alone", () => {
    const { policy, scripts } = inline(["run();"], "p{}");
    const hash = createHash("sha256").update("run();").digest("base64");
    expect(policy).toContain(`script-src 'sha256-${hash}';`);
    expect(policy).not.toMatch(/script-src[^;]*unsafe|https?:|\*/);
    expect(scripts).toBe("<script>run();</script>");
  });

  it("cannot end its own element", () => {
    const { scripts } = inline(['say("</script><b>", "<!--")'], "");
    expect(scripts.match(/<\/script/g)).toHaveLength(1);
    expect(scripts).not.toContain("<!--");
  });

  it("is nowhere in a file for paper", () => {
    expect(inline([], "").policy).toContain("script-src 'none'");
  });
});

describe("the first page of a primer", () => {
  const html = primerHtml({
    name: '<img src=x onerror="alert(1)">',
    date: "25 November 2026",
    chapters: [
      {
        name: "01-a",
        number: "01",
        title: "Load *transfer*",
        idea: "",
        html: '<h1 id="a">A</h1><p>idea</p><h2 id="why">Why</h2><p>The toe of a wheel.</p>',
      },
    ],
    terms: [
      { id: "toe", name: "toe", also: [], meaning: "Where a wheel points." },
      { id: "yaw", name: "yaw", also: [], meaning: "A turn." },
    ],
    caution: "> **Caution.** Chocks first.",
    style: "",
    notices: "a package\n<b>by somebody</b>",
    course: room.course,
    url: "",
    scripts: [],
  });

  it("says for whom and when, as text", () => {
    expect(html).toContain("For new members of &lt;img src=x onerror=&quot;alert(1)&quot;&gt;");
    expect(html).not.toContain("<img");
    expect(html).toContain("25 November 2026");
  });

  it("puts the caution before the contents, and the contents before the chapters", () => {
    const order = ["Chocks first", "<h2>Contents", 'id="chapter-01"', 'id="words"'];
    const places = order.map((text) => html.indexOf(text));
    expect(places.every((place) => place > 0)).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
    expect(html).toContain('<a href="#c01-why">Why</a>');
  });

  it("carries the notices of those whose work is in it, as text", () => {
    expect(html).toContain("<pre>a package\n&lt;b&gt;by somebody&lt;/b&gt;</pre>");
  });

  it("explains the words that its chapters use, and no others", () => {
    expect(html).toContain('<dt id="word-toe">');
    expect(html).not.toContain('id="word-yaw"');
  });
});
