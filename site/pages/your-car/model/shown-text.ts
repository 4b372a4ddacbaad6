import type { Shape } from "@rollbook/lib";
import type { UnitSystem } from "../../../say/units.js";
import { type Draft, type Typed, valueTyped } from "./draft.js";
import { shownNumber } from "./number.js";
import { type Path, shapeAt, valueAt } from "./path.js";

/** What stands in the box of a place: what was typed, else its value. */
export function shownText(draft: Draft, path: Path, units: UnitSystem): string {
  const shape = shapeAt(path);
  if (!shape) return "";
  const typed = draft.typed[path];
  if (typed) return typedText(path, typed, shape, units);
  const value = valueAt(draft.base, path);
  if (typeof value === "number" && shape.type === "number") return shownNumber(value, shape, units);
  return typeof value === "string" ? value : "";
}

/** What was typed, in the reader's units where it can be read; else as it was typed. */
function typedText(path: Path, typed: Typed, shape: Shape, units: UnitSystem): string {
  if (shape.type !== "number" || typed.units === units) return typed.text;
  const value = valueTyped(path, typed);
  return typeof value === "number" && Number.isFinite(value)
    ? shownNumber(value, shape, units)
    : typed.text;
}

/** Whether a place follows from the joints of its axle's links, where the file has them. */
export function followsLinks({ base }: Draft, path: Path): boolean {
  const [, end] =
    /^(front|rear)\.geometry\.(?:rollCentre|camberGain|toeGain|rollSteer)/.exec(path) ?? [];
  return end !== undefined && valueAt(base, `${end}.linkage`) !== undefined;
}
