import { type BalanceMap, balanceMap } from "../balance/balance-map.js";
import type { Driving } from "../balance/driving.js";
import type { HandlingCar } from "../balance/handling-car.js";
import { handlingCarOf } from "../balance/handling-car-of.js";
import type { Car } from "../car/car.js";
import { applyChanges } from "../change/apply.js";
import { parameters } from "../parameters.js";
import { marginsOf } from "../statics/margins.js";
import { carsBetween } from "./cars-between.js";
import { knotsOf } from "./knots.js";
import { changeTo, type MapAxis } from "./map-axis.js";
import { type NumbersBetween, numbersBetween } from "./numbers-between.js";

/** Balance and grip over two levers, and how far each place is inside the limits of the class. */
export interface SetUpMap extends BalanceMap {
  /** steps of the narrowest limit, below 0 outside; empty where the class has no limits */
  readonly room: Float64Array;
}

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
export function carOnMap({ car, along, up }: MapOf, x: number, y: number): Car {
  return applyChanges(car, [changeTo(along, x), changeTo(up, y)]);
}

/** Exact cars at the knots of both axes, blended between them. */
interface Blend {
  readonly carAt: (x: number, y: number) => HandlingCar;
  readonly margins: NumbersBetween;
}

/**
 * Balance, grip and room to the limits over two levers.
 *
 * Cars are worked out in full at a few knots of both axes and blended between them; every one of
 * the map is then solved.
 *
 * @throws RangeError when one of the cars cannot stand on its springs
 */
export function setUpMap(of: MapOf, columns = 64, rows = columns): SetUpMap {
  const { carAt, margins } = blendOf(of);
  return {
    ...balanceMap(carAt, of.driving, columns, rows),
    room: roomOver(margins, columns, rows),
  };
}

/** Cars of a map at any place, both 0–1; each call gives the same car with other numbers. */
export function blendOf(of: MapOf): Blend {
  const [along, up] = [knotsOf(of.along), knotsOf(of.up)];
  const cars = up.at.flatMap((y) =>
    along.at.map((x) => carOnMap(of, valueAt(of.along, x), valueAt(of.up, y))),
  );
  const [first, ...rest] = cars.map((car) => handlingCarOf(car, of.measured));
  if (first === undefined) throw new RangeError("a map needs knots on both axes.");
  return {
    carAt: carsBetween(along, up, [first, ...rest]),
    margins: numbersBetween(
      along,
      up,
      cars.map((car) => marginsInSteps(car, of.measured)),
    ),
  };
}

function marginsInSteps(car: Car, measured: Car): number[] {
  if (car.limits === undefined) return [];
  return marginsOf(car, measured).map(
    ({ margin, parameter }) => margin / parameters[parameter].step,
  );
}

function roomOver(margins: NumbersBetween, columns: number, rows: number): Float64Array {
  if (margins(0, 0).length === 0) return new Float64Array();
  const room = new Float64Array(columns * rows);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++)
      room[row * columns + column] = least(margins(column / (columns - 1), row / (rows - 1)));
  return room;
}

function least(numbers: Float64Array): number {
  let found = Infinity;
  for (const number of numbers) if (number < found) found = number;
  return found;
}
