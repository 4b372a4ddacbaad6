import { balanceMap } from "../../lib/balance/balance-map.js";
import { type CarBalance, carBalance } from "../../lib/balance/car-balance.js";
import type { HandlingCar } from "../../lib/balance/handling-car.js";
import { handlingCarOf } from "../../lib/balance/handling-car-of.js";
import { demoCar } from "../../lib/car/demo-car.js";

const car = handlingCarOf(demoCar);
const driving = { speed: 25 };

/** The demo car with both roll stiffnesses moved, x and y from 0 to 1. */
function carAt(x: number, y: number): HandlingCar {
  return {
    ...car,
    front: { ...car.front, rollStiffness: 20e3 + 30e3 * x },
    rear: { ...car.rear, rollStiffness: 15e3 + 25e3 * y },
  };
}

/** Least and middle time of one run, ms, after a warm-up. */
function timed(runs: number, work: () => void): { least: number; middle: number } {
  for (let i = 0; i < runs / 4; i++) work();
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return { least: times[0] ?? 0, middle: times[runs >> 1] ?? 0 };
}

function row(
  name: string,
  unit: string,
  scale: number,
  { least, middle }: ReturnType<typeof timed>,
) {
  const shown = (ms: number) => (ms * scale).toFixed(2).padStart(8);
  console.log(`${name.padEnd(44)}${shown(least)} ${shown(middle)}  ${unit}`);
}

const BATCH = 1000;
let warm: CarBalance = carBalance(car, driving);
console.log(`${"".padEnd(44)}   least   middle`);
row(
  "limit balance of both axles, warm",
  "µs",
  1000 / BATCH,
  timed(60, () => {
    for (let i = 0; i < BATCH; i++) warm = carBalance(carAt((i % 64) / 63, 0.5), driving, warm);
  }),
);
row(
  "limit balance of both axles, cold",
  "µs",
  1000 / BATCH,
  timed(60, () => {
    for (let i = 0; i < BATCH; i++) carBalance(carAt((i % 64) / 63, 0.5), driving);
  }),
);
const powered = { speed: 25, longitudinalAcceleration: 2 };
row(
  "the same while driving out of the corner, warm",
  "µs",
  1000 / BATCH,
  timed(20, () => {
    for (let i = 0; i < BATCH; i++) warm = carBalance(carAt((i % 64) / 63, 0.5), powered, warm);
  }),
);
row(
  "map of 64 × 64 balances",
  "ms",
  1,
  timed(60, () => void balanceMap(carAt, driving)),
);
