/** The prefix that keeps a chapter's ids apart from those of the other chapters in the file. */
export const prefixOf = (number: string): string => `c${number}-`;

/** Where links of a chapter lead inside the file. */
export interface Room {
  /** Number of each chapter in the file, by its name. */
  readonly chapters: ReadonlyMap<string, string>;
  readonly terms: ReadonlySet<string>;
  /** Name of each chapter of the course, by its number. */
  readonly course: ReadonlyMap<string, string>;
  /** Address of the live course, with a slash at its end; empty where none was given. */
  readonly url: string;
}

function addressIn(room: Room, own: string, href: string): string | undefined {
  const [file = "", anchor = ""] = href.split(/#(.*)/s);
  if (file === "") return `#${prefixOf(own)}${anchor}`;
  if (file === "words.html" && room.terms.has(anchor)) return `#word-${anchor}`;
  const number = room.chapters.get(file.replace(/\.html$/, ""));
  if (number) return anchor ? `#${prefixOf(number)}${anchor}` : `#chapter-${number}`;
  if (/^https?:/.test(href)) return href;
  return room.url && /^[\w.-]+\.html$/.test(file) ? `${room.url}${href}` : undefined;
}

/**
 * A chapter's HTML for a file that holds several: ids under the chapter's prefix, links inside the
 * file, others at the course's address; where there is none, only their words.
 */
export function ownIds(html: string, own: string, room: Room): string {
  return html
    .replace(/<a class="code".*?<\/a>/g, "")
    .replace(/(<[^>]*?\sid=")([^"]+)"/g, `$1${prefixOf(own)}$2"`)
    .replace(/(\sdata-explained=")/g, `$1${prefixOf(own)}`)
    .replace(/<a ([^>]*?)href="([^"]*)"([^>]*)>(.*?)<\/a>/gs, (_all, before, href, after, text) => {
      const address = addressIn(room, own, href);
      return address ? `<a ${before}href="${address}"${after}>${text}</a>` : text;
    });
}
