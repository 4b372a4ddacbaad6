import { GREATEST_BALANCE } from "../log/report.js";

/**
 * Least shift of balance that a change is worth driving for, m/s² of the margin between the ends.
 *
 * 1 % of the 10 m/s² that a road tyre can do: half a percent of corner speed, about what a practised
 * club driver repeats from lap to lap – common practice, no source. An event may set its own.
 */
export const LEAST_FELT_SHIFT = 0.1;

/**
 * Margin between the ends that one point on a driver's scale of balance stands for, m/s²: twice the
 * least that is felt, so that the least shift moves every other report by a point – common practice,
 * no source; drivers differ, so felt and predicted are compared by order and sign only.
 */
export const MARGIN_PER_POINT = 2 * LEAST_FELT_SHIFT;

/**
 * The report that a driver would file who knows how the car usually is there and has no noise.
 *
 * @param balance - m/s², above 0 the front slides first
 * @param usual - the balance that this driver calls 0 there, m/s²
 * @returns points, whole, −3 to +3
 */
export function pointsFelt(balance: number, usual = 0): number {
  const felt = balance - usual;
  const points = Math.round(Math.abs(felt) / MARGIN_PER_POINT); // alike towards both ends
  return Math.sign(felt) * Math.min(GREATEST_BALANCE, points) + 0; // no −0
}
