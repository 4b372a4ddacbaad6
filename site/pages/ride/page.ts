import type { SitePage } from "../../build/site-pages.js";
import { escapeHtml } from "../../cells/escape.js";
import { words } from "../../say/measure/ride.js";

const list = (tag: "ol" | "ul", texts: readonly string[]) =>
  `<${tag}>${texts.map((text) => `<li>${escapeHtml(text)}</li>`).join("")}</${tag}>`;

/** The page on which a phone records a ride. */
export const ridePage: SitePage = {
  name: "ride",
  title: words.title,
  description: words.description,
  main: `<h1>${words.title}</h1>
<p>${escapeHtml(words.lead)}</p>
<p>${escapeHtml(words.onDevice)} <a href="measure.html">${words.back}</a> · <a href="workshop.html">${words.workshop}</a></p>
<blockquote class="caution"><p><strong>${words.caution}</strong></p>${list("ul", words.cautions)}</blockquote>
<div id="ride">
<div id="ride-notice"></div>
<noscript><p>${escapeHtml(words.withoutScript)}</p></noscript>
<div id="ride-recorder"></div>
<h2>${words.stepsHead}</h2>
${list("ol", words.steps)}
<div id="ride-list"></div>
<section id="ride-result"></section>
<div id="ride-take-in-form"></div>
</div>`,
};
