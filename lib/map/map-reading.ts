import { type CarBalance, carBalance } from "../balance/car-balance.js";
import { handlingCarOf } from "../balance/handling-car-of.js";
import { type Margin, marginsOf } from "../statics/margins.js";
import { carOnMap, type MapOf } from "./set-up-map.js";

/** One place of a map, worked out in full. */
export interface MapReading {
  readonly x: number;
  readonly y: number;
  readonly balance: CarBalance;
  /** Limits of the class that do not hold there. */
  readonly broken: readonly Margin[];
}

/**
 * What the car does with the two levers of a map at two values, without any blending.
 *
 * @throws RangeError when the car cannot stand so
 */
export function readMap(of: MapOf, x: number, y: number): MapReading {
  const car = carOnMap(of, x, y);
  const balance = carBalance(handlingCarOf(car, of.measured), of.driving);
  const broken = marginsOf(car, of.measured).filter(({ margin }) => margin < 0);
  return { x, y, balance, broken };
}
