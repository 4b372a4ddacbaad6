import { execFileSync } from "node:child_process";
import { type CarBalance, carBalance } from "../../lib/balance/car-balance.js";
import { handlingCarOf } from "../../lib/balance/handling-car-of.js";
import { demoCar } from "../../lib/car/demo-car.js";
import { inRoot } from "../build/paths.js";
import { quantile, type Row } from "./row.js";

const car = handlingCarOf(demoCar);
const driving = { speed: 25 };
const SOLVES = 1000;

/** µs of one limit balance that starts from that of a car with another front roll stiffness. */
function warmBalance(): number {
  let balance: CarBalance = carBalance(car, driving);
  const batch = () => {
    const started = performance.now();
    for (let i = 0; i < SOLVES; i++) {
      const rollStiffness = 20e3 + (30e3 * (i % 64)) / 63;
      balance = carBalance({ ...car, front: { ...car.front, rollStiffness } }, driving, balance);
    }
    return (1000 * (performance.now() - started)) / SOLVES;
  };
  const batches = Array.from({ length: 80 }, batch).slice(20); // the first ones warm up the engine
  return quantile(batches, 0.5);
}

const firstReport = (): number =>
  Number(execFileSync(process.execPath, ["--import", "tsx", inRoot("site/bench/first-report.ts")]));

/** The model by itself, in Node. */
export function solverTimes(): Row[] {
  const reports = Array.from({ length: 5 }, firstReport);
  return [
    { what: "limit balance of both axles, warm", value: warmBalance(), most: 5, unit: "µs" },
    {
      what: "set-up report, first in its process",
      value: quantile(reports, 0.5),
      most: 150,
      unit: "ms",
    },
  ];
}
