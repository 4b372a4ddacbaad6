import { DEGREE, GRAVITY, type Quantity, quantities } from "@rollbook/lib";

/** Which units the reader sees. Inside, everything is SI. */
export type UnitSystem = "metric" | "us";

interface ShownUnit {
  readonly unit: string;
  /** How many SI units one shown unit is. */
  readonly size: number;
}

export const inch = 0.0254; // m, exact – NIST SP 811 (2008), B.8
export const foot = 0.3048; // m, exact – NIST SP 811 (2008), B.8
export const pound = 0.45359237; // kg, exact – NIST SP 811 (2008), B.8
export const poundForce = pound * GRAVITY; // N, exact – NIST SP 811 (2008), B.8
const mile = 1609.344; // m, exact – NIST SP 811 (2008), B.8

/** Metric readers are shown the units in which tables are written. */
const asInTables = (quantity: Quantity): ShownUnit => quantities[quantity].handy;

const inUs: Readonly<Record<Quantity, ShownUnit>> = {
  force: { unit: "lbf", size: poundForce },
  mass: { unit: "lb", size: pound },
  length: { unit: "ft", size: foot },
  carLength: { unit: "in", size: inch },
  lengthSmall: { unit: "in", size: inch },
  volume: { unit: "gal", size: 231 * inch ** 3 }, // exact – NIST SP 811 (2008), B.8
  stiffness: { unit: "lbf/in", size: poundForce / inch },
  rollStiffness: { unit: "lbf·ft/°", size: (poundForce * foot) / DEGREE },
  cornerStiffness: { unit: "lbf/°", size: poundForce / DEGREE },
  damping: { unit: "lbf·s/in", size: poundForce / inch },
  pressure: { unit: "psi", size: poundForce / inch ** 2 },
  stress: { unit: "Mpsi", size: (1e6 * poundForce) / inch ** 2 },
  angle: asInTables("angle"),
  anglePerTravel: { unit: "°/in", size: DEGREE / inch },
  stopStiffening: { unit: "lbf/in²", size: poundForce / inch ** 2 },
  complianceSteer: { unit: "°/klbf", size: DEGREE / (1e3 * poundForce) },
  rollGradient: asInTables("rollGradient"),
  understeerGradient: asInTables("understeerGradient"),
  yawRate: asInTables("yawRate"),
  acceleration: { unit: "g", size: GRAVITY },
  accelerationInG: asInTables("accelerationInG"),
  speed: { unit: "mph", size: mile / 3600 },
  torque: { unit: "lbf·ft", size: poundForce * foot },
  inertia: { unit: "lb·ft²", size: pound * foot ** 2 },
  area: { unit: "in²", size: inch ** 2 },
  downforceFactor: { unit: "lbf/(mph)²", size: poundForce / (mile / 3600) ** 2 },
  temperatureDifference: { unit: "°F", size: 5 / 9 }, // exact – NIST SP 811 (2008), B.8
  frequency: asInTables("frequency"),
  time: asInTables("time"),
  share: asInTables("share"),
  ratio: asInTables("ratio"),
  count: asInTables("count"),
  turns: asInTables("turns"),
  perLoad: { unit: "1/klbf", size: 1e-3 / poundForce },
};

/** The unit that a reader is shown, and its size in SI. */
export const shownUnit = (quantity: Quantity, system: UnitSystem): ShownUnit =>
  system === "us" ? inUs[quantity] : asInTables(quantity);

/** The unit shown for a quantity, such as "N/mm" or "lbf/in". */
export function unitOf(quantity: Quantity, system: UnitSystem = "metric"): string {
  return shownUnit(quantity, system).unit;
}

/** An SI value in the unit that is shown. */
export function toShown(quantity: Quantity, value: number, system: UnitSystem = "metric"): number {
  return value / shownUnit(quantity, system).size;
}

/** A value in the shown unit, back in SI. */
export function fromShown(
  quantity: Quantity,
  value: number,
  system: UnitSystem = "metric",
): number {
  return value * shownUnit(quantity, system).size;
}

/** The true minus sign, U+2212. */
export const MINUS = "\u2212";

/**
 * An SI value as text in the shown unit, such as "200 kPa", "29.0 psi" or "−1.5°".
 *
 * @param decimals - digits after the point; a rounded zero never carries a minus sign
 */
export function format(
  quantity: Quantity,
  value: number,
  decimals: number,
  system: UnitSystem = "metric",
): string {
  const unit = unitOf(quantity, system);
  const gap = unit === "" || unit === "°" ? "" : "\u00a0";
  return `${formatNumber(toShown(quantity, value, system), decimals)}${gap}${unit}`;
}

/** A number as text with a true minus sign and no negative zero. */
export function formatNumber(value: number, decimals: number): string {
  const digits = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(digits) !== 0 ? MINUS + digits : digits;
}
