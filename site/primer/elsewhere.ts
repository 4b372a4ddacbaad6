import { codeOf } from "../hand-over/code.js";
import { prefixOf, type Room } from "./own-ids.js";
import { words } from "./words.js";

/** Parts whose text stays as it is: what a script draws anew, links, titles, code and formulas. */
const kept = /^(?:a|button|code|figure|h[1-6]|math|pre|script|section|style|svg)$/;

const mention = /\b(chapter) (\d{1,2})\b/gi;

/**
 * A chapter's HTML in which each mention of another chapter leads there: inside the file, or at the
 * course's address; where there is none, the first mention of it says that it is not in the file.
 */
export function leadingOn(html: string, own: string, room: Room): string {
  const told = new Set<string>();
  const depths = new Map<string, number>();
  let cited = false; // a book's chapter, after its title
  return html
    .split(/(<[^>]+>)/)
    .map((piece) => {
      if (piece.startsWith("<")) {
        countDepth(depths, piece);
        cited = piece === "</em>" || (cited && !/^<\/?(?:p|li)\b/.test(piece));
        return piece;
      }
      const inside = [...depths.values()].some((depth) => depth > 0);
      const text =
        inside || (cited && /^,/.test(piece)) ? piece : mentionsIn(piece, own, room, told);
      cited = false;
      return text;
    })
    .join("");
}

function countDepth(depths: Map<string, number>, tag: string): void {
  const [, closing, name = ""] = /^<(\/?)(\w+)/.exec(tag) ?? [];
  if (!kept.test(name) || tag.endsWith("/>")) return;
  depths.set(name, (depths.get(name) ?? 0) + (closing ? -1 : 1));
}

function mentionsIn(text: string, own: string, room: Room, told: Set<string>): string {
  return text.replace(mention, (said, _word, digits: string) => {
    const number = digits.padStart(2, "0");
    const name = room.course.get(number);
    if (name === undefined || number === own) return said;
    if (room.chapters.has(name)) return `<a href="#chapter-${number}">${said}</a>`;
    if (room.url) return `<a href="${room.url}${name}.html">${said}</a>`;
    if (told.has(number)) return said;
    told.add(number);
    return `${said} <span class="elsewhere">${words.elsewhere}</span>`;
  });
}

const prediction = /<section class="predict" id="([^"]+)">[\s\S]*?<\/section>/g;

const exercises = /<h2 id="(c\d+-exercises)".*?<\/h2>/s;

/** A chapter's HTML that says, at the head of its exercises, where in the course their answers open. */
export const answersLive = (html: string, name: string, url: string): string =>
  url === ""
    ? html
    : html.replace(exercises, (heading) => {
        const address = `${url}${name}.html#exercises`;
        return `${heading}<p class="at-course"><a href="${address}">${words.answersAtCourse}</a></p>`;
      });

/** A chapter's HTML with, under each prediction, a link and a code picture that open it in the course. */
export function predictionsLive(html: string, name: string, own: string, url: string): string {
  if (url === "") return html;
  return html.replace(prediction, (section, id: string) => {
    const address = `${url}${name}.html#${id.slice(prefixOf(own).length)}`;
    const { path, side } = codeOf(address);
    const picture =
      `<svg viewBox="0 0 ${side} ${side}" role="img" aria-label="${words.code}" shape-rendering="crispEdges">` +
      `<rect width="100%" height="100%" fill="#fff"/><path d="${path}" fill="#000"/></svg>`;
    return `${section}<p class="at-course">${picture}<a href="${address}">${words.atCourse}</a></p>`;
  });
}
