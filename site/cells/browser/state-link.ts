import { courseAddress } from "../../store/course-address.js";
import { words } from "../words.js";
import { addressCopied, copied } from "./copy.js";

/** What is said once a link was copied, and where it stands in the address bar instead. */
interface Said {
  readonly copied: string;
  readonly inBar: string;
}

/** The page as others find it, where this one lies on a disk and the course's address is known. */
function pageInCourse(): string | undefined {
  const told = document.querySelector<HTMLLinkElement>("link[rel=canonical]")?.href;
  if (told !== undefined) return told;
  const folder = courseAddress.now.value.replace(/(\/[\w-]+\.html)?\/?$/, "/");
  return /^https?:/.test(folder) ? folder + location.pathname.split("/").at(-1) : undefined;
}

/**
 * Copies a link to a state of this page and answers what came of it. A page that was opened from a
 * disk links into the course where it knows the address; where it does not, it says so.
 *
 * @param at - the page in the course, where it is another than this one
 */
export async function stateCopied(end: string, said: Said, at?: string): Promise<string> {
  const isOnDisk = location.protocol === "file:";
  const page = at ?? (isOnDisk ? pageInCourse() : undefined);
  if (page !== undefined)
    return (await copied(page + end)) ? words.linkToCourse(page) : words.linkIs(page + end);
  const held = await addressCopied(location.href.replace(/#.*|$/s, end));
  const sentence = held ? said.copied : said.inBar;
  return isOnDisk ? `${sentence} ${words.linkOnDisk}` : sentence;
}
