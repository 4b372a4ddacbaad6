import type { Chapter } from "../build/chapter.js";
import { partsOf } from "../build/depth.js";
import type { Term } from "../build/glossary.js";
import { plain, render, renderInline } from "../build/markdown.js";
import { mentionsOf, placesOf } from "../build/mentions.js";
import { colophon, whose } from "../build/shell.js";
import { escapeHtml } from "../cells/escape.js";
import { leadingOn, predictionsLive } from "./elsewhere.js";
import { inline } from "./inline.js";
import { ownIds, prefixOf, type Room } from "./own-ids.js";
import { words } from "./words.js";

/** What goes into the course in one file. */
export interface Primer {
  /** Whom it is for; left out where empty. */
  readonly name: string;
  /** As it is to be read, such as "25 November 2026". */
  readonly date: string;
  readonly chapters: readonly Chapter[];
  readonly terms: readonly Term[];
  /** The caution that comes first, in markdown. */
  readonly caution: string;
  readonly style: string;
  /** Notices of those whose work is in it. */
  readonly notices: string;
  /** Name of each chapter of the course, by its number. */
  readonly course: ReadonlyMap<string, string>;
  /** Address of the live course, with a slash at its end; empty where none was given. */
  readonly url: string;
  /** In the order in which they run; none makes a file for paper. */
  readonly scripts: readonly string[];
}

function contents(chapters: readonly Chapter[]): string {
  const entries = chapters.map((chapter) => {
    const { number, title } = chapter;
    const own = partsOf(chapter)
      .slice(1)
      .map((part) => `<li><a href="#${prefixOf(number)}${part.id}">${part.title}</a></li>`);
    return (
      `<li><a href="#chapter-${number}">${number} ${escapeHtml(plain(title))}</a>` +
      `<ol>${own.join("")}</ol></li>`
    );
  });
  return `<nav class="contents" aria-label="${words.contents}"><h2>${words.contents}</h2>
<ol>${entries.join("\n")}<li><a href="#words">${words.wordList}</a></li></ol></nav>`;
}

function wordList(terms: readonly Term[]): string {
  const entries = terms.map(
    ({ id, name, meaning, also }) =>
      `<dt id="word-${id}">${escapeHtml(name)}</dt><dd>${renderInline(meaning)}` +
      (also.length > 0
        ? ` <span class="also">(${escapeHtml(also.join(", "))})</span></dd>`
        : "</dd>"),
  );
  return `<section id="words" class="words"><h1>${words.wordList}</h1><dl>${entries.join("\n")}</dl></section>`;
}

/** The words that these chapters explain or use. */
function wordsOf({ terms, chapters }: Primer): Term[] {
  const places = placesOf(chapters);
  return terms.filter((term) => mentionsOf(term, places).used.length > 0);
}

function cover({ name, date, caution, chapters, scripts, url }: Primer): string {
  const reader = name ? `<p>${escapeHtml(words.forName(name))}</p>` : "";
  return `<div class="cover"><h1>${words.title}</h1>
<div class="for">${reader}<p>${escapeHtml(date)}</p></div>
${render(caution)}
<p class="alone">${scripts.length > 0 ? words.alone : escapeHtml(words.onPaper(url))}</p>
${contents(chapters)}</div>`;
}

/** Folded where it can be opened; on paper it stands there. */
function noticesPart({ notices, scripts }: Primer): string {
  const text = `<pre>${escapeHtml(notices)}</pre>`;
  return scripts.length > 0
    ? `<details class="notices"><summary>${words.notices}</summary>${text}</details>`
    : `<section class="notices"><h1>${words.notices}</h1>${text}</section>`;
}

function articleOf({ html, name, number }: Chapter, room: Room): string {
  const own = leadingOn(ownIds(html, number, room), number, room);
  const text = predictionsLive(own, name, number, room.url);
  return `<article id="chapter-${number}"><p class="number">${words.chapter(number)}</p>\n${text}\n</article>`;
}

/** The course as one HTML file that needs nothing else. */
export function primerHtml(primer: Primer): string {
  const { name, chapters, style, scripts, course, url } = primer;
  const terms = wordsOf(primer);
  const room: Room = {
    chapters: new Map(chapters.map(({ name, number }) => [name, number])),
    terms: new Set(terms.map(({ id }) => id)),
    course,
    url,
  };
  const parts = chapters.map((chapter) => articleOf(chapter, room));
  const held = inline(scripts, style);
  return `<!doctype html>
<html lang="en" data-page="primer">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${held.policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${escapeHtml([words.title, name].filter(Boolean).join(" · "))}</title>
${held.style}
</head>
<body>
<a class="skip" href="#main">Skip to the text</a>
<header class="masthead"><a class="wordmark" href="#main">Rollbook</a><nav aria-label="Rollbook"></nav></header>
<div class="sheet">
<main id="main">
${whose}
${cover(primer)}
${parts.join("\n")}
${wordList(terms)}
${noticesPart(primer)}
</main>
</div>
${colophon}
${held.scripts}
</body>
</html>
`;
}
