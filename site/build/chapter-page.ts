import { taughtIn } from "@rollbook/lib";
import { escapeHtml } from "../cells/escape.js";
import { chapterWords as words } from "../say/chapter.js";
import { type Chapter, codePage } from "./chapter.js";
import { EXERCISES, minutesOfChapter, type Part, partsOf, withAsides } from "./depth.js";
import { plain } from "./markdown.js";
import { shell } from "./shell.js";

function neighbour(chapter: Chapter | undefined, word: string, relation: string): string {
  if (!chapter) return "<span></span>";
  return (
    `<a rel="${relation}" href="${chapter.name}.html"><small>${word}</small> ` +
    `${chapter.number} ${escapeHtml(chapter.title)}</a>`
  );
}

/** How deep a part goes and how long it takes, under its heading. */
function depthOf({ title, isDeeper, core, deeper }: Part): string {
  const isMixed = title === EXERCISES && deeper > 0;
  const said = isMixed ? words.mixed(core, deeper) : words.part(isDeeper, isDeeper ? deeper : core);
  return title === "" ? "" : `<p class="depth">${said}</p>`;
}

/** A stretch of a core part that goes deeper, as a part of its own. */
const deeperStretch = (html: string, minutes: number): string =>
  `<section class="part" data-deeper>${html.replace(
    "</h3>",
    `</h3><p class="depth">${words.part(true, minutes)}</p>`,
  )}</section>\n`;

/** Each heading with what stands under it as one part, which a browser need not lay out before it comes near. */
function inParts(chapter: Chapter): string {
  const [opening, ...rest] = partsOf(chapter);
  const { core, all } = minutesOfChapter(chapter);
  const sections = rest.map((part) => {
    const inside = part.isDeeper ? part.html : withAsides(part.html, deeperStretch);
    const html = inside.replace("</h2>", `</h2>${depthOf(part)}`);
    return `<section class="part"${part.isDeeper ? " data-deeper" : ""}>\n${html}</section>`;
  });
  const took = `<p class="depth" id="depth">${words.inAll(core, all)}</p>`;
  return [`${opening?.html ?? ""}${took}`, ...sections].join("\n");
}

/** The page of one chapter. */
export function chapterPage(chapters: readonly Chapter[], index: number): string {
  const chapter = chapters[index];
  if (!chapter) throw new RangeError(`no chapter ${index}`);
  const { name, title, idea } = chapter;
  const sections = partsOf(chapter)
    .slice(1)
    .map(({ id, title: text, isDeeper }) => {
      const deeper = isDeeper ? ' class="deeper"' : "";
      return `<li${deeper}><a href="#${id}">${text}</a></li>`;
    })
    .join("");
  const asks = taughtIn(name).length > 0 ? " data-has-questions" : "";
  const main = `<article${asks}>
${inParts(chapter)}
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
