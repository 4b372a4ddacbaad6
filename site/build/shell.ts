import { demoCar } from "@rollbook/lib";
import { escapeHtml } from "../cells/escape.js";
import { type PlaceName, placeNames, shortcutsFor } from "../say/places.js";

interface Shell {
  readonly title: string;
  readonly description: string;
  /** File name without its ending. */
  readonly name: string;
  readonly main: string;
  /** Beside the text: a list of its sections, say. */
  readonly aside?: string;
  /** Whether the page's figures follow the reader's car. */
  readonly followsCar?: boolean;
  readonly scripts?: readonly string[];
  readonly styles?: readonly string[];
  /** Hash of the one script that a frame inside the page may hold in itself. */
  readonly frameScript?: string;
}

const icon = `data:image/svg+xml,${encodeURIComponent(
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><path d="M3 24h26M6 24l2-9 16-5 2 14" fill="none" stroke="#0b6b8a" stroke-width="3"/></svg>',
)}`;

interface Allowed {
  readonly scripts: string;
  readonly workers: string;
  readonly trusted: string;
}

/** Scripts and styles from this site alone; style attributes are KaTeX's. */
const policyWith = ({ scripts, workers, trusted }: Allowed): string =>
  [
    "default-src 'none'",
    `script-src ${scripts}`,
    "style-src 'self'",
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' data:",
    "font-src data:",
    "connect-src 'self'",
    `worker-src ${workers}`,
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "require-trusted-types-for 'script'",
    `trusted-types ${trusted}`,
  ].join("; ");

const page = { scripts: "'self'", workers: "'self'", trusted: "rollbook rollbook-offline" };

/** The policy of every page but those with a sandbox. */
export const policy = policyWith(page);

/**
 * The policy of a page with a sandbox: a frame made from text, whose own script has this hash, and
 * whose worker is made from text. The frame inherits it.
 */
export const policyWithSandbox = (hash: string): string =>
  policyWith({
    scripts: `'self' '${hash}'`,
    workers: "'self' blob:",
    trusted: `${page.trusted} rollbook-sandbox`,
  });

function linkTo(name: PlaceName, current: string): string {
  const here = name === current ? ' aria-current="page"' : "";
  return `<a href="${name}.html"${here}>${escapeHtml(placeNames[name])}</a>`;
}

/** One line: the name, a few links in sight, and a menu with all pages. */
function masthead(current: string): string {
  const inSight = shortcutsFor("").map((name) => linkTo(name, current));
  const all = (Object.keys(placeNames) as PlaceName[]).map((name) => linkTo(name, current));
  return (
    `<header class="masthead"><a class="wordmark" href="index.html">Rollbook</a>` +
    `<nav aria-label="Rollbook"><span class="shortcuts">${inSight.join("")}</span>` +
    `<details class="menu"><summary>Menu</summary><div class="menu-pages">${all.join("")}</div></details>` +
    "</nav></header>"
  );
}

export const whose = `<p class="whose" id="whose">Figures for ${escapeHtml(demoCar.name)}, the workbook’s own car.</p>`;

export const colophon = `<footer class="colophon"><p>Rollbook explains; it does not instruct anyone to
work on or drive a car. The maker’s manual, the class rules, local codes and licensed people come first.</p></footer>`;

const notices = `<p><a href="LICENSE">Licence</a>, and <a href="NOTICES.txt">notices of what others wrote</a></p></footer>`;

/** A whole page around its main part. */
export function shell(page: Shell): string {
  const { title, description, name, main, aside = "", followsCar = false } = page;
  const { scripts = [], styles = [], frameScript } = page;
  const links = ["course.css", ...styles].map((href) => `<link rel="stylesheet" href="${href}">`);
  const loads = scripts.map((source) => `<script defer src="${source}"></script>`);
  return `<!doctype html>
<html lang="en" data-page="${name}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${frameScript ? policyWithSandbox(frameScript) : policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${escapeHtml(title)}</title>
<meta name="description" content="${escapeHtml(description)}">
<link rel="icon" href="${icon}">
<link rel="apple-touch-icon" href="icon-180.png">
${[...links, ...loads].join("\n")}
<script defer fetchpriority="low" src="offline.js"></script>
</head>
<body>
<a class="skip" href="#main">Skip to the text</a>
${masthead(name)}
<div class="sheet${aside ? " with-aside" : ""}">
${aside}
<main id="main">
${followsCar ? whose : ""}
${main}
</main>
</div>
${colophon.replace("</footer>", notices)}
</body>
</html>
`;
}
