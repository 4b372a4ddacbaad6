import { element } from "@rollbook/page";
import { today } from "../record/given.js";
import { dueOn } from "../record/review.js";
import { words } from "../words.js";
import { answers } from "./answers.js";
import { checkPart } from "./check.js";
import { classPart } from "./class.js";
import { filePart } from "./file.js";
import { onePart } from "./one.js";
import type { Part, PartName } from "./part.js";
import { reviewPart } from "./review.js";

const parts: readonly Part[] = [
  checkPart("before"),
  onePart,
  reviewPart,
  checkPart("after"),
  classPart,
  filePart,
];

/** The part that helps most now: what is due, else the first check, else a single question. */
function usualPart(): PartName {
  const given = answers();
  if (dueOn(today(), given).length > 0) return "review";
  return given.length === 0 ? "before" : "one";
}

/** Opens the part that the address names. */
function follow(links: ReadonlyMap<PartName, HTMLElement>): void {
  const [name, query] = location.hash.slice(1).split(/\?(.*)/s);
  const wanted = parts.find((part) => part.name === name)?.name ?? usualPart();
  for (const { name: own, section, open } of parts) {
    section.hidden = own !== wanted;
    if (own === wanted) {
      links.get(own)?.setAttribute("aria-current", "true");
      open(new URLSearchParams(query));
    } else links.get(own)?.removeAttribute("aria-current");
  }
}

/** Builds the page of questions. */
export function openPage(): void {
  const links = new Map(
    parts.map(({ name }) => [name, element("a", { href: `#${name}` }, words.part[name])]),
  );
  document
    .getElementById("main")
    ?.append(
      element("nav", { class: "parts", "aria-label": words.parts }, ...links.values()),
      ...parts.map(({ section }) => section),
    );
  addEventListener("hashchange", () => follow(links));
  follow(links);
}
