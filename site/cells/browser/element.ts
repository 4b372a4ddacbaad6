type Content = Node | string;

/** An HTML element with attributes and content; a `false` attribute is left out. */
export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Record<string, string | number | boolean> = {},
  ...content: Content[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== false) made.setAttribute(name, value === true ? "" : String(value));
  }
  made.append(...content);
  return made;
}

/** Hides an element, or lets it be seen, and touches none that is so already: a picture that plays asks in every frame. */
export function hide(one: HTMLElement, isHidden: boolean): void {
  if (one.hidden !== isHidden) one.hidden = isHidden;
}

/** The element that the kernel left for this cell, now the page's own; undefined on a page without it. */
export function placeOf(id: string): HTMLElement | undefined {
  const place = document.getElementById(id);
  if (place) place.dataset.own = "";
  return place ?? undefined;
}
