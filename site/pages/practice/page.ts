import type { SitePage } from "../../build/site-pages.js";
import { words } from "../../say/practice/words.js";

const steps = words.steps.map((step) => `<li>${step}</li>`);

export const practicePage: SitePage = {
  name: "practice",
  title: words.title,
  description: words.description,
  main: `<h1>${words.title}</h1>
<p>${words.opening}</p>
<div id="practice"><p>${words.needs}</p>
<ol>${steps.join("\n")}</ol>
<p>${words.withoutScript}</p></div>`,
};
