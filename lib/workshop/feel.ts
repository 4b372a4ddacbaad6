/**
 * Least shift of balance that a change is worth driving for, m/s² of the margin between the ends.
 *
 * 1 % of the 10 m/s² that a road tyre can do: half a percent of corner speed, about what a practised
 * club driver repeats from lap to lap – common practice, no source. An event may set its own.
 */
export const LEAST_FELT_SHIFT = 0.1;

/**
 * Margin between the ends that one point on a driver's scale of balance stands for, m/s²: three
 * times the least that is felt – common practice, no source; drivers differ, so only order and sign
 * are compared.
 */
export const MARGIN_PER_POINT = 0.3;

/** Balance in the sign that reports use: above 0 the rear slides first. */
export const rearFirst = (understeerMargin: number): number => 0 - understeerMargin;
