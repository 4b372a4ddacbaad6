/** Which units the reader sees. Inside, everything is SI. */
export type UnitSystem = "metric" | "us";

interface ShownUnit {
  readonly unit: string;
  /** How many SI units one shown unit is. */
  readonly size: number;
}

const inch = 0.0254; // m, exact – NIST SP 811 (2008), B.8
const foot = 0.3048; // m, exact – NIST SP 811 (2008), B.8
const pound = 0.45359237; // kg, exact – NIST SP 811 (2008), B.8
const standardGravity = 9.80665; // m/s², exact – NIST SP 811 (2008), B.8
const poundForce = pound * standardGravity; // N, exact – NIST SP 811 (2008), B.8
const mile = 1609.344; // m, exact – NIST SP 811 (2008), B.8
const degree = Math.PI / 180; // rad – NIST SP 811 (2008), B.8

/** Standard acceleration of free fall, 9.80665 m/s² (NIST SP 811, 2008, B.8). */
export const GRAVITY = standardGravity;

const one: ShownUnit = { unit: "", size: 1 };
const percent: ShownUnit = { unit: "%", size: 0.01 };
const second: ShownUnit = { unit: "s", size: 1 };
const hertz: ShownUnit = { unit: "Hz", size: 1 };
const degrees: ShownUnit = { unit: "°", size: degree };
const perDegree = (unit: string, size: number): ShownUnit => ({
  unit: `${unit}/°`,
  size: size / degree,
});

/** What a number measures: its SI unit, and the unit shown in each system. */
export const quantities = {
  force: { si: "N", metric: { unit: "N", size: 1 }, us: { unit: "lbf", size: poundForce } },
  mass: { si: "kg", metric: { unit: "kg", size: 1 }, us: { unit: "lb", size: pound } },
  length: { si: "m", metric: { unit: "m", size: 1 }, us: { unit: "ft", size: foot } },
  lengthSmall: { si: "m", metric: { unit: "mm", size: 1e-3 }, us: { unit: "in", size: inch } },
  volume: {
    si: "m³",
    metric: { unit: "L", size: 1e-3 },
    us: { unit: "gal", size: 231 * inch ** 3 },
  }, // exact – NIST SP 811 (2008), B.8
  stiffness: {
    si: "N/m",
    metric: { unit: "N/mm", size: 1e3 },
    us: { unit: "lbf/in", size: poundForce / inch },
  },
  rollStiffness: {
    si: "N·m/rad",
    metric: perDegree("N·m", 1),
    us: perDegree("lbf·ft", poundForce * foot),
  },
  cornerStiffness: {
    si: "N/rad",
    metric: perDegree("N", 1),
    us: perDegree("lbf", poundForce),
  },
  damping: {
    si: "N·s/m",
    metric: { unit: "N·s/mm", size: 1e3 },
    us: { unit: "lbf·s/in", size: poundForce / inch },
  },
  pressure: {
    si: "Pa",
    metric: { unit: "kPa", size: 1e3 },
    us: { unit: "psi", size: poundForce / inch ** 2 },
  },
  stress: {
    si: "Pa",
    metric: { unit: "GPa", size: 1e9 },
    us: { unit: "Mpsi", size: (1e6 * poundForce) / inch ** 2 },
  },
  angle: { si: "rad", metric: degrees, us: degrees },
  anglePerTravel: {
    si: "rad/m",
    metric: { unit: "°/mm", size: degree / 1e-3 },
    us: { unit: "°/in", size: degree / inch },
  },
  stopStiffening: {
    si: "N/m²",
    metric: { unit: "N/mm²", size: 1e6 },
    us: { unit: "lbf/in²", size: poundForce / inch ** 2 },
  },
  complianceSteer: {
    si: "rad/N",
    metric: { unit: "°/kN", size: degree / 1e3 },
    us: { unit: "°/klbf", size: degree / (1e3 * poundForce) },
  },
  rollGradient: {
    si: "rad/(m/s²)",
    metric: { unit: "°/g", size: degree / standardGravity },
    us: { unit: "°/g", size: degree / standardGravity },
  },
  understeerGradient: {
    si: "rad/(m/s²)",
    metric: { unit: "°/g", size: degree / standardGravity },
    us: { unit: "°/g", size: degree / standardGravity },
  },
  yawRate: {
    si: "rad/s",
    metric: { unit: "°/s", size: degree },
    us: { unit: "°/s", size: degree },
  },
  acceleration: {
    si: "m/s²",
    metric: { unit: "m/s²", size: 1 },
    us: { unit: "g", size: standardGravity },
  },
  accelerationInG: {
    si: "m/s²",
    metric: { unit: "g", size: standardGravity },
    us: { unit: "g", size: standardGravity },
  },
  speed: {
    si: "m/s",
    metric: { unit: "km/h", size: 1 / 3.6 },
    us: { unit: "mph", size: mile / 3600 },
  },
  torque: {
    si: "N·m",
    metric: { unit: "N·m", size: 1 },
    us: { unit: "lbf·ft", size: poundForce * foot },
  },
  inertia: {
    si: "kg·m²",
    metric: { unit: "kg·m²", size: 1 },
    us: { unit: "lb·ft²", size: pound * foot ** 2 },
  },
  area: { si: "m²", metric: { unit: "cm²", size: 1e-4 }, us: { unit: "in²", size: inch ** 2 } },
  downforceFactor: {
    si: "N/(m/s)²",
    metric: { unit: "N/(m/s)²", size: 1 },
    us: { unit: "lbf/(mph)²", size: poundForce / (mile / 3600) ** 2 },
  },
  temperatureDifference: {
    si: "K",
    metric: { unit: "°C", size: 1 },
    us: { unit: "°F", size: 5 / 9 },
  }, // exact – NIST SP 811 (2008), B.8
  frequency: { si: "Hz", metric: hertz, us: hertz },
  time: { si: "s", metric: second, us: second },
  share: { si: "", metric: percent, us: percent },
  ratio: { si: "", metric: one, us: one },
  count: { si: "", metric: one, us: one },
  turns: { si: "turns", metric: { unit: "turns", size: 1 }, us: { unit: "turns", size: 1 } },
  perLoad: {
    si: "1/N",
    metric: { unit: "1/kN", size: 1e-3 },
    us: { unit: "1/klbf", size: 1e-3 / poundForce },
  },
} as const satisfies Record<string, { si: string; metric: ShownUnit; us: ShownUnit }>;

/** The name of a quantity, such as "force" or "pressure". */
export type Quantity = keyof typeof quantities;

/** The unit shown for a quantity, such as "N/mm" or "lbf/in". */
export function unitOf(quantity: Quantity, system: UnitSystem = "metric"): string {
  return quantities[quantity][system].unit;
}

/** An SI value in the unit that is shown. */
export function toShown(quantity: Quantity, value: number, system: UnitSystem = "metric"): number {
  return value / quantities[quantity][system].size;
}

/**
 * A value in the shown unit, back in SI.
 *
 * @example
 * fromShown("angle", 180) // → 3.14159, by hand: π
 */
export function fromShown(
  quantity: Quantity,
  value: number,
  system: UnitSystem = "metric",
): number {
  return value * quantities[quantity][system].size;
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
