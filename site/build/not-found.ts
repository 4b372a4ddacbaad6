import { inline } from "../primer/inline.js";

/** Finds the course above an address that leads nowhere, by its manifest, and makes the links lead there. */
const search = `(async () => {
  const parts = location.pathname.split("/").slice(0, -1);
  for (; parts.length > 0; parts.pop()) {
    const root = parts.join("/") + "/";
    const found = await fetch(root + "manifest.webmanifest").then((answer) => answer.json()).catch(() => ({}));
    if (found.short_name !== "Rollbook") continue;
    for (const link of document.querySelectorAll("[data-page]")) link.href = root + link.dataset.page;
    document.getElementById("ways").hidden = false;
    return;
  }
})();`;

const style = `:root{color-scheme:light dark}
body{max-width:36rem;margin:12vh auto;padding:0 1rem;font:1.1rem/1.5 Georgia,serif;background:Canvas;color:CanvasText}
[hidden]{display:none}`;

const ways = [
  ["index.html", "The chapters"],
  ["search.html", "Search"],
] as const;

/**
 * The page for an address that leads nowhere. It holds all that it needs, since a host shows it at
 * any depth: without an address of the course it looks for the course above itself.
 *
 * @param url - of the course, with a slash at its end; empty where it is not known
 */
export function notFoundPage(url: string): string {
  const scripts = url === "" ? [search] : [];
  const held = inline(scripts, style, url === "" ? "'self'" : "'none'");
  const links = ways.map(
    ([page, name]) => `<a data-page="${page}"${url && ` href="${url}${page}"`}>${name}</a>`,
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${held.policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Not here · Rollbook</title>
<meta name="description" content="There is no page at this address.">
${held.style}
</head>
<body>
<main><h1>There is no page at this address</h1>
<p>It may have been mistyped, or belong to an earlier course. Take off its end, piece by piece, to come to the course.</p>
<p id="ways"${url === "" ? " hidden" : ""}>${links.join(" · ")}</p></main>
${held.scripts}
</body>
</html>
`;
}
