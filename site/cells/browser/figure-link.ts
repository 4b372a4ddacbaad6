import { linkToFigure, wantedFrom } from "../figure-link.js";
import { reader, spell } from "../reader.js";
import type { FigureSpec, Inputs, ValuesOf } from "../spec.js";
import { words } from "../words.js";
import { addressCopied } from "./copy.js";
import { element, hide, isInPage } from "./element.js";
import { canShare, pageFile, shareAddress } from "./share-link.js";

const copy = async (address: string): Promise<string> =>
  (await addressCopied(address)) ? words.linkCopied : words.linkInBar;

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
    const address = location.href.replace(/#.*|$/s, end);
    told.replaceChildren(await copy(address), ...(canShare() ? [" ", code] : []));
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
