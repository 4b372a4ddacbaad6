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

/** Where the cells that run now find what the kernel left: the page, or one output of a front end. */
let room: ParentNode = document;

/** Whether there is a page of the course around the cells, with an address that leads to its places. */
export const isInPage = (): boolean => room === document;

/** Does work whose places are in this root and nowhere else. */
export function within(root: ParentNode, work: () => void): void {
  const before = room;
  room = root;
  try {
    work();
  } finally {
    room = before;
  }
}

/** The first of such elements where the cells run. */
export const inRoom = (selector: string): HTMLElement | null => room.querySelector(selector);

/** The element that the kernel left for this cell, now the page's own; undefined on a page without it. */
export function placeOf(id: string): HTMLElement | undefined {
  const place = inRoom(`[id="${CSS.escape(id)}"]`);
  if (place) place.dataset.own = "";
  return place ?? undefined;
}
