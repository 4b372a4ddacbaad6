import { trustedPolicy } from "./trusted-policy.js";

/**
 * The only ways by which a page makes elements of a text or loads a script. A browser that knows
 * Trusted Types refuses every other, and these hand on what they name and nothing else.
 */
const OWN = /^[\w-]+\.js$/;

function ownFile(file: string): string {
  if (!OWN.test(file)) throw new TypeError(`${file} is not a script of this course`);
  return file;
}

const policy = trustedPolicy("rollbook", {
  createHTML: (html: string) => html,
  createScriptURL: ownFile,
});

/** Fills a place with what the cells' own templates write, which escape every text. */
export function fill(place: Element, inner: string): void {
  place.innerHTML = policy.createHTML(inner);
}

/** A script of the course, by its file. */
export function ownScript(file: string): HTMLScriptElement {
  const script = document.createElement("script");
  script.src = policy.createScriptURL(file);
  return script;
}

/** A worker of the course, by its file. */
export const ownWorker = (file: string): Worker => new Worker(policy.createScriptURL(file));

/** Gives a frame the text of the sandbox. */
export function fillFrame(frame: HTMLIFrameElement, text: string): void {
  frame.srcdoc = policy.createHTML(text);
}
