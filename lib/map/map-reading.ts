import type { CarBalance } from "../balance/car-balance.js";
import type { Margin } from "../statics/margins.js";
import { workedOut } from "./map-cell.js";
import type { MapOf } from "./map-of.js";

/** One place of a map, worked out in full. */
export interface MapReading {
  readonly x: number;
  readonly y: number;
  readonly balance: CarBalance;
  /** Limits of the class that do not hold there. */
  readonly broken: readonly Margin[];
}

/**
 * What the car does with the two levers of a map at two values.
 *
 * @throws Refusal when the car cannot stand so
 */
export function readMap(of: MapOf, x: number, y: number): MapReading {
  const { balance, margins } = workedOut(of, x, y);
  return { x, y, balance, broken: margins.filter(({ margin }) => margin < 0) };
}
