import { execFileSync } from "node:child_process";
import { type CarBalance, carBalance } from "../../lib/balance/car-balance.js";
import { handlingCarOf } from "../../lib/balance/handling-car-of.js";
import { phaseNames, phases } from "../../lib/balance/phases.js";
import { standingCar } from "../../lib/balance/standing-car.js";
import { demoCar } from "../../lib/car/demo-car.js";
import { changeTable } from "../../lib/change/table.js";
import { inRoot } from "../build/paths.js";
import { quantile, type Row } from "./row.js";

const car = handlingCarOf(demoCar);
const drivings = phaseNames.map((name) => ({ speed: 25, ...phases[name] }));
const STIFFNESSES = 64;
const cars = Array.from({ length: STIFFNESSES }, (_, i) => {
  const rollStiffness = 20e3 + (30e3 * i) / (STIFFNESSES - 1);
  return { ...car, front: { ...car.front, rollStiffness } };
});

/** The middle of many sweeps, once the engine is warm, ms for one balance. */
function perBalance(sweep: () => void): number {
  const once = () => {
    const started = performance.now();
    sweep();
    return (performance.now() - started) / (drivings.length * cars.length);
  };
  return quantile(Array.from({ length: 24 }, once).slice(6), 0.5);
}

/** Hardest turn and margin of one phase, over all phases and many front roll stiffnesses. */
const fromNothing = (): number =>
  perBalance(() => {
    for (const driving of drivings) for (const one of cars) carBalance(one, driving);
  });

/** The same, each from the car before it. */
const fromNeighbour = (): number =>
  perBalance(() => {
    for (const driving of drivings)
      cars.reduce<CarBalance | undefined>((last, one) => carBalance(one, driving, last), undefined);
  });

/** Every change that the demo car allows, in all parts of a corner, of a car that was not met before, ms. */
function wholeTable(): number {
  const car = standingCar({ ...demoCar });
  const started = performance.now();
  changeTable(car, { speed: 25 });
  return performance.now() - started;
}

const firstReport = (): number =>
  Number(execFileSync(process.execPath, ["--import", "tsx", inRoot("site/bench/first-report.ts")]));

/** The model by itself, in Node. */
export function solverTimes(): Row[] {
  const reports = Array.from({ length: 5 }, firstReport);
  return [
    {
      what: "hardest turn and margin of a phase, from nothing",
      value: fromNothing(),
      most: 1,
      unit: "ms",
    },
    { what: "the same from a neighbour", value: fromNeighbour(), most: 0.4, unit: "ms" },
    {
      what: "change table of the demo car, all phases, warm",
      value: quantile(Array.from({ length: 10 }, wholeTable).slice(4), 0.5),
      most: 150,
      unit: "ms",
    },
    {
      what: "set-up report, first in its process",
      value: quantile(reports, 0.5),
      most: 250,
      unit: "ms",
    },
  ];
}
