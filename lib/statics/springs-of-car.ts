import { barRateOf } from "../car/axle.js";
import type { Axle, Car } from "../car/car.js";
import { frontShareOf, sprungMassOf } from "../car/masses.js";
import { tyreOf } from "../car/tyres.js";
import type { Sides } from "../load/wheels.js";
import { GRAVITY } from "../units.js";
import { measuredLoadsOf } from "./measured-loads.js";
import { bodyRow, type End, endsOf, wheelRow } from "./position.js";

/**
 * Something elastic: it pushes back with stiffness × deflection, and its deflection follows the
 * position of the car: deflection = atStart + row · position.
 */
export interface Elastic {
  readonly stiffness: number;
  readonly atStart: number;
  readonly row: readonly number[];
  /** A tyre only pushes: without deflection it is off the ground. */
  readonly pushesOnly: boolean;
}

/**
 * Every spring, bar and tyre of a car, started from the state in which another was measured.
 *
 * A spring that was changed has the free length of the one before it, a tyre its size, and the
 * bar was set free of load in the measured state.
 *
 * @param car - the car as it is set now
 * @param measured - the car as it was measured
 */
export function elasticsOf(car: Car, measured: Car): Elastic[] {
  const loads = measuredLoadsOf(measured);
  const ends = endsOf(car).flatMap((end) => [
    ...tyresOf(car[end.name], measured[end.name], end, loads[end.name]),
    ...coilsOf(car, measured, end, loads[end.name]),
    ...barOf(car, end),
  ]);
  return [...ends, leaningWeight(car)];
}

function tyresOf(axle: Axle, before: Axle, end: End, load: Sides<number>): Elastic[] {
  const one = (side: "left" | "right", row: number[]): Elastic => ({
    stiffness: tyreStiffness(axle, side),
    atStart: load[side] / tyreStiffness(before, side),
    row,
    pushesOnly: true,
  });
  return [one("left", wheelRow(end, -1, 0)), one("right", wheelRow(end, 0, -1))];
}

/** Vertical stiffness of one tyre at its pressure and the load it was made for, N/m. */
function tyreStiffness(axle: Axle, side: "left" | "right"): number {
  const tyre = tyreOf(axle);
  const load = tyre.coefficients.FNOMIN;
  return tyre.verticalStiffness({ load, pressure: axle.tyre.pressure[side] });
}

/** Both springs of an axle; on a beam they stand closer together than the wheels. */
function coilsOf(car: Car, measured: Car, end: End, load: Sides<number>): Elastic[] {
  const { spring, track } = car[end.name];
  const spacing = spring.spacing ?? track;
  const near = (1 + spacing / track) / 2; // share of the near wheel's rise at the spring
  const one = (side: "left" | "right"): Elastic => {
    const y = side === "left" ? spacing / 2 : -spacing / 2;
    const wheels = side === "left" ? wheelRow(end, near, 1 - near) : wheelRow(end, 1 - near, near);
    const body = bodyRow(car, end.behindFrontAxle, y);
    return {
      stiffness: spring.rate,
      atStart:
        measuredDeflection(measured[end.name], load, side) +
        spring.seatTurns[side] * spring.seatTravelPerTurn,
      row: wheels.map((share, i) => spring.motionRatio * (share - (body[i] ?? 0))),
      pushesOnly: false,
    };
  };
  return [one("left"), one("right")];
}

/** How far a spring was pressed together in the measured state, m. */
function measuredDeflection(axle: Axle, load: Sides<number>, side: "left" | "right"): number {
  const { rate, motionRatio, spacing } = axle.spring;
  const mean = (load.left + load.right - axle.unsprungMass * GRAVITY) / 2;
  const lean = ((load.left - load.right) / 2) * (axle.track / (spacing ?? axle.track));
  return (mean + (side === "left" ? lean : -lean)) / (motionRatio * rate);
}

function barOf(car: Car, end: End): Elastic[] {
  const { bar, track } = car[end.name];
  if (bar === undefined) return [];
  const apart = wheelRow(end, bar.motionRatio, -bar.motionRatio);
  const row = apart.map((share, i) => (i === 2 ? -bar.motionRatio * track : share));
  return [{ stiffness: barRateOf(bar), atStart: 0, row, pushesOnly: false }];
}

/** The weight of a body that leans pulls it further over: a spring of negative stiffness. */
function leaningWeight(car: Car): Elastic {
  const row = [0, 0, 1, 0, 0, 0, 0];
  return { stiffness: -takenByLeaning(car), atStart: 0, row, pushesOnly: false };
}

/** N·m for each rad that the body leans, by which its own weight pulls it further over. */
export function takenByLeaning(car: Car): number {
  const sprung = sprungMassOf(car);
  const share = frontShareOf(sprung, car.wheelbase);
  const { front, rear } = car;
  const axis =
    share * front.geometry.rollCentreHeight + (1 - share) * rear.geometry.rollCentreHeight;
  return sprung.mass * GRAVITY * (sprung.height - axis); // ms·g·d
}
