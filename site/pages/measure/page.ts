import { demoCar, sharpeningsFor } from "@rollbook/lib";
import { titleOf } from "../../bands/next-told.js";
import type { SitePage } from "../../build/site-pages.js";
import { escapeHtml } from "../../cells/escape.js";
import { firstWords } from "../../say/measure/first-car.js";
import { learnWords } from "../../say/measure/learn.js";
import { cautions, measurementWords } from "../../say/measure/measurements.js";
import { nextWords } from "../../say/measure/next.js";
import { nextAnchor } from "../../say/measure/titles.js";
import { fieldWords, words } from "../../say/measure/words.js";
import { readerWith } from "../../say/reader.js";
import { unitOf } from "../../say/units.js";
import { drawingOf } from "./drawings.js";
import { type DrawnId, type Field, type Spec, specs, withoutForm } from "./model/spec.js";
import { wayOf } from "./next/way.js";

const caution = (text: string) =>
  `<blockquote class="caution"><p><strong>${words.caution}</strong> ${escapeHtml(text)}</p></blockquote>`;

const named = ({ key, quantity }: Field): string => {
  const unit = unitOf(quantity);
  return escapeHtml(`${fieldWords[key] ?? key}${unit === "" ? "" : `, ${unit}`}`);
};

/** Boxes to write in on paper, where no script puts a form. */
function paper({ fields, columns }: Spec): string {
  const blank = "<td></td>".repeat(3);
  const single = fields.map((field) => `<tr><th scope="row">${named(field)}</th>${blank}</tr>`);
  const heads = columns.map((column) => `<th scope="col">${named(column)}</th>`);
  const lines = `<tr>${"<td></td>".repeat(columns.length)}</tr>`.repeat(columns.length && 5);
  return (
    (single.length > 0 ? `<table class="paper">${single.join("")}</table>` : "") +
    (heads.length > 0 ? `<table class="paper"><tr>${heads.join("")}</tr>${lines}</table>` : "")
  );
}

/** How something is measured, above the place where its numbers go. */
function section(id: DrawnId, place: string): string {
  const said = measurementWords[id];
  if (said === undefined) return "";
  const steps = said.steps.map((step) => `<li>${escapeHtml(step)}</li>`).join("");
  return `<section class="measurement" id="${id}" aria-labelledby="${id}-title">
<h2 id="${id}-title">${escapeHtml(said.title)}</h2>
<p class="gives">${escapeHtml(said.gives)}</p>
<div class="how">
<figure>${drawingOf(id)}<figcaption>${words.toolsHead} ${escapeHtml(said.tools)}; ${escapeHtml(said.minutes)}.</figcaption></figure>
<ol>${steps}</ol>
</div>
${said.cautions.map((key) => caution(cautions[key])).join("\n")}
${place}
</section>`;
}

const withForm = (spec: Spec) =>
  section(spec.id, `<div class="form" id="form-${spec.id}">${paper(spec)}</div>`);

const typedIn = `<p><a href="your-car.html">${words.typedIn}</a></p>`;

const anybody = readerWith("metric");

/** Everything that can be measured, each with the place in the list that other pages lead to. */
const measurable = () =>
  sharpeningsFor(demoCar)
    .map((one) => {
      const { at, how } = wayOf(one.id, anybody);
      const title = escapeHtml(titleOf(one, anybody));
      return `<li id="${nextAnchor(one.id, one.end)}"><a href="${at}">${title}</a> <small>${escapeHtml(how)}</small></li>`;
    })
    .join("");

/** A section whose form a script makes, with what it asks for as a list until then. */
function part(id: string, title: string, lead: string, list = ""): string {
  return `<section class="measurement" id="${id}" aria-labelledby="${id}-title">
<h2 id="${id}-title">${escapeHtml(title)}</h2>
<p class="gives">${escapeHtml(lead)}</p>
<div class="form" id="form-${id}">${list && `<ul>${list}</ul>`}</div>
</section>`;
}

const asked = () =>
  Object.values(firstWords.fields)
    .map((one) => `<li>${escapeHtml(one)}</li>`)
    .join("");

const contents = () =>
  [
    ["first-car", firstWords.title],
    ...[...specs.map(({ id }) => id), ...withoutForm].map((id) => [
      id,
      measurementWords[id]?.title ?? id,
    ]),
    ["learn", learnWords.title],
    ["next", nextWords.list],
  ]
    .map(([id, title = ""]) => `<li><a href="#${id}">${escapeHtml(title)}</a></li>`)
    .join("");

/** The page on which readings become numbers of the car. */
export const measurePage: SitePage = {
  name: "measure",
  title: words.title,
  description: words.description,
  get main() {
    return `<h1>${words.title}</h1>
<p>${escapeHtml(words.lead)}</p>
<p>${escapeHtml(words.onDevice)} <a href="your-car.html">${words.backToCar}</a> · <a href="ride.html">${words.rideLink}</a></p>
${caution(words.cautionFirst)}
<div id="measure">
<noscript><p>${escapeHtml(words.withoutScript)}</p></noscript>
<div id="measuring-for"></div>
<nav aria-label="${words.contents}"><ul class="contents">${contents()}</ul></nav>
${part("first-car", firstWords.title, firstWords.lead, asked())}
${specs.map(withForm).join("\n")}
${withoutForm.map((id) => section(id, typedIn)).join("\n")}
<div id="together"></div>
${part("learn", learnWords.title, learnWords.lead)}
${part("next", nextWords.title, nextWords.lead, measurable())}
</div>`;
  },
};
