import { movedTo } from "../../store/moved.js";
import { pageName } from "../../store/per-place.js";
import { chapterAddress } from "./chapter-address.js";

/** Follows a place that went to another chapter, its sliders as the address sets them. */
function follow(): void {
  const id = location.hash.slice(1).replace(/\?.*$/s, "");
  const page = movedTo(id, pageName());
  const address = page && chapterAddress(`${page}.html${location.hash}`);
  if (address) location.replace(address);
}

/** Lets links to places that went to another chapter lead there. */
export function followMoved(): void {
  addEventListener("hashchange", follow);
  follow();
}
