import { escapeHtml } from "../cells/escape.js";
import { type Chapter, codePage } from "./chapter.js";
import { render } from "./markdown.js";
import { codeCells, type Notebook } from "./notebook.js";

interface Shell {
  readonly title: string;
  readonly description: string;
  readonly body: string;
  readonly chapter?: string;
  readonly scripts?: readonly string[];
}

const icon =
  "data:image/svg+xml," +
  encodeURIComponent(
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><path d="M3 24h26M6 24l2-9 16-5 2 14" fill="none" stroke="#0b6b8a" stroke-width="3"/></svg>',
  );

function shell({ title, description, body, chapter = "", scripts = [] }: Shell): string {
  return `<!doctype html>
<html lang="en" data-chapter="${chapter}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${escapeHtml(title)}</title>
<meta name="description" content="${escapeHtml(description)}">
<link rel="icon" href="${icon}">
<link rel="stylesheet" href="course.css">
${scripts.map((script) => `<script defer src="${script}"></script>`).join("\n")}
</head>
<body>
<a class="skip" href="#main">Skip to the text</a>
${body}
</body>
</html>
`;
}

const plain = (text: string): string => text.replace(/[*_`$]/g, "");

const masthead = (current: string): string =>
  `<header class="masthead"><a class="wordmark" href="index.html">Rollbook</a><span>${current}</span></header>`;

const colophon = `<footer class="colophon"><p>Rollbook explains; it does not instruct anyone to
work on or drive a car. The maker's manual, the class rules, local codes and licensed people come first.</p></footer>`;

function neighbour(chapter: Chapter | undefined, word: string, relation: string): string {
  if (!chapter) return "<span></span>";
  return (
    `<a rel="${relation}" href="${chapter.name}.html"><small>${word}</small> ` +
    `${chapter.number} ${escapeHtml(chapter.title)}</a>`
  );
}

/** The page of one chapter. */
export function chapterPage(chapters: readonly Chapter[], index: number): string {
  const chapter = chapters[index];
  if (!chapter) throw new RangeError(`no chapter ${index}`);
  const sections = chapter.sections
    .map(({ id, text }) => `<li><a href="#${id}">${escapeHtml(plain(text))}</a></li>`)
    .join("");
  const body = `${masthead(`Chapter ${chapter.number}`)}
<div class="sheet">
<nav class="sections" aria-label="In this chapter"><ol>${sections}</ol></nav>
<main id="main"><article>
${chapter.html}
</article>
<p class="listing-link"><a href="${codePage(chapter)}">The cells of this chapter</a></p>
<nav class="turn" aria-label="Chapters">
${neighbour(chapters[index - 1], "Back to", "prev")}
${neighbour(chapters[index + 1], "On to", "next")}
</nav></main>
</div>
${colophon}`;
  return shell({
    title: `${chapter.title} · Rollbook`,
    description: plain(chapter.idea),
    body,
    chapter: chapter.name,
    scripts: ["course.js", `${chapter.name}.js`],
  });
}

/** The page that lists a chapter's code cells, for those who want to see how a number comes about. */
export function listingPage(notebook: Notebook, { title, number }: Chapter): string {
  const listings = codeCells(notebook)
    .map(
      ({ id, source }) =>
        `<h2 id="${escapeHtml(id)}">${escapeHtml(id)}</h2>` +
        `<pre tabindex="0"><code>${escapeHtml(source)}</code></pre>`,
    )
    .join("\n");
  const { name } = notebook;
  const body = `${masthead(`Chapter ${number}`)}
<div class="sheet listing"><main id="main">
<h1>The cells of “${escapeHtml(title)}”</h1>
<p>The chapter's numbers and figures come from these cells, in this order, and from nothing else.
<a href="${name}.html">Back to the chapter</a>, or take <a href="${name}.ipynb" download>the notebook</a>
and run it in Jupyter.</p>
${listings}
</main></div>
${colophon}`;
  return shell({
    title: `Cells of ${title} · Rollbook`,
    description: `The code of ${title}`,
    body,
  });
}

/** The first page: what the course is for, its chapters and the cautions. */
export function contentsPage(chapters: readonly Chapter[], welcome: string): string {
  const entries = chapters
    .map(
      ({ name, number, title, idea }) =>
        `<li><a href="${name}.html"><span class="number">${number}</span>` +
        `<span class="title">${escapeHtml(title)}</span></a>${render(idea)}</li>`,
    )
    .join("\n");
  const body = `${masthead("A teaching workbook")}
<div class="sheet contents"><main id="main">
${render(welcome)}
<h2 id="chapters">Chapters</h2>
<ol class="chapters">
${entries}
</ol></main></div>
${colophon}`;
  return shell({
    title: "Rollbook: how roll stiffness changes a car's handling",
    description: "A teaching workbook about how roll stiffness changes a car's handling",
    body,
  });
}
