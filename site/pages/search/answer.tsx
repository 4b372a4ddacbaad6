import { words } from "../../say/search.js";
import { excerpt } from "./excerpt.js";
import type { Found } from "./find.js";

/** One answer as a link with some words around what was found. */
export function Answer({ id, kind, title, where, text, also, matched }: Found) {
  return (
    <li>
      <a href={id}>{title}</a>
      <span class="where">{[words.kinds[kind], where].filter(Boolean).join(", ")}</span>
      <p>{excerpt(text, matched).map(({ text, hit }) => (hit ? <mark>{text}</mark> : text))}</p>
      {also && (
        <p class="also">
          {words.also}: {also}
        </p>
      )}
    </li>
  );
}
