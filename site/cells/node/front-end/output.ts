import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { escapeHtml } from "../../escape.js";
import { frontEndWords } from "../../front-end-words.js";
import { words } from "../../words.js";
import { document as kernelDocument } from "../document.js";
import { cellsFor, type Piece } from "./pieces.js";
import { presentRun } from "./session.js";

const document = kernelDocument as unknown as Document;
const kernel = `${process.pid.toString(36)}${Date.now().toString(36)}`;

/** Runs whose cells an output carries already. */
const carried = new Set<string>();

/** Dark on light by itself, whatever the theme of the front end is. */
const paper = "background:#fff;color:#1d2328";

/** As an address, with what may stand there unescaped left as it is. */
const addressOf = (svg: string): string =>
  `data:image/svg+xml,${encodeURIComponent(svg).replace(/%(20|2C|2F|3A|3B|3D)/g, decodeURIComponent)}`;

function asImage(svg: Element): Element {
  const image = document.createElement("img");
  const label = svg.getAttribute("aria-label") ?? "";
  svg.setAttribute("style", paper);
  const source = addressOf(svg.outerHTML);
  const fits = "max-width:100%;height:auto;border-radius:4px";
  for (const [name, value] of Object.entries({ src: source, alt: label, style: fits }))
    image.setAttribute(name, value);
  return image;
}

/** Front ends number lists in their own way, so the letters become part of a text. */
function lettered(list: Element): Element {
  const text = document.createElement("p");
  [...list.children].forEach((item, i) => {
    if (i > 0) text.append(document.createElement("br"));
    text.append(`${words.letters[i]}. `, ...item.childNodes);
  });
  return text;
}

/** A result in bold type: a front end has styles of its own for the element. */
function bold(result: Element): Element {
  const text = document.createElement("b");
  text.append(...result.childNodes);
  return text;
}

/**
 * The still as any front end shows it alike, also one that lets neither styles nor drawings through:
 * pictures as images, lists as texts, and no class that its own styles know.
 */
function stillFor(html: string): string {
  const place = document.createElement("div");
  place.innerHTML = html;
  for (const svg of place.querySelectorAll("svg.panel")) svg.replaceWith(asImage(svg));
  for (const list of place.querySelectorAll('ol[type="A"]')) list.replaceWith(lettered(list));
  for (const result of place.querySelectorAll("output")) result.replaceWith(bold(result));
  for (const label of place.querySelectorAll(".label")) label.removeAttribute("class");
  return place.innerHTML;
}

/** The name under which a notebook's predictions are kept, where the front end tells it. */
const notebookName = (): string =>
  /\.ipynb$/.test(process.env.JPY_SESSION_NAME ?? "")
    ? basename(process.env.JPY_SESSION_NAME ?? "", ".ipynb")
    : "";

const script = (text: string): string => `<script>${text}</script>`;

/** What tells a front end of a run: its cells go along once. */
function toldOf(key: string, pieces: readonly Piece[]): string {
  const notebook = JSON.stringify(notebookName());
  if (carried.has(key)) return `{ run: "${key}", notebook: ${notebook} }`;
  carried.add(key);
  const { cells, isPlain } = cellsFor(pieces);
  return `{ run: "${key}", notebook: ${notebook}, kernel: "${isPlain ? kernel : key}", cells: ${cells} }`;
}

/** What a cell left, with the cells that made it so that it can live. */
export function liveOutput(html: string): string {
  const { run, pieces } = presentRun();
  const key = `${kernel}-${run}`;
  return (
    `<div class="rollbook" data-rollbook="${key}" data-lm-suppress-shortcuts="true">${stillFor(html)}` +
    `<p data-still><small>${escapeHtml(frontEndWords.stillHere)}</small></p></div>` +
    script(`(globalThis.rollbookRuns ??= []).push(${toldOf(key, pieces)});`)
  );
}

/** What does not move: the still alone. */
export const stillOutput = (html: string): string =>
  `<div class="rollbook">${stillFor(html)}</div>`;

/** The one output of a notebook that carries what all its living outputs run on. */
export function runtimeOutput(): string {
  const runtime = readFileSync(new URL("../../../front-end.js", import.meta.url), "utf8");
  return (
    `<p class="rollbook" data-still="all">${escapeHtml(frontEndWords.allStill)}</p>` +
    script(runtime.replaceAll("</s", "<\\/s"))
  );
}
