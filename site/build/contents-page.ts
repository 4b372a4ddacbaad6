import { escapeHtml } from "../cells/escape.js";
import { still } from "../cells/node/still.js";
import { livingCar } from "../pages/front/living.js";
import type { Chapter } from "./chapter.js";
import { render } from "./markdown.js";
import { shell } from "./shell.js";

/** The first page: what the course is for, its chapters and the cautions. */
export function contentsPage(chapters: readonly Chapter[], welcome: string): string {
  const entries = chapters
    .map(
      ({ name, number, title, idea }) =>
        `<li><a href="${name}.html"><span class="number">${number}</span>` +
        `<span class="title">${escapeHtml(title)}</span></a>${render(idea)}</li>`,
    )
    .join("\n");
  const [opening = "", rest = ""] = welcome.split(/\n\n(?=- )/s);
  const main = `${render(opening)}
${still(livingCar())}
${render(rest)}
<h2 id="chapters">Chapters</h2>
<ol class="chapters">
${entries}
</ol>`;
  return shell({
    title: "Rollbook: how roll stiffness changes a car’s handling",
    description: "A teaching workbook about how roll stiffness changes a car’s handling",
    name: "index",
    main,
    scripts: ["course.js", "front.js"],
  });
}
