import type { Adjuster, Car, Certainty } from "../car/car.js";
import { type Content, numberAt, withValueAtPlace } from "../car/file/place.js";
import { parameters } from "../parameters.js";
import { estimatesFor } from "./estimates.js";
import type { FirstAxle, FirstCar } from "./first-car-given.js";

/**
 * A whole car from what anybody can read of it in ten minutes. All else is what such cars usually have
 * (common practice, no source), marked as estimated, each number with its spread.
 *
 * The tyre is the workbook's club tyre; springs and pressures can be adjusted about where they are.
 * It is to be read as a car file is: that tells what of it is out of its range.
 *
 * @throws Refusal when a bar is none
 */
export function firstCar(given: FirstCar): Content {
  const estimates = Object.entries(estimatesFor(given));
  const begun: Content = {
    name: given.name,
    wheelbase: given.wheelbase,
    front: begunAxle(given.front),
    rear: begunAxle(given.rear),
  };
  const whole = estimates.reduce(
    (car, [path, { value }]) => withValueAtPlace(car, path, inSix(value)),
    begun,
  );
  const car = (["front", "rear"] as const).reduce(withAdjusters, whole);
  const entries = estimates
    .filter(([path, { spread }]) => spread > 0 && numberAt(car, path) !== undefined)
    .map(([path, { spread }]) => [path, { how: "estimated", spread: inThree(spread) }]);
  return { ...car, known: { ...Object.fromEntries(entries), ...readOff } };
}

const inSix = (value: number) => Number(value.toPrecision(6));
const inThree = (value: number) => Number(value.toPrecision(3));

/** What was read off the car: with the usual spread of tape and gauge. */
const readOff: Readonly<Record<string, Certainty>> = Object.fromEntries(
  [
    "wheelbase",
    ...["front", "rear"].flatMap((end) =>
      ["track", "rideHeight", "tyre.pressure.left", "tyre.pressure.right"].map(
        (name) => `${end}.${name}`,
      ),
    ),
  ].map((path) => [path, { how: "measured" }]),
);

const both = <T>(value: T) => ({ left: value, right: value });

function begunAxle({ track, rideHeight, pressure, bar }: FirstAxle): Content {
  return {
    track,
    rideHeight,
    spring: { seatTurns: both(0), seatTravelPerTurn: 1.5e-3 },
    ...(bar > 0 && { bar: { positions: [{}], position: 1 } }),
    geometry: {},
    tyre: { name: "club", pressure: both(pressure) },
  };
}

function withAdjusters(car: Content, end: "front" | "rear"): Content {
  const rate = numberAt(car, `${end}.spring.rate`)?.value ?? 0;
  const pressure = numberAt(car, `${end}.tyre.pressure.left`)?.value ?? 0;
  return withValueAtPlace(car, `${end}.adjusters`, {
    springRate: around(rate, 0.3 * rate, 1e3, parameters.springRate),
    tyrePressure: around(pressure, 30e3, 5e3, parameters.tyrePressure),
  } satisfies Car["front"]["adjusters"]);
}

/** Three steps each way. */
function around(
  value: number,
  reach: number,
  grain: number,
  { min, max }: { readonly min: number; readonly max: number },
): Adjuster {
  const step = Math.max(grain, grain * Math.round(reach / 3 / grain));
  return { min: Math.max(min, value - 3 * step), max: Math.min(max, value + 3 * step), step };
}

/** m of a tyre without load from what its side says: width (mm), height (% of that), rim (inches). */
export function tyreRadiusOf(size: {
  readonly width: number;
  readonly aspect: number;
  readonly rim: number;
}): number {
  return (size.rim * 0.0254) / 2 + (size.width / 1000) * (size.aspect / 100); // ISO 4000-1, from memory
}
