import { parameters } from "../parameters.js";
import { antiRollBarRate } from "../spring/bar.js";
import { DEGREE } from "../units.js";
import type { FirstAxle, FirstCar } from "./first-car-given.js";
import { inQuadrature, type Measured } from "./measured.js";

/** Numbers that nobody measured, by their place: what such cars usually have, and how far that may be off. */
export type Estimates = Readonly<Record<string, Measured>>;

const give = (value: number, spread: number): Measured => ({ value, spread });
const about = (value: number, share: number): Measured => give(value, share * Math.abs(value));
const held = (value: number, min: number, max: number) => Math.min(max, Math.max(min, value));
const rounded = (value: number, step: number) => step * Math.round(value / step);

const BAR_ARM = 0.22; // m
const BAR_LENGTH = 0.7; // of the track
const SEATS = { left: 0.35, middle: 0, right: -0.35 }; // m
const FRONT_DRIVE = { front: give(1, 0), rear: give(0, 0), all: give(0.4, 0.1) };

/** Everything that is taken for a car of which little is known: common practice, no source. */
export function estimatesFor(given: FirstCar): Estimates {
  const [front, rear] = (["front", "rear"] as const).map((end) => axleMasses(given, end));
  const inside = peopleAndFuel(given);
  const wheels = { ...front, ...rear };
  const sprung =
    given.mass - valueIn(wheels, "front.unsprungMass") - valueIn(wheels, "rear.unsprungMass");
  return {
    ...inside,
    ...wheels,
    ...bodyOf(given, { ...inside, ...wheels }),
    ...ofAxle(given.front, "front", (sprung * given.frontShare) / 2),
    ...ofAxle(given.rear, "rear", (sprung * (1 - given.frontShare)) / 2),
    steeringRatio: about(15, 0.17),
    brakeFrontShare: give(0.66, 0.05),
    driveFrontShare: FRONT_DRIVE[given.driven],
  };
}

const valueIn = (estimates: Estimates, path: string) => estimates[path]?.value ?? 0;

const meanHeight = ({ front, rear }: FirstCar) => (front.rideHeight + rear.rideHeight) / 2;

function peopleAndFuel(given: FirstCar): Estimates {
  const { wheelbase, seat } = given;
  const floor = meanHeight(given);
  return {
    "driver.mass": give(80, 12),
    "driver.behindFrontAxle": give(0.56 * wheelbase, 0.15),
    "driver.leftOfCentre": give(SEATS[seat], 0.03),
    "driver.height": give(0.34 + floor, 0.06),
    "fuel.mass": give(25, 12),
    "fuel.behindFrontAxle": give(0.9 * wheelbase, 0.2),
    "fuel.leftOfCentre": give(0, 0.1),
    "fuel.height": give(0.26 + floor, 0.08),
  };
}

function axleMasses({ mass, ...given }: FirstCar, end: "front" | "rear"): Estimates {
  const { kind, tyreRadius } = given[end];
  return {
    [`${end}.unsprungMass`]: about((kind === "beam" ? 0.095 : 0.075) * mass, 0.15),
    [`${end}.unsprungHeight`]: give(0.95 * tyreRadius, 0.012),
  };
}

/** What is left for the body by moments, where the whole car has half its weight on each side. */
function bodyOf(given: FirstCar, others: Estimates): Estimates {
  const { mass, frontShare, wheelbase } = given;
  const parts = ["driver", "fuel"].map((who) => ({
    mass: valueIn(others, `${who}.mass`),
    back: valueIn(others, `${who}.behindFrontAxle`),
    left: valueIn(others, `${who}.leftOfCentre`),
    high: valueIn(others, `${who}.height`),
  }));
  const wheels = ["front", "rear"].map((end) => ({
    mass: valueIn(others, `${end}.unsprungMass`),
    back: end === "front" ? 0 : wheelbase,
    left: 0,
    high: valueIn(others, `${end}.unsprungHeight`),
  }));
  const all = [...parts, ...wheels];
  const body = mass - all.reduce((sum, part) => sum + part.mass, 0);
  const rest = (where: "back" | "left" | "high", whole: number) =>
    (mass * whole - all.reduce((sum, part) => sum + part.mass * part[where], 0)) / body;
  const height = 0.39 + 0.8 * meanHeight(given); // m, of the whole car: lower cars are lower
  return {
    "body.mass": give(body, inQuadrature(0.02 * body, 12, 12)), // scales, driver, fuel
    "body.behindFrontAxle": give(rest("back", (1 - frontShare) * wheelbase), 0.02 * wheelbase),
    "body.leftOfCentre": give(rest("left", 0), 0.025),
    "body.height": give(rest("high", height), (0.045 * mass) / body),
  };
}

