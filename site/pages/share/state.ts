import { longestLink } from "../../hand-over/code.js";
import { courseAt, isOnlyHere, viewIn } from "../../hand-over/course.js";

/** What the reader has typed: a link, and where others find the course. */
export interface Typed {
  readonly link: string;
  readonly address: string;
}

export type Fault = "leadsAway" | "noAddress" | "badAddress" | "tooLong";

/** The link to show as a code, or why there is none. */
export function targetOf(here: URL, { link, address }: Typed): URL | Fault {
  const there = isOnlyHere(here) ? courseAt(address) : here;
  // whether the link was made from this copy or from the public one
  const inside = viewIn(here, link) ?? (there && viewIn(there, link));
  if (inside === undefined) return "leadsAway";
  if (!there) return address ? "badAddress" : "noAddress";
  if (there.href.length + inside.length > longestLink) return "tooLong";
  return new URL(inside, there);
}

/** The link that the end of this page's address asks to share. */
export function linkWanted(here: URL, hash: string): string {
  const wanted = decoded(hash.slice(1)) || "index.html";
  return viewIn(here, wanted) === undefined ? wanted : new URL(wanted, here).href;
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return "";
  }
}
