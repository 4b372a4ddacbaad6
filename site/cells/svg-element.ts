const svgNamespace = "http://www.w3.org/2000/svg";

/** Gives an element those attributes that it does not have yet. */
export function setAttributes(
  element: Element,
  attributes: Readonly<Record<string, string | number>>,
): void {
  for (const [name, value] of Object.entries(attributes)) {
    if (element.getAttribute(name) !== String(value)) element.setAttribute(name, String(value));
  }
}

/** An SVG element of a document: the page's, or the one that the kernel draws into. */
export function svgElement(
  document: Document,
  name: string,
  attributes: Readonly<Record<string, string | number>> = {},
): SVGElement {
  const made = document.createElementNS(svgNamespace, name) as SVGElement;
  setAttributes(made, attributes);
  return made;
}
