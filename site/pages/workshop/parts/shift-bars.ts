import {
  decimalsIn,
  type PhaseName,
  type PhaseShifts,
  phaseNames,
  signed,
  toShown,
  unitOf,
} from "@rollbook/lib";
import { element, reader } from "@rollbook/page";
import { words } from "../words.js";

/** Shift at which a bar is as long as it gets, m/s². */
const FULL = 0.5;

/** A shift of balance as text, such as "+0.20 m/s²". */
export function shiftText(shift: number): string {
  const decimals = decimalsIn("acceleration", 2, reader.units);
  const unit = unitOf("acceleration", reader.units);
  return `${signed(toShown("acceleration", shift, reader.units), decimals)}\u00a0${unit}`;
}

const namespace = "http://www.w3.org/2000/svg";

/** A bar to the left for the rear, to the right for the front. */
export function shiftBar(shift: number): SVGElement {
  const picture = document.createElementNS(namespace, "svg");
  const length = Math.min(1, Math.abs(shift) / FULL) * 48;
  const set = (shape: Element, values: Record<string, string | number>) => {
    for (const [name, value] of Object.entries(values)) shape.setAttribute(name, String(value));
  };
  set(picture, { viewBox: "0 0 100 10", "aria-hidden": "true", class: "shift-bar" });
  const middle = document.createElementNS(namespace, "line");
  set(middle, { x1: 50, x2: 50, y1: 0, y2: 10 });
  const side = document.createElementNS(namespace, "rect");
  const x = shift < 0 ? 50 - length : 50;
  set(side, { x, y: 2, width: length, height: 6, class: shift < 0 ? "rear" : "front" });
  picture.append(side, middle);
  return picture;
}

function row(phase: PhaseName, shift: number): HTMLElement {
  const picture = element("td", {});
  picture.append(shiftBar(shift));
  return element(
    "tr",
    {},
    element("th", { scope: "row" }, phase),
    element("td", { class: "number" }, shiftText(shift)),
    picture,
  );
}

/** How far balance moves in each part of a corner: a table with bars. */
export function shiftBars(phases: PhaseShifts, caption: string): HTMLElement {
  const heading = element(
    "tr",
    {},
    element("th", { scope: "col" }, words.phase),
    element("th", { scope: "col" }, words.shift),
    element("th", { scope: "col", class: "ends" }, words.rearOrFront),
  );
  return element(
    "table",
    { class: "shifts" },
    element("caption", {}, caption),
    element("thead", {}, heading),
    element("tbody", {}, ...phaseNames.map((phase) => row(phase, phases[phase]))),
  );
}
