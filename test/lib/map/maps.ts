import { type PhaseName, phases } from "../../../lib/balance/phases.js";
import type { Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { type MapAxis, mapAxesOf } from "../../../lib/map/map-axis.js";
import type { MapOf } from "../../../lib/map/map-of.js";

export function axisOf(car: Car, key: string): MapAxis {
  const axis = mapAxesOf(car).find((one) => one.key === key);
  if (axis === undefined) throw new Error(`no axis ${key}`);
  return axis;
}

/** A map over two levers of a car, 25 m/s. */
export const mapOver = (
  along: string,
  up: string,
  phase: PhaseName = "middle",
  car: Car = demoCar,
): MapOf => ({
  car,
  measured: car,
  along: axisOf(car, along),
  up: axisOf(car, up),
  driving: { speed: 25, ...phases[phase] },
});
