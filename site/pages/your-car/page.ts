import type { SitePage } from "../../build/site-pages.js";
import { escapeHtml } from "../../cells/escape.js";
import { fields } from "../../say/your-car/fields.js";
import { pageWords as words } from "../../say/your-car/page.js";
import { partWords, sectionWords } from "../../say/your-car/sections.js";
import { shownRangeOf } from "./model/number.js";
import { placesOf, shapeAt } from "./model/path.js";
import { type Item, type Section, sections } from "./sections.js";

/** The list of what to measure, for the way to the car and for readers without JavaScript. */
function guide(): string {
  return `<h2 id="measure">${words.measure}</h2>\n${sections.map(sectionGuide).join("\n")}`;
}

function sectionGuide({ id, items }: Section): string {
  const { title, opening = "" } = sectionWords[id] ?? { title: id };
  const told = items.map(itemGuide).join("");
  const list = told ? `<dl class="guide">${told}</dl>` : "";
  return `<h3>${escapeHtml(title)}</h3><p>${escapeHtml(opening)}</p>${list}`;
}

function itemGuide(item: Item): string {
  if ("row" in item) return entry(item.row);
  if ("list" in item) return entry(item.list);
  if ("reach" in item) return "";
  const named = partWords[item.part] ?? item.part;
  const alike = /^(rear|passenger|fuel|ballast)/.test(item.part); // as what was told before them
  const told = alike ? item.items.slice(0, 1) : item.items;
  return `<dt class="part">${escapeHtml(named)}</dt>${told.map(itemGuide).join("")}`;
}

function entry(key: string): string {
  const [path = key] = placesOf(key);
  const general = key.replace(/\b(front|rear)\b/, "{end}");
  const { label, help = "" } = fields[key] ?? fields[general] ?? { label: key };
  const shape = shapeAt(path);
  const range = shape?.type === "number" ? shownRangeOf(shape, "metric") : "";
  const optional = shape?.optional ? ` (${words.leftOut})` : "";
  return (
    `<dt>${escapeHtml(label)} <span class="range">${escapeHtml(range + optional)}</span></dt>` +
    `<dd>${escapeHtml(help)}</dd>`
  );
}

/** The page where readers enter and keep their cars. */
export const yourCarPage: SitePage = {
  name: "your-car",
  title: words.title,
  description: words.description,
  get main() {
    return `<h1>${words.title}</h1>
<p>${escapeHtml(words.lead)}</p>
<p>${escapeHtml(words.onDevice)} <a href="measure.html">${escapeHtml(words.measureLink)}</a></p>
<blockquote class="caution"><p><strong>${words.cautionHead}</strong> ${escapeHtml(words.caution)}</p></blockquote>
<div id="your-car">
<noscript><p>${escapeHtml(words.withoutScript)}</p></noscript>
<div id="cars-and-form"></div>
<div id="guide">
${guide()}
</div>
</div>`;
  },
};
