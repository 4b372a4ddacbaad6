import { type Measured, NINE_IN_TEN, type Quantity } from "@rollbook/lib";
import { digitsFor } from "../digits.js";
import type { Reader } from "../reader.js";
import { formatNumber, toShown, unitOf } from "../units.js";

/**
 * A number with how far it may be off nine times in ten, such as "512 ± 14 mm", both with as many
 * digits as that doubt has.
 *
 * @param decimals - digits after the point in the metric unit where nothing is in doubt
 */
export function plusMinus(
  { value, spread }: Measured,
  quantity: Quantity,
  decimals: number,
  { units }: Reader,
): string {
  const reach = NINE_IN_TEN * spread;
  const end = (at: number) => ({ value: at, error: 0 });
  const band = { low: end(value - reach), middle: end(value), high: end(value + reach), count: 1 };
  const digits = digitsFor(band, quantity, decimals + (spread > 0 ? 2 : 0), units);
  const [shown, off] = [value, reach].map((si) =>
    formatNumber(toShown(quantity, si, units), digits),
  );
  const unit = unitOf(quantity, units);
  return `${shown} ± ${off}${unit === "" ? "" : `\u00a0${unit}`}`;
}
