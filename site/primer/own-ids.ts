/** The prefix that keeps a chapter's ids apart from those of the other chapters in the file. */
export const prefixOf = (number: string): string => `c${number}-`;

/** Where links of a chapter lead inside the file. */
export interface Room {
  /** Number of each chapter in the file, by its name. */
  readonly chapters: ReadonlyMap<string, string>;
  readonly terms: ReadonlySet<string>;
}

function addressIn(room: Room, own: string, href: string): string | undefined {
  const [file = "", anchor = ""] = href.split(/#(.*)/s);
  if (file === "") return `#${prefixOf(own)}${anchor}`;
  if (file === "words.html") return room.terms.has(anchor) ? `#word-${anchor}` : undefined;
  const number = room.chapters.get(file.replace(/\.html$/, ""));
  if (number) return anchor ? `#${prefixOf(number)}${anchor}` : `#chapter-${number}`;
  return /^https?:/.test(href) ? href : undefined;
}

/**
 * A chapter's HTML for a file that holds several: ids under the chapter's prefix, links inside the
 * file, and of a link that leads to what is not in the file only its words.
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
