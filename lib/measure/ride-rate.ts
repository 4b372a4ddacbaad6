import { tyreStiffnessOf } from "../car/axle.js";
import type { Axle, Car } from "../car/car.js";
import { axleWeightsOf } from "../car/masses.js";
import { Refusal } from "../refusal.js";
import { GRAVITY } from "../units.js";
import { curveThrough } from "./curve.js";
import type { Measured } from "./measured.js";
import { type Propagated, throughCar } from "./through.js";

/** A load put on over an axle, and how far the body came down there. */
export interface LoadStep {
  /** kg beyond the car as it stood first */
  readonly added: number;
  /** m that the body came down at the axle, mean of both sides */
  readonly fall: Measured;
}

/** How stiff an axle stands on its road. */
export interface RideRate {
  /** N/m at each wheel, spring and tyre in series */
  readonly rate: Measured;
  /** N/m at each wheel without the tyre; nothing where the tyre alone would be softer */
  readonly wheelRate?: Propagated;
  /** motion ratio that spring rate and wheel rate ask for; with `wheelRate` */
  readonly motionRatio?: Propagated;
  /** N/m of each spring that motion ratio and wheel rate ask for; with `wheelRate` */
  readonly springRate?: Propagated;
  /** how far rate and motion ratio of the file are from that, in spreads of both; with `wheelRate` */
  readonly misfit?: number;
  /** How often chance alone makes the steps lie so far off a straight line, 0–1. */
  readonly byChance: number;
}

/**
 * Ride rate of an axle from known loads over it and the fall of the body, and what it says of spring
 * and motion ratio.
 *
 * The fall against load is a straight line, the car as it stood first being one of its points: both
 * wheels' rates carry the load, k = m·g/(2·fall). Taking the tyre off that leaves the wheel rate, to
 * be held against spring rate × motion ratio². The bar does not count: both wheels move alike.
 *
 * @throws Refusal for fewer than one load, or where the body did not come down
 */
export function rideRateByBallast(
  car: Car,
  end: "front" | "rear",
  steps: readonly LoadStep[],
): RideRate {
  const { rate, byChance } = rateOf(steps);
  const load = axleWeightsOf(car)[end] / 2;
  if (tyreStiffnessOf(car[end], load) <= (rate.value + rate.spread) * 1.01)
    return { rate, byChance };
  const bears = (path: string) => path === `${end}.tyre.stiffness` || path === "tyre.stiffness";
  const found = throughCar(car, { rate }, bears, (car, { rate }) => ({
    wheelRate: 1 / (1 / rate - 1 / tyreStiffnessOf(car[end], load)), // series law
  }));
  const { wheelRate } = found;
  const ofSpring = (path: string) =>
    new RegExp(`^${end}\\.spring\\.(rate|motionRatio)$`).test(path);
  const { motionRatio } = throughCar(
    car,
    { wheelRate },
    (path) => path === `${end}.spring.rate`,
    ({ [end]: { spring } }, values) => ({ motionRatio: Math.sqrt(values.wheelRate / spring.rate) }),
  );
  const { springRate } = throughCar(
    car,
    { wheelRate },
    (path) => path === `${end}.spring.motionRatio`,
    (car, values) => ({ springRate: values.wheelRate / car[end].spring.motionRatio ** 2 }),
  );
  const { differs } = throughCar(car, { wheelRate }, ofSpring, ({ [end]: axle }, values) => ({
    differs: wheelRateIn(axle) - values.wheelRate,
  }));
  const misfit = differs.spread === 0 ? 0 : differs.value / differs.spread;
  return { rate, wheelRate, motionRatio, springRate, misfit, byChance };
}

const wheelRateIn = ({ spring }: Axle) => spring.rate * spring.motionRatio ** 2;

function rateOf(steps: readonly LoadStep[]): { rate: Measured; byChance: number } {
  const first = Math.min(...steps.map(({ fall }) => fall.spread));
  const readings = [
    { at: 0, read: { value: 0, spread: first } },
    ...steps.map(({ added, fall }) => ({ at: added * GRAVITY, read: fall })),
  ];
  const { found, byChance } = curveThrough(readings, 1);
  const [, fallPerForce = { value: 0, spread: 0 }] = found;
  if (!(fallPerForce.value > 2 * fallPerForce.spread))
    throw new Refusal(
      "not-determined",
      "The body did not come down by more than its readings are off.",
    );
  const value = 1 / (2 * fallPerForce.value);
  return { rate: { value, spread: (value * fallPerForce.spread) / fallPerForce.value }, byChance };
}
