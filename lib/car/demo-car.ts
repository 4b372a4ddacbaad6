import { fromHandy } from "../units.js";
import type { Axle, Car } from "./car.js";

const degrees = (value: number) => fromHandy("angle", value);
const both = (value: number) => ({ left: value, right: value });

const front: Axle = {
  track: 1.44,
  rideHeight: 0.13,
  unsprungMass: 75,
  unsprungHeight: 0.29,
  spring: {
    rate: 60e3,
    motionRatio: 0.65,
    seatTurns: both(0),
    seatTravelPerTurn: 1.5e-3,
  },
  bar: {
    motionRatio: 0.6,
    positions: [{ rate: 0 }, { rate: 14e3 }, { rate: 22e3 }, { rate: 32e3 }, { rate: 46e3 }],
    position: 3,
  },
  damper: { bump: 3200, rebound: 5600 },
  geometry: {
    rollCentreHeight: 0.05,
    rollCentreMigration: -1.2,
    camberGain: degrees(-22),
    toeGain: degrees(-3),
    bumpTravel: 0.06,
    droopTravel: 0.06,
  },
  camber: both(degrees(-1.5)),
  toe: both(0),
  tyre: { name: "club", pressure: both(200e3) },
  adjusters: {
    springRate: { min: 40e3, max: 90e3, step: 5e3 },
    seatTurns: { min: -10, max: 10, step: 0.5 },
    tyrePressure: { min: 150e3, max: 250e3, step: 5e3 },
    camber: { min: degrees(-3.5), max: degrees(-0.5), step: degrees(0.25) },
    toe: { min: degrees(-0.3), max: degrees(0.3), step: degrees(0.05) },
    rollCentreHeight: { min: 0.02, max: 0.08, step: 0.01 },
    damperBump: { min: 1600, max: 5600, step: 400 },
    damperRebound: { min: 3200, max: 8800, step: 400 },
  },
};

const rear: Axle = {
  track: 1.45,
  rideHeight: 0.14,
  unsprungMass: 85,
  unsprungHeight: 0.29,
  spring: {
    rate: 50e3,
    motionRatio: 0.75,
    seatTurns: both(0),
    seatTravelPerTurn: 1.5e-3,
  },
  bar: {
    motionRatio: 0.6,
    positions: [{ rate: 0 }, { rate: 5e3 }, { rate: 12e3 }, { rate: 36e3 }],
    position: 2,
  },
  damper: { bump: 2800, rebound: 4800 },
  differential: { kind: "open" },
  geometry: {
    rollCentreHeight: 0.09,
    rollCentreMigration: -1.1,
    camberGain: degrees(-18),
    toeGain: degrees(2),
    bumpTravel: 0.065,
    droopTravel: 0.065,
  },
  camber: both(degrees(-1.25)),
  toe: both(degrees(0.1)),
  tyre: { name: "club", pressure: both(200e3) },
  adjusters: {
    springRate: { min: 35e3, max: 80e3, step: 5e3 },
    seatTurns: { min: -10, max: 10, step: 0.5 },
    tyrePressure: { min: 150e3, max: 250e3, step: 5e3 },
    camber: { min: degrees(-3), max: degrees(-0.25), step: degrees(0.25) },
    toe: { min: degrees(-0.1), max: degrees(0.4), step: degrees(0.05) },
    rollCentreHeight: { min: 0.06, max: 0.12, step: 0.01 },
    damperBump: { min: 1600, max: 5200, step: 400 },
    damperRebound: { min: 2800, max: 8000, step: 400 },
  },
};

/** The workbook's own car: an invented light club car, engine in front, driven at the rear. */
export const demoCar: Car = {
  name: "Pipit",
  notes: "Invented for this workbook: a light club car, engine in front, driven at the rear.",
  wheelbase: 2.4,
  body: { mass: 810, behindFrontAxle: 1.07, leftOfCentre: -0.03, height: 0.54 },
  driver: { mass: 80, behindFrontAxle: 1.35, leftOfCentre: 0.35, height: 0.48 },
  passenger: { mass: 0, behindFrontAxle: 1.35, leftOfCentre: -0.35, height: 0.48 },
  fuel: { mass: 30, behindFrontAxle: 2.2, leftOfCentre: 0, height: 0.4 },
  ballast: { mass: 0, behindFrontAxle: 2.3, leftOfCentre: 0, height: 0.35 },
  inertia: { roll: 350, pitch: 1250, yaw: 1400 },
  steeringRatio: 15,
  brakeFrontShare: 0.66,
  driveFrontShare: 0,
  front,
  rear,
  limits: {
    leastRideHeight: 0.11,
    leastPressure: 150e3,
    greatestPressure: 260e3,
    leastCamber: degrees(-3.5),
    leastMass: 1040,
  },
  adjusters: {
    brakeFrontShare: { min: 0.56, max: 0.76, step: 0.02 },
    driver: { min: 50, max: 120, step: 10 },
    passenger: { min: 0, max: 120, step: 80 },
    fuel: { min: 5, max: 45, step: 5 },
    ballast: { min: 0, max: 60, step: 5 },
  },
};
