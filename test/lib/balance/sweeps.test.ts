import { describe, expect, test } from "vitest";
import { type CarBalance, carBalance } from "../../../lib/balance/car-balance.js";
import type { HandlingAxle, HandlingCar } from "../../../lib/balance/handling-car.js";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { phases } from "../../../lib/balance/phases.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { someCars } from "./cars.js";

type End = "front" | "rear";
type Move = (car: HandlingCar, share: number) => HandlingCar;

const both = <T>(value: T) => ({ left: value, right: value });
const onAxle =
  (end: End, change: (axle: HandlingAxle, share: number) => Partial<HandlingAxle>): Move =>
  (car, share) => ({ ...car, [end]: { ...car[end], ...change(car[end], share) } });

/** What a lever does to an axle as it goes from one end (0) to the other (1). */
const axleLevers: Readonly<
  Record<string, (axle: HandlingAxle, share: number) => Partial<HandlingAxle>>
> = {
  bar: (axle, share) => ({ rollStiffness: axle.rollStiffness * (0.7 + 0.8 * share) }),
  springs: (axle, share) => ({
    wheelRate: axle.wheelRate * (0.7 + 0.6 * share),
    rollStiffness: axle.rollStiffness * (0.8 + 0.4 * share),
  }),
  camber: (_, share) => ({ camber: both(-0.06 + 0.07 * share) }),
  toe: (_, share) => ({ toe: both(-0.008 + 0.016 * share) }),
  pressure: (_, share) => ({ pressure: both(150e3 + 100e3 * share) }),
  "roll centre": (axle, share) => ({ rollCentreHeight: axle.rollCentreHeight + 0.1 * share }),
};

const carLevers: Readonly<Record<string, Move>> = {
  "brake share": (car, share) => ({ ...car, brakeFrontShare: 0.5 + 0.3 * share }),
  mass: (car, share) => ({ ...car, sprungMass: car.sprungMass * (0.9 + 0.2 * share) }),
  "mass along": (car, share) => ({
    ...car,
    sprungFrontShare: car.sprungFrontShare - 0.03 + 0.06 * share,
  }),
};

const levers: [string, Move][] = [
  ...(["front", "rear"] as const).flatMap((end) =>
    Object.entries(axleLevers).map(([name, of]): [string, Move] => [
      `${end} ${name}`,
      onAxle(end, of),
    ]),
  ),
  ...Object.entries(carLevers),
];

const STEPS = 8;

/** Balance at each place of a lever, each found from the one before. */
function sweep(car: HandlingCar, move: Move, phase: object, down = false): CarBalance[] {
  const found: CarBalance[] = [];
  for (let i = 0; i <= STEPS; i++) {
    const share = (down ? STEPS - i : i) / STEPS;
    found.push(carBalance(move(car, share), { speed: 25, ...phase }, found.at(-1)));
  }
  return down ? found.reverse() : found;
}

/** The greatest differences between a lever moved up and the same moved down, m/s². */
function apart(car: HandlingCar, move: Move, phase: object) {
  const [up, down] = [sweep(car, move, phase), sweep(car, move, phase, true)];
  const most = (of: (balance: CarBalance) => number) =>
    Math.max(...up.map((one, i) => Math.abs(of(one) - of(down[i] as CarBalance))));
  return {
    margin: most(({ understeerMargin }) => understeerMargin),
    turn: most(({ lateralAcceleration }) => lateralAcceleration),
  };
}

const cars = { demo: handlingCarOf(demoCar), one: someCars(1, 31)[0] as HandlingCar };

// 15 levers × 9 places × 2 ways: each phase once over the two cars
describe.each([
  ["braking in", "demo"],
  ["turn-in", "one"],
  ["middle", "demo"],
  ["power on", "one"],
] as const)("%s of car %s", (phase, name) => {
  test.each(levers)("has the same balance with %s moved up as moved down", (_, move) => {
    const { margin, turn } = apart(cars[name], move, phases[phase]);
    expect(margin).toBeLessThan(0.01);
    expect(turn).toBeLessThan(0.01);
  });
});
