import type { Pins } from "../../site/chapter/pins.js";

const radius = 25; // m
const lap = (lateralAcceleration: number) => 2 * Math.PI * Math.sqrt(radius / lateralAcceleration);
const scatter = 0.01 * lap(10);
const gain = lap(10) - lap(10.1);

/** Share of a normal distribution below x: its density added up by Simpson's rule. */
function below(x: number): number {
  const steps = 2000;
  const density = (z: number) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  let sum = density(0) + density(x);
  for (let i = 1; i < steps; i++) sum += density((i * x) / steps) * (i % 2 === 1 ? 4 : 2);
  return 0.5 + (sum * x) / steps / 3;
}

export const pins: Pins = {
  lap: { value: 2 * Math.PI * Math.sqrt(2.5), from: "2π·√(R/a)" },
  gain: { value: gain, from: "2π·√(R/a) at 10 and at 10.1 m/s²" },
  "mean-scatter": { value: scatter * Math.sqrt(0.4), from: "s·√(2/5)" },
  chance: { value: below(gain / (scatter * Math.sqrt(0.4))), from: "normal density summed" },
  "chance-return": {
    value: below(gain / (scatter * Math.sqrt(0.3))),
    from: "the same with √(1/5 + 1/10)",
  },
  enough: {
    value: Math.ceil(2 * ((1.644854 * scatter) / gain) ** 2),
    from: "2·(z·s/d)² with the tabled z of 95 %",
  },
  "ex-scatter": { value: 0.12 * Math.SQRT1_2, from: "s·√(2/4)" },
  "ex-laps": { value: 61, from: "2·(1.645 × 0.1/0.03)² = 60.1, up to a whole lap" },
  "ex-return": { value: -0.02, from: "9.95 − 9.97" },
  "ex-two": { value: 0.06, from: "−0.10 + 0.16" },
  "ex-signs": { value: -9, from: "15² / 25, to the right" },
};
