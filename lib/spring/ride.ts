import { requireInRange } from "../check.js";
import { GRAVITY } from "../units.js";

/**
 * Undamped bounce frequency of a mass on a spring, Hz.
 *
 * @param rate - N/m at the wheel (ride rate for a car on its tyres), at least 0
 * @param mass - kg carried by that wheel, above 0
 * @example
 * rideFrequency(25e3, 220) // → 1.6966, by hand: √(25 000/220)/2π
 */
export function rideFrequency(rate: number, mass: number): number {
  requireInRange("rate", rate, 0, Infinity, "N/m");
  requireInRange("mass", mass, 1e-6, Infinity, "kg");
  return Math.sqrt(rate / mass) / (2 * Math.PI); // – Gillespie 1992, ch. 5
}

/**
 * Spring rate that gives a bounce frequency, N/m.
 *
 * @param goal - frequency (Hz), mass carried by the wheel (kg), motionRatio (spring travel over
 * wheel travel)
 * @see Giaraffa, Springs & Dampers, part 2: 4π²f²·m·MR², with MR the other way round
 * @example
 * springRateForFrequency({ frequency: 2, mass: 200, motionRatio: 0.8 })
 * // → 49348, Giaraffa, Springs & Dampers, part 2
 */
export function springRateForFrequency(goal: {
  frequency: number;
  mass: number;
  motionRatio: number;
}): number {
  const f = requireInRange("frequency", goal.frequency, 0, 100, "Hz");
  const m = requireInRange("mass", goal.mass, 0, Infinity, "kg");
  const i = requireInRange("motion ratio", goal.motionRatio, 0.01, 10);
  return ((2 * Math.PI * f) ** 2 * m) / i ** 2;
}

/** How far a spring sinks under its load when its bounce frequency is f, m: g / (2πf)². */
export function staticDeflection(frequency: number): number {
  requireInRange("frequency", frequency, 1e-3, 1e3, "Hz");
  return GRAVITY / (2 * Math.PI * frequency) ** 2; // – Gillespie 1992, ch. 5
}
