/** Puts new content in a place; folds stay open, and whoever was at a field finds it as it was left. */
export function refill(place: Element, ...content: (Node | string)[]): void {
  const at = document.activeElement;
  const inside = at instanceof HTMLElement && place.contains(at) ? at : undefined;
  const open = [...place.querySelectorAll("details[open][id]")].map(({ id }) => id);
  place.replaceChildren(...content);
  for (const id of open) document.getElementById(id)?.setAttribute("open", "");
  if (inside === undefined || inside.id === "") return;
  const again = document.getElementById(inside.id);
  if (isText(inside) && isText(again)) again.value = inside.value;
  again?.focus({ preventScroll: true });
}

function isText(it: HTMLElement | null): it is HTMLInputElement | HTMLTextAreaElement {
  if (it instanceof HTMLTextAreaElement) return true;
  return it instanceof HTMLInputElement && ["text", "number"].includes(it.type);
}
