import type { Pins } from "../../site/chapter/pins.js";
import { braking, middle, shift } from "./whole-demo-car.js";

const g = 9.80665;
const [teach, predict, change, drive, report, debrief, log] = [4, 5, 4, 8, 2, 5, 1]; // minutes
const cycle = (rounds: number) =>
  teach + predict + change + drive * rounds + report + debrief + log;

/** Share of a normal distribution below x: its density added up by Simpson's rule. */
function below(x: number): number {
  const steps = 2000;
  const density = (z: number) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  let sum = density(0) + density(x);
  for (let i = 1; i < steps; i++) sum += density((i * x) / steps) * (i % 2 === 1 ? 4 : 2);
  return 0.5 + (sum * x) / steps / 3;
}

const z = 1.644854; // 95 % of a normal distribution, from tables
const laps = (difference: number, scatter: number) =>
  Math.ceil(2 * ((z * scatter) / difference) ** 2);

const within = 0.02; // of the shift, 0.004 m/s²: both searches end near the top, not on it
const whole =
  "margins of all four wheels in balance by searches of their own, left and right turns";
const lean = (3 * Math.PI) / 180;
const inward = 33 ** 2 / 120; // Orchard: 33 m/s, 120 m, 3° into the turn

/** m/s² of laps of a circle of 20 m: 4π²R/T², ISO 4138. */
const turn = (time: number) => (4 * Math.PI ** 2 * 20) / time ** 2;
const mean = (values: readonly number[]) =>
  values.reduce((sum, one) => sum + one, 0) / values.length;
const circle = {
  ada: [[], [9.21, 9.14, 9.19], [], [9.15, 9.18, 9.11], [9.08, 9.15, 9.1], [9.12, 9.06, 9.17]],
  bela: [[], [9.36, 9.29, 9.41], [], [9.3, 9.27, 9.38], [9.22, 9.31, 9.25], [9.29, 9.21, 9.27]],
} as const;
const moved = (before: readonly number[], after: readonly number[]) =>
  mean(after.map(turn)) - mean(before.map(turn));
const pairs = [circle.ada, circle.bela].flatMap((runs) => [
  [runs[1], runs[4]] as const,
  [runs[3], runs[5]] as const,
]);
/** What a mean of three laps is off by a stopwatch that is off by 0.1 s: 2a/T·0.1/√3 at the fastest. */
const watch = (times: readonly number[]) => {
  const fastest = Math.min(...times);
  return ((2 * turn(fastest)) / fastest) * (0.1 / Math.sqrt(3));
};
const byWatch = Math.hypot(...pairs.flat().map(watch)) / 4;

/** s of a lap of a circle of 25 m, and what one percent of it and 0.1 m/s² more are worth. */
const coneLap = (ay: number) => 2 * Math.PI * Math.sqrt(25 / ay);
const scatter = 0.01 * coneLap(10);
const saved = coneLap(10) - coneLap(10.1);

export const pins: Pins = {
  cycle: { value: 29, from: "4 + 5 + 4 + 8 + 2 + 5 + 1" },
  "cycle-club": { value: cycle(3), from: "6 drivers in 2 cars go out three times" },
  changes: { value: 3, from: "41 + 45 + 45 + 45 + 41 + 45 = 262 minutes; the next ends at 307" },
  "laps-small": { value: laps(0.1, 0.2), from: "2·(z·s/d)² with the tabled z of 95 %" },
  "laps-twice": { value: laps(0.2, 0.2), from: "the same with twice the change" },
  "chance-six": { value: below(1.5), from: "Φ(0.5·√(18/2))" },
  "chance-one": { value: below(0.5 * Math.sqrt(1.5)), from: "Φ(0.5·√(3/2))" },
  "run-two": {
    value: shift({ frontBar: 4 }, braking),
    from: `front bar 32e3 less 22e3 N/m: ${whole}`,
    within,
  },
  "run-four": {
    value: shift({ rearBar: 3 }, middle),
    from: `rear bar 12e3 less 5e3 N/m: ${whole}`,
    within,
  },
  "sure-margin": { value: 1 - below(0.8 / 0.7), from: "1 − Φ(0.8/0.7)" },
  "sure-shift": { value: 1 - below(0.2 / 0.06), from: "1 − Φ(0.2/0.06)", within: 1e-4 },
  "time-long-left": { value: ((Math.PI / 2) * 85) / 27, from: "½π·R/v: 85 m at 27 m/s" },
  "time-gate": { value: ((Math.PI / 2) * 18) / 12.5, from: "½π·R/v: 18 m at 12.5 m/s" },
  "orchard-level": {
    value: g * Math.tan(Math.atan(inward / g) - lean),
    from: "along and across a leaning road: g·tan(atan(v²/(R·g)) − β)",
  },
  "luck-nothing": {
    value: mean([circle.ada, circle.bela].map((runs) => moved(runs[4], runs[5]))),
    from: "4π²·20/T², the mean of three laps of run 5 less that of run 4, of two drivers",
  },
  "luck-rear-bar": {
    value: mean(pairs.map(([before, after]) => moved(before, after))),
    from: "the same of four pairs: runs 1 and 4, 3 and 5, of each driver",
  },
  "luck-within": {
    value: 2.353363 * byWatch, // t of 3 degrees of freedom, 5 % beyond each end, from tables
    from: "Student's t from tables times eight runs by stopwatch, ÷ 4",
  },
  "first-vote": { value: 3 / 6, from: "3 of 6 cards" },
  gain: { value: (5 - 3) / (6 - 3), from: "Hake 1998: won over, of those who were wrong" },
  "ex-cycle": { value: cycle(4), from: "21 + 4 × 8" },
  "ex-afternoon": { value: 5, from: "33 + 37 + 37 + 37 + 33 = 177; the next ends at 214" },
  "ex-laps": { value: Math.ceil(laps(0.15, 0.25) / 3), from: "16 laps among three" },
  "ex-bolder": { value: 4 / 9, from: "1/1.5²" },
  "ex-median": { value: -1, from: "−2, −1, −1, 0, 1: the third" },
  "ex-vote": { value: 6 / 11, from: "Hake 1998: (15 − 9)/(20 − 9)" },
  "mean-scatter": { value: scatter * Math.sqrt(0.4), from: "s·√(2/5)" },
  chance: { value: below(saved / (scatter * Math.sqrt(0.4))), from: "normal density summed" },
  "chance-return": {
    value: below(saved / (scatter * Math.sqrt(0.3))),
    from: "the same with √(1/5 + 1/10)",
  },
  enough: { value: laps(saved, scatter), from: "2·(z·s/d)² with the tabled z of 95 %" },
  "ex-scatter": { value: 0.12 * Math.SQRT1_2, from: "s·√(2/4)" },
  "ex-clock": { value: 61, from: "2·(1.645 × 0.1/0.03)² = 60.1, up to a whole lap" },
};
