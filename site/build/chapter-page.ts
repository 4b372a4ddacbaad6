import { escapeHtml } from "../cells/escape.js";
import { type Chapter, codePage } from "./chapter.js";
import { plain } from "./markdown.js";
import { shell } from "./shell.js";

function neighbour(chapter: Chapter | undefined, word: string, relation: string): string {
  if (!chapter) return "<span></span>";
  return (
    `<a rel="${relation}" href="${chapter.name}.html"><small>${word}</small> ` +
    `${chapter.number} ${escapeHtml(chapter.title)}</a>`
  );
}

/** Each heading with what stands under it as one part, which a browser need not lay out before it comes near. */
function inParts(html: string): string {
  const [opening = "", ...parts] = html.split(/(?=<h2 )/);
  return [opening, ...parts.map((part) => `<section class="part">\n${part}</section>`)].join("\n");
}

/** The page of one chapter. */
export function chapterPage(chapters: readonly Chapter[], index: number): string {
  const chapter = chapters[index];
  if (!chapter) throw new RangeError(`no chapter ${index}`);
  const { name, title, idea, html } = chapter;
  const sections = chapter.sections
    .map(({ id, text }) => `<li><a href="#${id}">${escapeHtml(plain(text))}</a></li>`)
    .join("");
  const main = `<article>
${inParts(html)}
</article>
<p class="listing-link"><a href="${codePage(chapter)}">The cells of this chapter</a></p>
<nav class="turn" aria-label="Chapters">
${neighbour(chapters[index - 1], "Back to", "prev")}
${neighbour(chapters[index + 1], "On to", "next")}
</nav>`;
  return shell({
    title: `${plain(title)} · Rollbook`,
    description: plain(idea),
    name,
    main,
    aside: `<nav class="sections" aria-label="In this chapter"><ol>${sections}</ol></nav>`,
    followsCar: true,
    scripts: ["course.js", `${name}.js`],
  });
}