/** Springs that let the body bounce as cars of such a ride height do, and what goes with them. */
function ofAxle(given: FirstAxle, end: "front" | "rear", carried: number): Estimates {
  const { kind, track, bar, rideHeight } = given;
  const isBeam = kind === "beam";
  const bounce = (end === "rear" ? 1.1 : 1) * held(2.9 - 10 * rideHeight, 1.2, 2.6); // Hz, on the wheel rate
  const wheelRate = (2 * Math.PI * bounce) ** 2 * carried; // k = (2πf)²·m – Gillespie 1992, ch. 5
  const ratio = isBeam ? 1 : 0.7;
  const critical = (2 * Math.sqrt(wheelRate * carried)) / ratio ** 2;
  const own: Estimates = {
    "spring.rate": about(rounded(wheelRate / ratio ** 2, 1e3), 0.3), // bounce by 15 %
    "spring.motionRatio": about(ratio, 0.12),
    "damper.bump": about(rounded(0.3 * critical, 100), 0.35),
    "damper.rebound": about(rounded(0.55 * critical, 100), 0.35),
    "geometry.bumpTravel": give(rounded(held(0.4 * rideHeight + 0.01, 0.03, 0.12), 1e-3), 0.015),
    "geometry.droopTravel": give(0.06, 0.015),
    ...(isBeam ? ofBeam(given) : ofLinks(end)),
    ...(bar > 0 && {
      "bar.motionRatio": about(0.6, 0.2),
      "bar.positions.0.rate": about(barRate(bar, track), 0.35),
    }),
    ...ofWheels(isBeam && end === "rear"),
  };
  return Object.fromEntries(Object.entries(own).map(([name, one]) => [`${end}.${name}`, one]));
}

const ofBeam = ({ track, tyreRadius }: FirstAxle): Estimates => ({
  "spring.spacing": about(rounded(0.75 * track, 0.01), 0.06),
  "geometry.rollCentreHeight": give(rounded(0.85 * tyreRadius, 5e-3), 0.05),
  "geometry.rollSteer": give(0, 0.04),
});

const ofLinks = (end: "front" | "rear"): Estimates => ({
  "geometry.rollCentreHeight": give(end === "front" ? 0.05 : 0.08, 0.04),
  "geometry.rollCentreMigration": give(-1.2, 0.6),
  "geometry.camberGain": give(-20 * DEGREE, 8 * DEGREE),
  "geometry.toeGain": give(0, 3 * DEGREE),
});

const ofWheels = (isRearBeam: boolean): Estimates => ({
  "camber.left": give((isRearBeam ? -0.5 : -1) * DEGREE, 0.6 * DEGREE),
  "camber.right": give((isRearBeam ? -0.5 : -1) * DEGREE, 0.6 * DEGREE),
  "toe.left": give(0, 0.15 * DEGREE),
  "toe.right": give(0, 0.15 * DEGREE),
  "tyre.grip": give(1, 0.05),
  "tyre.loadSensitivity": give(1, 0.3),
  "tyre.stiffness": give(1, 0.25),
});

/** N/m of a solid bar of the usual arms and length. */
const barRate = (diameter: number, track: number) =>
  Math.min(
    parameters.barRate.max,
    rounded(antiRollBarRate({ diameter, length: BAR_LENGTH * track, armLength: BAR_ARM }), 100),
  );
