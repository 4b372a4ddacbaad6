import type { Pins } from "../../site/chapter/pins.js";
import { middle, shift } from "./whole-demo-car.js";

const radius = 25; // m
const lap = (lateralAcceleration: number) => 2 * Math.PI * Math.sqrt(radius / lateralAcceleration);
const within = 0.02; // of the shift: both searches end near the top, not on it
const whole =
  "margins of all four wheels in balance by searches of their own, left and right turns";

export const pins: Pins = {
  "one-hole": {
    value: shift({ frontBar: 2 }, middle),
    from: `front bar 14e3 less 22e3 N/m: ${whole}`,
    within,
  },
  "all-holes": {
    value: shift({ frontBar: 1 }, middle),
    from: `front bar off, less 22e3 N/m: ${whole}`,
    within,
  },
  lap: { value: 2 * Math.PI * Math.sqrt(2.5), from: "2π·√(R/a)" },
  gain: { value: lap(10) - lap(10.1), from: "2π·√(R/a) at 10 and at 10.1 m/s²" },
  "ex-two": { value: 0.06, from: "−0.10 + 0.16" },
  "ex-signs": { value: -9, from: "15² / 25, to the right" },
  "ex-harder": {
    value: lap(8) * (1 - 1 / Math.sqrt(1.02)),
    from: "2π·√(R/a) at 8 and at 8.16 m/s²",
  },
  "ex-return": { value: -0.02, from: "9.95 − 9.97" },
};
