import { linkToFigure, wantedFrom } from "../figure-link.js";
import { reader, spell } from "../reader.js";
import type { FigureSpec, Inputs, ValuesOf } from "../spec.js";
import { words } from "../words.js";
import { element, hide, isInPage } from "./element.js";
import { canShare, pageFile, shareAddress } from "./share-link.js";
import { stateCopied } from "./state-link.js";

const said = { copied: words.linkCopied, inBar: words.linkInBar };

/** Copies the link; a chapter in a file of its own leads to the one in the course, where it says where that is. */
function copy(end: string, place: Element): Promise<string> {
  const at = place.closest<HTMLElement>("[data-at]")?.dataset.at;
  return stateCopied(at === undefined ? end : end.replace(/^#c\d+-/, "#"), said, at);
}

/**
 * Lets a figure be linked to with its sliders set: a button that is there once a slider has moved,
 * and links that set them.
 *
 * @param take - sets the sliders
 * @returns tells of values that the figure shows now
 */
export function linkFigure<I extends Inputs>(
  { id, inputs }: Pick<FigureSpec<I>, "id" | "inputs">,
  place: HTMLElement,
  controls: HTMLElement,
  take: (values: Readonly<Record<string, number>>) => void,
): (values: ValuesOf<I>) => void {
  if (!isInPage()) return () => {};
  const button = element("button", { type: "button", class: "link", hidden: true }, words.link);
  const told = element("span", { class: "told", role: "status" });
  const fault = element("p", { class: "fault", role: "alert", hidden: true });
  controls.append(button, told, fault);
  let end: string | undefined;
  button.addEventListener("click", async () => {
    if (!end) return;
    const code = element("a", { href: shareAddress(pageFile() + end) }, words.asCode);
    told.replaceChildren(await copy(end, place), ...(canShare() ? [" ", code] : []));
  });

  function follow(): void {
    const wanted = wantedFrom(location.hash, id, inputs, reader.units);
    if (!wanted) return;
    take(wanted.values);
    fault.textContent = spell(wanted.faults.join(" "));
    fault.hidden = wanted.faults.length === 0;
    requestAnimationFrame(() => place.scrollIntoView());
  }
  addEventListener("hashchange", follow);
  queueMicrotask(follow);

  return (values) => {
    end = linkToFigure(id, inputs, values);
    hide(button, end === undefined);
    told.textContent = "";
    hide(fault, true);
  };
}
