import { barRateOf } from "../car/axle.js";
import type { Axle, Car } from "../car/car.js";
import { frontShareOf, sprungMassOf } from "../car/masses.js";
import { tyreNamed } from "../car/tyres.js";
import type { Sides } from "../load/wheels.js";
import { GRAVITY } from "../units.js";
import { measuredLoadsOf } from "./measured-loads.js";

/**
 * Something elastic: it pushes back with stiffness × deflection, and its deflection follows the
 * position of the car: deflection = atStart + row · position.
 *
 * The position is seven changes from the measured state: heave of the body at half the wheelbase
 * (m, > 0 up), pitch (rad, > 0 nose down), roll (rad, > 0 right side down), and the rise of the
 * wheels front left, front right, rear left, rear right (m).
 */
export interface Elastic {
  readonly stiffness: number;
  readonly atStart: number;
  readonly row: readonly number[];
  /** A tyre only pushes: without deflection it is off the ground. */
  readonly pushesOnly: boolean;
}

/** Which end of the car: where its axle is, and which of the seven changes its wheels are. */
export interface End {
  readonly name: "front" | "rear";
  readonly behindFrontAxle: number;
  readonly leftWheel: number;
}

/** Both ends of a car. */
export function endsOf({ wheelbase }: Car): readonly [End, End] {
  return [
    { name: "front", behindFrontAxle: 0, leftWheel: 3 },
    { name: "rear", behindFrontAxle: wheelbase, leftWheel: 5 },
  ];
}

/** Rise of a point of the body, as a row over the seven changes. */
export function bodyRow(car: Car, behindFrontAxle: number, leftOfCentre: number): number[] {
  return [1, behindFrontAxle - car.wheelbase / 2, leftOfCentre, 0, 0, 0, 0];
}

/** Rise of the left and right wheel mixed by their shares, as a row over the seven changes. */
export function wheelRow({ leftWheel }: End, left: number, right: number): number[] {
  return [0, 0, 0, 0, 0, 0, 0].map((_, i) =>
    i === leftWheel ? left : i === leftWheel + 1 ? right : 0,
  );
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

/** Vertical stiffness of one tyre at its pressure, N/m. */
function tyreStiffness({ tyre }: Axle, side: "left" | "right"): number {
  return tyreNamed(tyre.name).verticalStiffness({ load: 0, pressure: tyre.pressure[side] });
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
  const sprung = sprungMassOf(car);
  const share = frontShareOf(sprung, car.wheelbase);
  const { front, rear } = car;
  const axis =
    share * front.geometry.rollCentreHeight + (1 - share) * rear.geometry.rollCentreHeight;
  const stiffness = -sprung.mass * GRAVITY * (sprung.height - axis); // −ms·g·d
  return { stiffness, atStart: 0, row: [0, 0, 1, 0, 0, 0, 0], pushesOnly: false };
}
