import type { Pins } from "../../site/chapter/pins.js";
import {
  frontMass,
  g,
  height,
  mass,
  rearMass,
  type SetUp,
  sprungFront,
  wheelbase,
} from "./demo-car-by-hand.js";
import { braking, middle, type Phase, powerOn, shift, turnIn } from "./whole-demo-car.js";

const moved = ({ gains }: Phase) => (mass * gains * height) / wheelbase; // from front to rear, N

const elsewhere = (change: Partial<SetUp>, others: readonly Phase[]) =>
  others.reduce((sum, phase) => sum + Math.abs(shift(change, phase)), 0) / others.length;

const whole =
  "margins of all four wheels in balance by searches of their own, left and right turns";
const off = 0.003; // m/s²: the top is flat, and two searches end near it, not on it
const pinned = (value: number, from: string, within = off / Math.abs(value)) => ({
  value,
  from: `${from}: ${whole}`,
  within,
});
const flatter = (value: number, from: string) => pinned(value, from, 0.01 / Math.abs(value)); // with power on

const brakes = { brakes: 0.68 };
const stiffer = { frontBar: 4 };
const softer = { frontBar: 2 };
const rearBar = { rearBar: 3 };
const notBraking = [turnIn, middle, powerOn];
const notPower = [braking, turnIn, middle];
const wheelRate = (spring: number) => spring * 0.65 ** 2;

export const pins: Pins = {
  "open-at-first": { value: 4, from: "where, when, doing what, how much" },
  "want-dip": { value: 0.4, from: "2 points × 0.2 m/s², towards the front" },
  "brake-there": pinned(shift(brakes, braking), "68 % less 66 % front brakes"),
  "brake-besides": { value: 0, from: "nothing brakes in the other three" },
  "bar-there": pinned(shift(stiffer, braking), "front bar 32e3 less 22e3 N/m"),
  "bar-besides": pinned(elsewhere(stiffer, notBraking), "mean of the other three"),
  "steps-dip": {
    value: Math.ceil(0.1 / Math.abs(shift(brakes, braking))),
    from: "0.1 over one step",
  },
  "want-gate": { value: -0.4, from: "2 points × 0.2 m/s², towards the rear" },
  "front-bar-there": flatter(shift(softer, powerOn), "front bar 14e3 less 22e3 N/m"),
  "front-bar-besides": pinned(elsewhere(softer, notPower), "mean of the other three"),
  "rear-bar-there": flatter(shift(rearBar, powerOn), "rear bar 12e3 less 5e3 N/m"),
  "rear-bar-besides": pinned(elsewhere(rearBar, notPower), "mean of the other three"),
  "rear-braking": {
    value: (rearMass * g + moved(braking)) / (rearMass * g),
    from: "m·a·h/L taken off the rear weight",
  },
  "front-power": {
    value: (frontMass * g - moved(powerOn)) / (frontMass * g),
    from: "m·a·h/L taken off the front weight",
  },
  "spring-drop": {
    value: ((sprungFront * g) / 2) * (1 / wheelRate(60e3) - 1 / wheelRate(55e3)),
    from: "sprung load of a wheel over its rate, 60 and 55 N/mm",
  },
  "bar-kerb": { value: 10e3 * 0.6 ** 2, from: "kb·ib², 32e3 less 22e3 N/m" },
  "ex-gate-left": flatter(-0.4 - shift(softer, powerOn), "−0.4 less one hole"),
  "ex-orchard-bar": pinned(shift(stiffer, turnIn), "front bar 32e3 less 22e3 N/m"),
  "ex-orchard-clicks": pinned(
    0.1 / Math.abs(shift({ rearRebound: 4400 }, turnIn)),
    "0.1 over one click",
    0.06,
  ),
  "ex-open": { value: 3, from: "when, doing what, how much" },
  "ex-want": { value: -0.2, from: "−1 point × 0.2 m/s²" },
  "ex-price": pinned(
    shift(rearBar, braking) / shift(rearBar, middle),
    "one hole, both phases",
    0.02,
  ),
};
