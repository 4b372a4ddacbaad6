import { expect, it } from "vitest";
import { notFoundPage } from "../../site/build/not-found.js";
import { withPreview } from "../../site/build/preview.js";
import { shell } from "../../site/build/shell.js";

const url = "https://club.example/course/";

it("a page says where it is found, and what others show of a link to it", () => {
  const html = shell({ title: "Map & more", description: "Two levers", name: "map", main: "" });
  const told = withPreview(html, "map.html", url);
  expect(told).toContain(`<link rel="canonical" href="${url}map.html">`);
  expect(told).toContain('<meta property="og:title" content="Map &amp; more">');
  expect(told).toContain('<meta property="og:description" content="Two levers">');
  expect(told).toContain(`<meta property="og:image" content="${url}preview.png">`);
  expect(withPreview(html, "index.html", url)).toContain(`rel="canonical" href="${url}"`);
  expect(withPreview("<title>On</title>", "garage.html", url)).toBe("<title>On</title>");
});

it("an address that leads nowhere leads to the course, whose address is known or looked for", () => {
  expect(notFoundPage(url)).toContain(`href="${url}index.html">The chapters</a>`);
  expect(notFoundPage(url)).toContain("script-src 'none'");
  expect(notFoundPage("")).toContain('<p id="ways" hidden>');
});
