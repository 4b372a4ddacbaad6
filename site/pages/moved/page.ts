import { escapeHtml } from "../../cells/escape.js";
import { yourCarPage } from "../your-car/page.js";

/** Former addresses of pages, each with the page that is meant now. */
export const moved = [{ from: "garage", to: yourCarPage }] as const;

/**
 * What stands under a former address: it leads on, with a script that keeps what follows the address,
 * without one to the page alone.
 *
 * @param policy - of every page
 */
export function movedHtml({ name, title }: { name: string; title: string }, policy: string) {
  const shown = escapeHtml(title);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${shown} · Rollbook</title>
<link rel="stylesheet" href="course.css">
<script defer src="moved.js"></script>
<noscript><meta http-equiv="refresh" content="0; url=${name}.html"></noscript>
</head>
<body>
<main class="sheet"><h1><a id="on" href="${name}.html">${shown}</a></h1></main>
</body>
</html>
`;
}
