import { axleGrip } from "../../balance/limit.js";
import { gripOf, limitBalanceOf } from "../../balance/limit-balance.js";
import { carInRoll } from "../../car/axle-loads.js";
import type { Car } from "../../car/car.js";
import type { End } from "../../change/change.js";
import { firstWheelLift } from "../../load/first-lift.js";
import { eachAxle } from "../../load/wheels.js";
import { Refusal } from "../../refusal.js";

/** A brisk turn that this car holds on four wheels, m/s²: seven tenths of its limit. */
export function briskTurn(car: Car): number {
  const lift = firstWheelLift(carInRoll(car)).lateralAcceleration;
  const { lateralAcceleration } = limitBalanceOf(car);
  const turn = Math.floor(2 * 0.7 * Math.min(lift, lateralAcceleration)) / 2;
  if (turn < 2)
    throw new Refusal("does-not-suit", "it hardly turns before a wheel lifts or its tyres let go.");
  return turn;
}

/** The car with other springs at one end, as a multiple of those it has. */
export function withSpringsAt(car: Car, end: End, times: number): Car {
  const { spring } = car[end];
  return { ...car, [end]: { ...car[end], spring: { ...spring, rate: times * spring.rate } } };
}

/** The car with other springs at all four corners. */
export const withSprings = (car: Car, times: number): Car =>
  withSpringsAt(withSpringsAt(car, "front", times), "rear", times);

/** The car with both tyres of one end at another warm pressure. */
export function withPressureAt(car: Car, end: End, pressure: number): Car {
  const tyre = { ...car[end].tyre, pressure: { left: pressure, right: pressure } };
  return { ...car, [end]: { ...car[end], tyre } };
}

/** The car with its roll centres at other heights. */
export function withRollCentres(car: Car, height: Readonly<Record<End, number>>): Car {
  const axles = eachAxle(car, (axle, end) => ({
    ...axle,
    geometry: { ...axle.geometry, rollCentreHeight: height[end] },
  }));
  return { ...car, ...axles };
}

/** Side force that both tyres of an end can make in a turn, N. */
export const gripAt = (car: Car, end: End, turn: number): number =>
  axleGrip(carInRoll(car), gripOf(car)[end], end, turn);
