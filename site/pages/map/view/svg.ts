/** An SVG element with attributes. */
export function svg<K extends keyof SVGElementTagNameMap>(
  tag: K,
  attributes: Readonly<Record<string, string | number>> = {},
  ...content: (Node | string)[]
): SVGElementTagNameMap[K] {
  const made = document.createElementNS("http://www.w3.org/2000/svg", tag);
  set(made, attributes);
  made.append(...content);
  return made;
}

export function set(node: Element, attributes: Readonly<Record<string, string | number>>): void {
  for (const [name, value] of Object.entries(attributes)) node.setAttribute(name, String(value));
}
