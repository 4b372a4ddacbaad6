import { toShown, type UnitSystem, unitOf } from "../say/units.js";
import { spell } from "./reader.js";
import type { Axis, Interval } from "./spec.js";

/** The two axes of a chart, without what is drawn between them. */
export interface Axes {
  readonly x: Axis;
  readonly y: Axis;
}

/** From where to where an axis goes, in the unit that it shows. */
export const shownDomain = ({ quantity, domain }: Axis, units: UnitSystem): Interval => [
  toShown(quantity, domain[0], units),
  toShown(quantity, domain[1], units),
];

/** What an axis shows, with its unit. */
export function axisLabel({ label, quantity, names }: Axis, units: UnitSystem): string {
  const unit = unitOf(quantity, units);
  return spell(unit === "" || names ? label : `${label} (${unit})`, units);
}

/** Names along an axis at their positions in the shown unit. */
export const shownNames = ({ names = [], quantity }: Axis, units: UnitSystem) =>
  names.map(([at, name]) => [toShown(quantity, at, units), spell(name, units)] as const);

const short = (value: number): string => String(Number(value.toPrecision(6)));

function axisKey(axis: Axis, units: UnitSystem): string {
  const ends = shownDomain(axis, units).map(short).join(" to ");
  const names = shownNames(axis, units).map(([at, name]) => `, ${short(at)} ${name}`);
  return `${axisLabel(axis, units)} ${ends}${names.join("")}`;
}

/** What a frame shows, in words: two frames look alike when these do. */
export const frameKey = ({ x, y }: Axes, units: UnitSystem): string =>
  `${axisKey(x, units)}; ${axisKey(y, units)}`;
