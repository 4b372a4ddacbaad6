import { expect, it } from "vitest";
import { withOwnLinks } from "../../site/build/own-chapters.js";

const held = {
  chapters: ["01-a", "02-b"],
  files: new Set(["index.html", "01-a.html", "02-b.html"]),
  rest: "",
};
const page = (link: string) => `<!doctype html>\n<html lang="en"><p>${link}</p>`;

it("an outside course keeps links to what it has, and the words alone of others", () => {
  const own =
    '<a href="02-b.html#why">b</a> <a href="https://a.example/x.html">x</a> <a href="#y">y</a>';
  const kept = withOwnLinks(
    page(`${own} <a class="term" href="06-springs.html#why">springs</a>`),
    held,
  );
  expect(kept).toContain(`<p>${own} springs</p>`);
  expect(kept).toContain('<html data-chapters="01-a 02-b" data-rest="" lang="en">');
});

it("an outside course leads on to the course with the other chapters, where it knows its address", () => {
  const rest = "https://book.example/course/";
  expect(withOwnLinks(page('<a href="06-s.html?a=1#why">s</a>'), { ...held, rest })).toContain(
    `<a href="${rest}06-s.html?a=1#why">s</a>`,
  );
});
