import { demoCar, misconceptions } from "@rollbook/lib";
import { kept } from "../../build/kept.js";
import type { SitePage } from "../../build/site-pages.js";
import { workOf } from "../../build/work.js";
import { escapeHtml } from "../../cells/escape.js";
import { askAbout } from "../../say/questions/asked.js";
import { words } from "../../say/questions/words.js";
import { format } from "../../say/units.js";

/** The questions about the workbook's own car, their answers folded, for those without JavaScript. */
function stillQuestion(asked: ReturnType<typeof askAbout>): string {
  const items = asked.choices.map(({ text }) => `<li>${escapeHtml(text)}</li>`).join("");
  const reasons = asked.choices
    .map(({ because }, index) => {
      const verdict = index === asked.answer ? words.right : words.notSo;
      return `<li><b>${verdict}</b> ${escapeHtml(because)}</li>`;
    })
    .join("");
  return (
    `<section class="question"><p class="ask">${escapeHtml(asked.ask)}</p><ol type="A">${items}</ol>` +
    `<details><summary>${words.theAnswer}</summary><ol type="A">${reasons}</ol></details></section>`
  );
}

const still = (): string =>
  misconceptions
    .map(({ idea }) => stillQuestion(askAbout(demoCar, idea, "first", format)))
    .join("\n");

export const questionsPage: SitePage = {
  name: "questions",
  title: words.title,
  description: words.description,
  main: (chapters) => `<h1>${words.title}</h1>
<p>${words.lead}</p>
<ul hidden>${chapters.map((chapter) => `<li ${workOf(chapter)}></li>`).join("")}</ul>
<noscript>
<p>${words.withoutScript}</p>
${kept("still questions", "", still)}
</noscript>`,
};
