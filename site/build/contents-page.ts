import { escapeHtml } from "../cells/escape.js";
import { still } from "../cells/node/still.js";
import { livingCar } from "../pages/front/living.js";
import { chapterWords } from "../say/chapter.js";
import { words } from "../say/front.js";
import { type Role, roles } from "../say/places.js";
import type { Chapter } from "./chapter.js";
import { minutesOfChapter } from "./depth.js";
import { kept } from "./kept.js";
import { render } from "./markdown.js";
import { shell } from "./shell.js";
import { workOf } from "./work.js";

/** A chapter as a step of the path: its idea, its minutes, and room for what was done. */
function step(chapter: Chapter): string {
  const { name, number, title, idea } = chapter;
  const { core, all } = minutesOfChapter(chapter);
  return (
    `<li ${workOf(chapter)}><a href="${name}.html"><span class="number">${number}</span>` +
    `<span class="title">${escapeHtml(title)}</span></a>${render(idea)}` +
    `<p class="took">${chapterWords.took(core, all)}</p></li>`
  );
}

/** A way in for one kind of reader; `text` is markdown. */
const door = (role: Exclude<Role, "">, text: string): string =>
  `<li class="door" data-role="${role}">${render(text)}</li>`;

/** The first page: one question and the car that answers it, the ideas as a path, three doors, the cautions. */
export function contentsPage(chapters: readonly Chapter[], welcome: string): string {
  const blocks = welcome.split("\n\n");
  const ways = blocks.filter((block) => block.startsWith("- "));
  const first = blocks.findIndex((block) => block.startsWith("- "));
  const doors = roles.map((role, i) => door(role, (ways[i] ?? "").slice(2)));
  const main = `${render(blocks.slice(0, first).join("\n\n"))}
<p class="ask" id="first-question">${words.question}</p>
${kept("first car", "", () => still(livingCar()))}
<p class="due" id="due" hidden></p>
<h2 id="chapters">${words.path}</h2>
<ol class="chapters path" start="0">
${chapters.map(step).join("\n")}
</ol>
<h2 id="doors">${words.doors}</h2>
<ul class="doors">
${doors.join("\n")}
</ul>
${render(blocks.slice(first + ways.length).join("\n\n"))}`;
  return shell({
    title: "Rollbook: how roll stiffness changes a car’s handling",
    description: "A teaching workbook about how roll stiffness changes a car’s handling",
    name: "index",
    main,
    scripts: ["course.js", "front.js"],
  });
}
