interface HandyUnit {
  readonly unit: string;
  /** How many SI units one handy unit is. */
  readonly size: number;
}

/** One degree in radians – NIST SP 811 (2008), B.8. */
export const DEGREE = Math.PI / 180;

/** Standard acceleration of free fall, 9.80665 m/s² (NIST SP 811, 2008, B.8). */
export const GRAVITY = 9.80665;

/** A quantity whose tables are written in the SI unit itself. */
const inSi = (si: string) => ({ si, handy: { unit: si, size: 1 } });

const inHandy = (si: string, unit: string, size: number) => ({ si, handy: { unit, size } });

/**
 * What a number measures: its SI unit, and the unit in which tables of numbers are written here.
 *
 * Gauges, data sheets and published tables give kPa, N/mm and degrees: a row in them can be held
 * against its source, a row in Pa, N/m and rad cannot.
 */
export const quantities = {
  force: inSi("N"),
  mass: inSi("kg"),
  length: inSi("m"),
  /** Lengths of a car, apart from those of roads: who measures in feet and inches measures them in inches. */
  carLength: inSi("m"),
  lengthSmall: inHandy("m", "mm", 1e-3),
  volume: inHandy("m³", "L", 1e-3), // exact – NIST SP 811 (2008), B.8
  stiffness: inHandy("N/m", "N/mm", 1e3),
  rollStiffness: inHandy("N·m/rad", "N·m/°", 1 / DEGREE),
  cornerStiffness: inHandy("N/rad", "N/°", 1 / DEGREE),
  damping: inHandy("N·s/m", "N·s/mm", 1e3),
  pressure: inHandy("Pa", "kPa", 1e3),
  stress: inHandy("Pa", "GPa", 1e9),
  angle: inHandy("rad", "°", DEGREE),
  anglePerTravel: inHandy("rad/m", "°/mm", DEGREE / 1e-3),
  stopStiffening: inHandy("N/m²", "N/mm²", 1e6),
  complianceSteer: inHandy("rad/N", "°/kN", DEGREE / 1e3),
  rollGradient: inHandy("rad/(m/s²)", "°/g", DEGREE / GRAVITY),
  understeerGradient: inHandy("rad/(m/s²)", "°/g", DEGREE / GRAVITY),
  yawRate: inHandy("rad/s", "°/s", DEGREE),
  acceleration: inSi("m/s²"),
  accelerationInG: inHandy("m/s²", "g", GRAVITY),
  speed: inHandy("m/s", "km/h", 1 / 3.6),
  torque: inSi("N·m"),
  inertia: inSi("kg·m²"),
  area: inHandy("m²", "cm²", 1e-4),
  downforceFactor: inSi("N/(m/s)²"),
  temperatureDifference: inHandy("K", "°C", 1),
  frequency: inSi("Hz"),
  time: inSi("s"),
  share: inHandy("", "%", 0.01),
  ratio: inSi(""),
  count: inSi(""),
  turns: inSi("turns"),
  perLoad: inHandy("1/N", "1/kN", 1e-3),
} as const satisfies Record<string, { si: string; handy: HandyUnit }>;

/** The name of a quantity, such as "force" or "pressure". */
export type Quantity = keyof typeof quantities;

/**
 * A number of a table in its handy unit, in SI.
 *
 * @example
 * fromHandy("angle", 180) // → 3.14159, by hand: π
 */
export function fromHandy(quantity: Quantity, value: number): number {
  return value * quantities[quantity].handy.size;
}
