import type { MapAxis } from "@rollbook/lib";
import { markAfter, markAt } from "../steer.js";

interface Mark {
  readonly x: number;
  readonly y: number;
}

interface Steered {
  /** Where an event is on the map, both 0–1. */
  readonly placeOf: (event: MouseEvent) => Mark;
  readonly now: () => { readonly mark: Mark; readonly along: MapAxis; readonly up: MapAxis };
  readonly to: (mark: Mark) => void;
}

/** Lets keys, mouse and touch move the reading mark of a map. */
export function steer(node: HTMLElement, { placeOf, now, to }: Steered): void {
  node.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const { mark, along, up } = now();
    const next = markAfter(event.key, mark, along, up);
    if (next === undefined) return;
    event.preventDefault();
    to(next);
  });
  const point = (event: PointerEvent) => {
    const { along, up } = now();
    to(markAt(placeOf(event), along, up));
  };
  node.addEventListener("pointerdown", (event) => {
    if (event.button !== 0) return;
    node.setPointerCapture(event.pointerId);
    point(event);
  });
  node.addEventListener("pointermove", (event) => {
    if (node.hasPointerCapture(event.pointerId)) point(event);
  });
}
