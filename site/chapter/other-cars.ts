import type { Axle, Car } from "../../lib/car/car.js";
import { demoCar } from "../../lib/car/demo-car.js";
import { fromShown } from "../say/units.js";

/**
 * Invented cars that a reader might have instead of the workbook's own, far from it in mass, size,
 * balance and in what their files leave out.
 */
const degrees = (value: number) => fromShown("angle", value);
const both = (value: number) => ({ left: value, right: value });

const lightAxle: Axle = {
  track: 1.3,
  rideHeight: 0.1,
  unsprungMass: 48,
  unsprungHeight: 0.27,
  spring: { rate: 32e3, motionRatio: 0.8, seatTurns: both(0), seatTravelPerTurn: 2e-3 },
  damper: { bump: 1500, rebound: 2500 },
  geometry: { rollCentreHeight: 0.03, camberGain: degrees(-25) },
  camber: both(degrees(-2)),
  toe: both(0),
  tyre: { name: "club", pressure: both(150e3) },
};

/** 700 kg with its driver, engine behind, hardly any file: no bars, no limits, no adjusters. */
const light: Car = {
  name: "Wren",
  wheelbase: 2.25,
  body: { mass: 525, behindFrontAxle: 1.25, leftOfCentre: 0, height: 0.45 },
  driver: { mass: 75, behindFrontAxle: 1.1, leftOfCentre: 0.3, height: 0.4 },
  steeringRatio: 12,
  brakeFrontShare: 0.58,
  driveFrontShare: 0,
  front: lightAxle,
  rear: { ...lightAxle, unsprungMass: 52, spring: { ...lightAxle.spring, rate: 40e3 } },
};

const { adjusters: _, ...withoutAdjusters } = demoCar.front;

const heavyAxle: Axle = {
  ...withoutAdjusters,
  track: 1.62,
  rideHeight: 0.16,
  unsprungMass: 110,
  unsprungHeight: 0.33,
  spring: { rate: 95e3, motionRatio: 0.72, seatTurns: both(0), seatTravelPerTurn: 1.5e-3 },
  bar: {
    motionRatio: 0.8,
    positions: [{ armLength: 0.3 }, { armLength: 0.25 }],
    position: 1,
    tube: { diameter: 0.026, length: 1.0 },
  },
  damper: { bump: 4500, rebound: 8000 },
  tyre: { name: "published road", pressure: both(240e3) },
};

/** 1800 kg, front drive, beam axle at the rear, tall. */
const heavy: Car = {
  name: "Bustard",
  wheelbase: 2.85,
  body: { mass: 1450, behindFrontAxle: 1.2, leftOfCentre: 0, height: 0.62 },
  driver: { mass: 95, behindFrontAxle: 1.5, leftOfCentre: -0.38, height: 0.6 },
  fuel: { mass: 45, behindFrontAxle: 2.4, leftOfCentre: 0, height: 0.4 },
  steeringRatio: 16,
  brakeFrontShare: 0.72,
  driveFrontShare: 1,
  front: heavyAxle,
  rear: {
    ...heavyAxle,
    unsprungMass: 100,
    spring: { ...heavyAxle.spring, rate: 60e3, motionRatio: 0.95, spacing: 1.1 },
    bar: { motionRatio: 0.8, positions: [{ rate: 0 }, { rate: 30e3 }], position: 2 },
    geometry: { rollCentreHeight: 0.22, bumpTravel: 0.08, droopTravel: 0.09 },
    camber: both(degrees(-1)),
  },
  limits: { leastRideHeight: 0.12, leastMass: 1750 },
};

/** 1250 kg, the workbook's car grown: stiff, with weights of its own, driven at all wheels. */
const middle: Car = {
  ...demoCar,
  name: "Harrier",
  wheelbase: 2.55,
  body: { mass: 930, behindFrontAxle: 1.05, leftOfCentre: 0.02, height: 0.5 },
  driveFrontShare: 0.4,
  front: {
    ...demoCar.front,
    track: 1.52,
    unsprungMass: 95,
    spring: { ...demoCar.front.spring, rate: 110e3 },
    adjusters: { ...demoCar.front.adjusters, springRate: { min: 80e3, max: 140e3, step: 10e3 } },
    tyre: { name: "club", pressure: both(220e3) },
  },
  rear: {
    ...demoCar.rear,
    track: 1.54,
    unsprungMass: 100,
    spring: { ...demoCar.rear.spring, rate: 90e3 },
    adjusters: { ...demoCar.rear.adjusters, springRate: { min: 60e3, max: 120e3, step: 10e3 } },
    tyre: { name: "club", pressure: { left: 205e3, right: 215e3 } },
  },
};

export const otherCars: readonly Car[] = [light, middle, heavy];
