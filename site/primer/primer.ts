import { uncertainNumbersOf } from "../../lib/certainty/uncertain-numbers.js";
import type { Chapter } from "../build/chapter.js";
import { partsOf } from "../build/depth.js";
import type { Term } from "../build/glossary.js";
import { plain, render, renderInline } from "../build/markdown.js";
import { mentionsOf, placesOf } from "../build/mentions.js";
import { colophon, whose } from "../build/shell.js";
import { escapeHtml } from "../cells/escape.js";
import { words as cellWords } from "../cells/words.js";
import type { UnitSystem } from "../say/units.js";
import { classPart } from "./class-part.js";
import { answersLive, leadingOn, predictionsLive } from "./elsewhere.js";
import type { ForWhom } from "./for-whom.js";
import { inline } from "./inline.js";
import { ownIds, prefixOf, type Room } from "./own-ids.js";
import { spelledFor } from "./spelling.js";
import { words } from "./words.js";

/** What goes into the course in one file. */
export interface Primer extends ForWhom {
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

/** Whose figures these are, and how much of that car is estimated. */
function whoseFigures({ madeFor }: Primer): string {
  const car = madeFor?.car;
  if (!car) return whose;
  const numbers = uncertainNumbersOf(car);
  const estimated = numbers.filter(({ how }) => how === "estimated").length;
  const told = `${words.forCar(car.name)} ${cellWords.estimatedOf(estimated, numbers.length)}.`;
  return `<p class="whose">${escapeHtml(told)}</p>`;
}

/** What the scripts of the file go by. */
const madeForData = ({ madeFor }: Primer): string =>
  madeFor
    ? `<script type="application/json" id="made-for">${JSON.stringify(madeFor).replace(/</g, "\\u003c")}</script>`
    : "";

function contents({ chapters, carClass }: Primer): string {
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
<ol>${carClass ? `<li><a href="#class">${escapeHtml(words.ofClass(carClass.name))}</a></li>` : ""}${entries.join("\n")}<li><a href="#words">${words.wordList}</a></li></ol></nav>`;
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

function cover(primer: Primer): string {
  const { name, date, caution, scripts, url } = primer;
  const reader = name ? `<p>${escapeHtml(words.forName(name))}</p>` : "";
  return `<div class="cover"><h1>${words.title}</h1>
<div class="for">${reader}<p>${escapeHtml(date)}</p></div>
${render(caution)}
<p class="alone">${scripts.length > 0 ? words.alone : escapeHtml(words.onPaper(url))}</p>
${contents(primer)}</div>`;
}

/** Folded where it can be opened; on paper it stands there. */
function noticesPart({ notices, scripts }: Primer): string {
  const text = `<pre>${escapeHtml(notices)}</pre>`;
  return scripts.length > 0
    ? `<details class="notices"><summary>${words.notices}</summary>${text}</details>`
    : `<section class="notices"><h1>${words.notices}</h1>${text}</section>`;
}

function articleOf({ html, name, number }: Chapter, room: Room, isPaper: boolean): string {
  const own = leadingOn(ownIds(html, number, room), number, room);
  const text = answersLive(
    predictionsLive(own, name, number, room.url),
    name,
    isPaper ? room.url : "",
  );
  const at = room.url && ` data-at="${room.url}${name}.html"`;
  return `<article id="chapter-${number}"${at}><p class="number">${words.chapter(number)}</p>\n${text}\n</article>`;
}

/** Cover, chapters and word list, as they are spelled in the course. */
function textOf(primer: Primer, units: UnitSystem): string {
  const { chapters, scripts, course, url, carClass, filed } = primer;
  const terms = wordsOf(primer);
  const room: Room = {
    chapters: new Map(chapters.map(({ name, number }) => [name, number])),
    terms: new Set(terms.map(({ id }) => id)),
    course,
    url,
  };
  const parts = chapters.map((chapter) => articleOf(chapter, room, scripts.length === 0));
  return `${whoseFigures(primer)}
${cover(primer)}
${carClass ? classPart(carClass, filed, units) : ""}
${parts.join("\n")}
${wordList(terms)}`;
}

/** The course as one HTML file that needs nothing else. */
export function primerHtml(primer: Primer): string {
  const { name, style, scripts, madeFor } = primer;
  const units = madeFor?.units ?? "metric";
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
${spelledFor(textOf(primer, units), units)}
${noticesPart(primer)}
</main>
</div>
${colophon}
${madeForData(primer)}
${held.scripts}
</body>
</html>
`;
}
