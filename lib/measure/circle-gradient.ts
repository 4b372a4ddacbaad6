import type { Car } from "../car/car.js";
import { Refusal } from "../refusal.js";
import { accelerationOfLap, type Circle, stopwatchSpread } from "./circle.js";
import { curveThrough } from "./curve.js";
import { inQuadrature, type Measured } from "./measured.js";

/** A lap at a steady speed, and how far the steering wheel was turned on it. */
export interface SteadyLap {
  /** s */
  readonly time: number;
  /** rad at the steering wheel's rim, above 0 into the turn */
  readonly rim: number;
}

/** How much more a driver has to steer the harder the car turns on one circle. */
export interface CircleGradient {
  /** rad of the road wheels for each m/s²: above 0 understeer, below 0 oversteer */
  readonly gradient: Measured;
  /** rim over road wheels, from the steering that is left at no speed; nothing where it says none */
  readonly steeringRatio?: Measured;
  /** Laps that counted: those of the even part. */
  readonly laps: number;
  /** How often chance alone makes the laps lie so far off a straight line, 0–1. */
  readonly byChance: number;
}

/** Up to where tyres answer in proportion, m/s²: common practice, no source. */
export const EVEN_PART = 4;

/**
 * Understeer gradient on a circle of one radius: the slope of the steering angle over lateral
 * acceleration, below 4 m/s² where three laps lie there, else of all; and the steering ratio, since a
 * slow car needs L/R of its road wheels.
 *
 * @param tape - rad, standard uncertainty of one reading of the rim
 * @throws Refusal for fewer than three laps, or laps that are all as fast as each other
 * @see ISO 4138:2021, constant-radius test
 */
export function circleGradient(
  { wheelbase, steeringRatio }: Pick<Car, "wheelbase" | "steeringRatio">,
  circle: Circle,
  laps: readonly SteadyLap[],
  tape: number,
): CircleGradient {
  if (laps.length < 3)
    throw new Refusal("too-few-samples", "A gradient needs three steady laps at least.");
  const radius = circle.radius.value;
  const turns = laps.map((lap) => ({ ...lap, at: accelerationOfLap(radius, lap.time) }));
  const even = turns.filter(({ at }) => at <= EVEN_PART);
  const used = even.length >= 3 ? even : turns;
  const rough = slopeOf(used.map(({ at, rim }) => ({ at, read: { value: rim, spread: tape } })));
  const fit = slopeOf(
    used.map(({ at, rim, time }) => ({
      at,
      // what the stopwatch is off moves a lap along the line, which counts as steering
      read: {
        value: rim,
        spread: inQuadrature(tape, rough.slope.value * stopwatchSpread(circle, time)),
      },
    })),
  );
  const { value, spread } = fit.slope;
  const ofRadius = (value * circle.radius.spread) / radius;
  return {
    gradient: {
      value: value / steeringRatio,
      spread: inQuadrature(spread, ofRadius) / steeringRatio,
    },
    ...ratioFrom(fit.start, wheelbase / radius, circle),
    laps: used.length,
    byChance: fit.byChance,
  };
}

function slopeOf(readings: Parameters<typeof curveThrough>[0]) {
  const { found, byChance } = curveThrough(readings, 1);
  const none = { value: 0, spread: 0 };
  return { start: found[0] ?? none, slope: found[1] ?? none, byChance };
}

const LEAST_RATIO = 5;
const GREATEST_RATIO = 30;

/** The steering ratio, where what is left at no speed is one that cars have. */
function ratioFrom(start: Measured, turned: number, { radius }: Circle) {
  const value = start.value / turned;
  if (!(value >= LEAST_RATIO && value <= GREATEST_RATIO)) return {};
  const spread = value * inQuadrature(start.spread / start.value, radius.spread / radius.value);
  return { steeringRatio: { value, spread } };
}
