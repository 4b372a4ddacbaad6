import type { Mark } from "./marks.js";
import { type Frame, type Shape, shapesOf } from "./shapes.js";
import { setAttributes, svgElement } from "./svg-element.js";

function reuse(layer: Element, index: number, tag: string): Element {
  const present = layer.children[index];
  if (present?.tagName.toLowerCase() === tag) return present;
  const made = svgElement(layer.ownerDocument, tag);
  if (present) layer.replaceChild(made, present);
  else layer.appendChild(made);
  return made;
}

/** Takes away what an element still has of another mark that it showed before. */
function dropOthers(element: Element, wanted: Shape["attributes"]): void {
  if (element.attributes.length === Object.keys(wanted).length) return;
  for (const name of element.getAttributeNames())
    if (!Object.hasOwn(wanted, name)) element.removeAttribute(name);
}

function paintLayer(layer: Element, shapes: readonly Shape[]): void {
  shapes.forEach((shape, index) => {
    const element = reuse(layer, index, shape.tag);
    setAttributes(element, shape.attributes);
    dropOthers(element, shape.attributes);
    if (element.textContent !== shape.text) element.textContent = shape.text;
  });
  while (layer.children.length > shapes.length) layer.lastElementChild?.remove();
}

/** Makes the two layers show the marks, touching only what differs from what they show now. */
export function paint(
  layers: { clipped: Element; free: Element },
  marks: readonly Mark[],
  frame: Frame,
): void {
  const shapes = marks.flatMap((mark) => shapesOf(mark, frame));
  paintLayer(
    layers.clipped,
    shapes.filter((shape) => shape.layer === "clipped"),
  );
  paintLayer(
    layers.free,
    shapes.filter((shape) => shape.layer === "free"),
  );
}
