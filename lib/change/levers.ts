import type { Axle, Car, CarLever } from "../car/car.js";
import type { Sides } from "../load/wheels.js";
import type { ParameterKey } from "../parameters.js";
import type { EndLever } from "./change.js";

/** Where a lever of an axle finds its value, and how it sets another. */
export interface EndLens {
  /** Row of the parameter table: name, unit, decimals. */
  readonly parameter: ParameterKey;
  /** Whether left and right can differ. */
  readonly perSide: boolean;
  readonly get: (axle: Axle) => Sides<number>;
  readonly set: (axle: Axle, value: Sides<number>) => Axle;
}

/** Where a lever of the whole car finds its value, and how it sets another. */
export interface CarLens {
  readonly parameter: ParameterKey;
  readonly get: (car: Car) => number | undefined;
  readonly set: (car: Car, value: number) => Car;
}

function onBothSides(
  parameter: ParameterKey,
  get: (axle: Axle) => number,
  set: (axle: Axle, value: number) => Axle,
): EndLens {
  return {
    parameter,
    perSide: false,
    get: (axle) => ({ left: get(axle), right: get(axle) }),
    set: (axle, { left }) => set(axle, left),
  };
}

function perSide(parameter: ParameterKey, get: EndLens["get"], set: EndLens["set"]): EndLens {
  return { parameter, perSide: true, get, set };
}

/** Every lever of an axle. */
export const endLenses: Readonly<Record<EndLever, EndLens>> = {
  springRate: onBothSides(
    "springRate",
    ({ spring }) => spring.rate,
    (axle, rate) => ({ ...axle, spring: { ...axle.spring, rate } }),
  ),
  barPosition: onBothSides(
    "barPosition",
    ({ bar }) => bar?.position ?? 1,
    (axle, position) => (axle.bar ? { ...axle, bar: { ...axle.bar, position } } : axle),
  ),
  seatTurns: perSide(
    "seatTurns",
    ({ spring }) => spring.seatTurns,
    (axle, seatTurns) => ({ ...axle, spring: { ...axle.spring, seatTurns } }),
  ),
  tyrePressure: perSide(
    "tyrePressure",
    ({ tyre }) => tyre.pressure,
    (axle, pressure) => ({ ...axle, tyre: { ...axle.tyre, pressure } }),
  ),
  camber: perSide(
    "camber",
    ({ camber }) => camber,
    (axle, camber) => ({ ...axle, camber }),
  ),
  toe: perSide(
    "toe",
    ({ toe }) => toe,
    (axle, toe) => ({ ...axle, toe }),
  ),
  rollCentreHeight: onBothSides(
    "rollCentreHeight",
    ({ geometry }) => geometry.rollCentreHeight,
    (axle, rollCentreHeight) => ({ ...axle, geometry: { ...axle.geometry, rollCentreHeight } }),
  ),
  damperBump: onBothSides(
    "damperBump",
    ({ damper }) => damper.bump,
    (axle, bump) => ({ ...axle, damper: { ...axle.damper, bump } }),
  ),
  damperRebound: onBothSides(
    "damperRebound",
    ({ damper }) => damper.rebound,
    (axle, rebound) => ({ ...axle, damper: { ...axle.damper, rebound } }),
  ),
};

/** Every lever of the whole car. */
export const carLenses: Readonly<Record<CarLever, CarLens>> = {
  brakeFrontShare: {
    parameter: "brakeFrontShare",
    get: (car) => car.brakeFrontShare,
    set: (car, brakeFrontShare) => ({ ...car, brakeFrontShare }),
  },
  driver: placed("driver"),
  passenger: placed("passenger"),
  fuel: placed("fuel"),
  ballast: placed("ballast"),
};

/** Mass in a place that the file gives. */
function placed(where: "driver" | "passenger" | "fuel" | "ballast"): CarLens {
  return {
    parameter: where,
    get: (car) => car[where]?.mass,
    set: (car, mass) => {
      const place = car[where];
      return place === undefined ? car : { ...car, [where]: { ...place, mass } };
    },
  };
}
