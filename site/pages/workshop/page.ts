import type { SitePage } from "../../build/site-pages.js";
import { views } from "./route.js";
import { words } from "./words.js";

const parts = views.map((view) => `<dt>${words.views[view]}</dt><dd>${words.about[view]}</dd>`);

export const workshopPage: SitePage = {
  name: "workshop",
  title: words.title,
  description: words.description,
  main: `<h1>${words.title}</h1>
<p>${words.opening}</p>
<div id="workshop"><p>${words.needs}</p>
<p>${words.parts}:</p>
<dl>${parts.join("\n")}</dl></div>`,
};
