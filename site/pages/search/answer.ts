import { element } from "@rollbook/page";
import { excerpt } from "./excerpt.js";
import type { Found } from "./find.js";
import { words } from "./words.js";

/** One answer as a link with some words around what was found. */
export function answer(found: Found): HTMLLIElement {
  const { id, kind, title, where, text, also, matched } = found;
  const place = [words.kinds[kind], where].filter(Boolean).join(", ");
  const pieces = excerpt(text, matched).map(({ text, hit }) =>
    hit ? element("mark", {}, text) : text,
  );
  const other = also ? element("p", { class: "also" }, `${words.also}: ${also}`) : "";
  return element(
    "li",
    {},
    element("a", { href: id }, title),
    element("span", { class: "where" }, place),
    element("p", {}, ...pieces),
    other,
  );
}
