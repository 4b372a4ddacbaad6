import type { Chapter } from "../../build/chapter.js";
import { glossary, type Term } from "../../build/glossary.js";
import { plain, renderInline } from "../../build/markdown.js";
import { addressOf, mentionsOf, type Place, placesOf } from "../../build/mentions.js";
import type { SitePage } from "../../build/site-pages.js";
import { escapeHtml } from "../../cells/escape.js";
import { words } from "./words.js";

const firstLetter = ({ name }: Term): string => name.charAt(0).toUpperCase();

const note = (label: string, html: string): string =>
  html && `<dd class="note"><span>${label}:</span> ${html}</dd>`;

function linkTo(place: Place): string {
  const { chapter, section } = place;
  const at = section.title === chapter.title ? "" : `, ${escapeHtml(section.title)}`;
  const text = `${chapter.number} ${escapeHtml(plain(chapter.title))}${at}`;
  return `<a href="${addressOf(place)}">${text}</a>`;
}

function entry(term: Term, places: readonly Place[]): string {
  const { explained, used } = mentionsOf(term, places);
  const where = explained ? linkTo(explained) : used.map(linkTo).join("; ");
  return (
    `<dt id="${term.id}">${escapeHtml(term.name)}</dt><dd>${renderInline(term.meaning)}</dd>` +
    note(words.also, escapeHtml(term.also.join(", "))) +
    note(words.symbol, renderInline(term.symbol ?? "")) +
    note(words.standard, escapeHtml(term.standard ?? "")) +
    note(explained ? words.seeAt : words.usedIn, where)
  );
}

function main(chapters: readonly Chapter[]): string {
  const terms = glossary();
  const places = placesOf(chapters);
  const letters = [...new Set(terms.map(firstLetter))];
  const jump = letters.map((letter) => `<a href="#letter-${letter}">${letter}</a>`).join(" ");
  const groups = letters.map((letter) => {
    const own = terms.filter((term) => firstLetter(term) === letter);
    const entries = own.map((term) => entry(term, places)).join("\n");
    return `<h2 id="letter-${letter}">${letter}</h2>\n<dl>${entries}</dl>`;
  });
  return `<h1>${words.title}</h1>
<p>${words.opening}</p>
<nav class="letters" aria-label="${words.letters}">${jump}</nav>
<div class="words">${groups.join("\n")}</div>`;
}

export const wordsPage: SitePage = {
  name: "words",
  title: words.title,
  description: words.description,
  main,
};
