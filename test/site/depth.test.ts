import { describe, expect, it } from "vitest";
import type { Chapter } from "../../site/build/chapter.js";
import { minutesOfChapter, partsOf, withAsides } from "../../site/build/depth.js";

const words = (count: number) => `<p>${"word ".repeat(count)}</p>`;
const chapter = (html: string) => ({ html }) as Chapter;

describe("what goes deeper in a chapter", () => {
  const why =
    `<h2 id="why">Why</h2><h3 id="a">First</h3>${words(200)}` +
    `<h3 id="b">Deeper: Second</h3>${words(400)}<h3 id="c">Third</h3>${words(200)}`;

  it("counts a stretch of a core part as deeper where its heading says so", () => {
    const { core, all } = minutesOfChapter(chapter(why));
    expect(all - core).toBeCloseTo(400 / 200, 1); // at 200 words a minute, but for those of its heading
  });

  it("lets such a stretch stand by itself, without the word that said so", () => {
    const html = withAsides(why, (stretch) => `[${stretch}]`);
    expect(html).toContain('[<h3 id="b">Second</h3>');
    expect(html.endsWith(words(200))).toBe(true);
  });

  it("takes a whole part as deeper where its heading says so, whatever it is called", () => {
    const [, part] = partsOf(chapter(`<p>One.</p><h2 id="e">Deeper: Exercises</h2>${words(100)}`));
    expect(part).toMatchObject({ title: "Exercises", isDeeper: true, core: 0 });
    expect(part?.html).toContain(">Exercises</h2>");
  });
});
