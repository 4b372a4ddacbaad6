/** Light or dark as the front end is, whatever the system says: told by what lies behind an output. */

const parts = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);

/** The colour that shows behind a place; white where nothing is painted. */
function behind(place: Element): readonly number[] {
  for (let at: Element | null = place.parentElement; at; at = at.parentElement) {
    const [red = 0, green = 0, blue = 0, alpha = 1] = parts(getComputedStyle(at).backgroundColor);
    if (alpha > 0.5) return [red, green, blue];
  }
  return [255, 255, 255];
}

/** How light a colour looks, 0 to 255: the weights of ITU-R BT.601. */
const lightness = ([red = 0, green = 0, blue = 0]: readonly number[]): number =>
  0.299 * red + 0.587 * green + 0.114 * blue;

export function themed(output: HTMLElement): void {
  output.dataset.theme = lightness(behind(output)) < 128 ? "dark" : "light";
}

function themeAll(): void {
  for (const output of document.querySelectorAll<HTMLElement>(".rollbook[data-taken]"))
    themed(output);
}

/** Follows whatever changes the theme: attributes of the page, style sheets that come and go, the system. */
export function followTheme(): void {
  const changed = new MutationObserver(themeAll);
  for (const one of [document.documentElement, document.body])
    changed.observe(one, { attributes: true });
  changed.observe(document.head, { childList: true, subtree: true, attributes: true });
  document.head.addEventListener("load", themeAll, true);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", themeAll);
}
