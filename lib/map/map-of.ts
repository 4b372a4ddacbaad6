import type { Driving } from "../balance/driving.js";
import { type StandingCar, standingCar } from "../balance/standing-car.js";
import type { Car } from "../car/car.js";
import { applyChanges } from "../change/apply.js";
import { changeTo, type MapAxis } from "./map-axis.js";

/** What a map is drawn over. */
export interface MapOf {
  /** The car with all other levers where they are wanted. */
  readonly car: Car;
  /** The car whose file gave the heights, as for `restOf`. */
  readonly measured: Car;
  readonly along: MapAxis;
  readonly up: MapAxis;
  readonly driving: Driving;
}

/** The value of an axis at a place from 0 to 1. */
export const valueAt = ({ min, max }: MapAxis, place: number): number => min + place * (max - min);

/** The place of a value on an axis, from 0 to 1. */
export const placeOn = ({ min, max }: MapAxis, value: number): number =>
  (value - min) / (max - min);

/** The car with the two levers of the map set to two values. */
export function carOnMap(of: MapOf, x: number, y: number): StandingCar {
  const { car, measured, along, up } = of;
  return standingCar(applyChanges(car, [changeTo(along, x), changeTo(up, y)]), measured);
}
