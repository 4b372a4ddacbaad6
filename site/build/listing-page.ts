import type { Api } from "../api/kept.js";
import { escapeHtml } from "../cells/escape.js";
import { type Chapter, codePage } from "./chapter.js";
import { join, namesFromLib } from "./join.js";
import { codeCells, type Notebook } from "./notebook.js";
import { shell } from "./shell.js";

/** What cells call of the library, each name a link to its own page. */
export function callsHtml(
  { source }: { source: string },
  { addressOf }: Pick<Api, "addressOf">,
): string {
  const links = namesFromLib(source).flatMap((name) => {
    const address = addressOf(name);
    return address ? [`<a href="${address}">${name}</a>`] : [];
  });
  if (links.length === 0) return "";
  return `<p>They call <a href="api/index.html">the library</a>’s ${links.join(", ")}.</p>`;
}

/**
 * The page that lists a chapter's code cells, for those who want to see how a number comes about.
 *
 * @param sandboxHash - of the script in the frame where edited cells run
 */
export function listingPage(
  notebook: Notebook,
  { title }: Chapter,
  sandboxHash: string,
  api?: Api,
): string {
  const listings = codeCells(notebook)
    .map(
      ({ id, source }) =>
        `<h2 id="${escapeHtml(id)}">${escapeHtml(id)}</h2>` +
        `<pre tabindex="0"><code>${escapeHtml(source)}</code></pre>`,
    )
    .join("\n");
  const { name } = notebook;
  const main = `<h1>The cells of “${escapeHtml(title)}”</h1>
<p>The chapter’s numbers and figures come from these cells, in this order, and from nothing else.
<a href="${name}.html">Back to the chapter</a>, or take <a href="${name}.ipynb" download>the notebook</a>
and run it in Jupyter, with the packages @rollbook/lib and @rollbook/cells installed beside it.</p>
${api ? callsHtml(join(notebook), api) : ""}
<div class="listing">${listings}</div>`;
  return shell({
    title: `Cells of ${title} · Rollbook`,
    description: `The code of ${title}`,
    name: codePage(notebook).replace(/\.html$/, ""),
    main,
    scripts: ["course.js", "listing.js"],
    frameScript: sandboxHash,
  });
}
