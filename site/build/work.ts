import type { Chapter } from "./chapter.js";

const idsIn = (html: string, pattern: RegExp): string =>
  [...html.matchAll(pattern)].map(([, id]) => id).join(" ");

/** What a reader can do in a chapter, as attributes that a page's script reads. */
export function workOf({ name, html }: Chapter): string {
  const predictions = idsIn(html, /<section class="predict" id="([^"]+)"/g);
  const looks = idsIn(html, /data-explained="([^"]+)"/g);
  const exercises = idsIn(html, /<section class="exercise" id="([^"]+)"/g);
  return (
    `data-chapter="${name}" data-predictions="${predictions}" ` +
    `data-looks="${looks}" data-exercises="${exercises}"`
  );
}
