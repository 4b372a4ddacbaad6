import type { Pins } from "../../site/chapter/pins.js";
import { asItIs } from "./demo-car-by-hand.js";
import { braking, middle, shift, stance } from "./whole-demo-car.js";

// The demo car, typed again from its description.
const g = 9.80665; // m/s², standard gravity
const wheelbase = 2.4; // m
const frontTrack = 1.44; // m
const rearTrack = 1.45; // m
const [body, driver, fuel] = [
  { mass: 810, behind: 1.07, left: -0.03, height: 0.54 },
  { mass: 80, behind: 1.35, left: 0.35, height: 0.48 },
  { mass: 30, behind: 2.2, left: 0, height: 0.4 },
];
const [frontUnsprung, rearUnsprung] = [75, 85]; // kg
const [frontSpring, rearSpring] = [60e3, 50e3]; // N/m
const [frontRatio, rearRatio] = [0.65, 0.75];
const [frontBar, rearBar, barRatio] = [22e3, 5e3, 0.6]; // N/m in the positions in use
const tyre = 215e3; // N/m at 200 kPa
const thread = 1.5e-3; // m in a turn
const degree = Math.PI / 180;

const parts = [body, driver, fuel];
const moment = (arm: "behind" | "left" | "height") =>
  parts.reduce((sum, part) => sum + part.mass * part[arm], 0);
const sprung = 810 + 80 + 30; // kg
const mass = sprung + frontUnsprung + rearUnsprung;
const rearWeight = (g * (moment("behind") + rearUnsprung * wheelbase)) / wheelbase;
const frontWeight = mass * g - rearWeight;

// What one wheel holds of the body, and how far it sinks when the spring changes.
const frontHeld = (frontWeight - frontUnsprung * g) / 2;
const rearHeld = (rearWeight - rearUnsprung * g) / 2;
const sinks = (frontHeld / frontRatio ** 2) * (1 / 50e3 - 1 / frontSpring);
const rises = (rearHeld / rearRatio ** 2) * (1 / rearSpring - 1 / 55e3);

// One on the other: 1/k = 1/k1 + 1/k2.
const series = (a: number, b: number) => (a * b) / (a + b);
const frontRide = series(frontSpring * frontRatio ** 2, tyre);
const rearRide = series(rearSpring * rearRatio ** 2, tyre);
const hertz = (rate: number, held: number) => Math.sqrt(rate / (held / g)) / (2 * Math.PI);

// One seat up by s: half lifts the axle, half twists it by ½·k·i·s at each wheel.
const suspension = (spring: number, ratio: number, bar: number, track: number) =>
  (0.5 * spring * ratio ** 2 + bar * barRatio ** 2) * track ** 2;
const frontSuspension = suspension(frontSpring, frontRatio, frontBar, frontTrack);
const rearSuspension = suspension(rearSpring, rearRatio, rearBar, rearTrack);
const [frontTyres, rearTyres] = [0.5 * tyre * frontTrack ** 2, 0.5 * tyre * rearTrack ** 2];
const frontStiffness = series(frontSuspension, frontTyres);
const rearStiffness = series(rearSuspension, rearTyres);
const frontShare = 1 - moment("behind") / sprung / wheelbase;
const rollAxis = frontShare * 0.05 + (1 - frontShare) * 0.09;
const leaning = sprung * g * (moment("height") / sprung - rollAxis);
const held = frontStiffness + rearStiffness - leaning; // N·m/rad that the body leans against

const frontTwist =
  0.5 *
  frontSpring *
  frontRatio *
  thread *
  frontTrack *
  (frontTyres / (frontTyres + frontSuspension));
const rearTwist =
  0.5 *
  rearSpring *
  rearRatio *
  3 *
  thread *
  rearTrack *
  (rearTyres / (rearTyres + rearSuspension));

// Front left up one turn: left front and right rear gain.
const frontGain = (frontTwist * (1 - frontStiffness / held)) / frontTrack;
const rearGain = (frontTwist * rearStiffness) / held / rearTrack;
const leftShare = 0.5 + (g * moment("left")) / (frontWeight * frontTrack + rearWeight * rearTrack);
const crossLoad = frontWeight * (1 - leftShare) + rearWeight * leftShare;
// Rear left up three turns: left rear and right front gain.
const rearLeftGain = (rearTwist * (1 - rearStiffness / held)) / rearTrack;
const frontRightGain = (rearTwist * frontStiffness) / held / frontTrack;

// Braking into a turn: both wheels sink, and the outer one again by what the body leans on them.
const turning = stance({}, 8, braking).front;
const outside = turning.heave + (turning.between * frontTrack) / 2;
const halved = shift({ frontTravel: asItIs.frontTravel / 2 }, middle);

export const pins: Pins = {
  held: { value: frontHeld, from: "half of front weight less 75 kg of wheels" },
  sinks: { value: sinks, from: "F/i² × (1/50 − 1/60 N/mm)" },
  "front-frequency": { value: hertz(frontRide, frontHeld), from: "√(k/m)/2π" },
  "rear-frequency": { value: hertz(rearRide, rearHeld), from: "√(k/m)/2π" },
  "turns-back": { value: (sinks * frontRatio) / thread, from: "sinking × 0.65 / 1.5 mm" },
  "one-turn": {
    value: frontGain,
    from: "twist of the front axle less what the lean takes, over the track",
  },
  cross: {
    value: (crossLoad - frontGain - rearGain) / (mass * g),
    from: "right front and left rear at rest less what the seat took",
  },
  "camber-sunk": {
    value: -1.5 * degree - 22 * degree * sinks,
    from: "−1.5° − sinking × 0.022 °/mm",
  },
  "toe-to-add": { value: 3 * degree * sinks, from: "sinking × 0.003 °/mm" },
  "roll-centre-sunk": { value: 0.05 - 1.2 * sinks, from: "50 mm − 1.2 × sinking" },
  "ex-rise": { value: rises, from: "F/i² × (1/50 − 1/55 N/mm)" },
  "ex-turns": { value: (-rises * rearRatio) / thread, from: "−rise × 0.75 / 1.5 mm" },
  "ex-spring": {
    value: ((2 * Math.PI * 2) ** 2 * frontHeld) / g / frontRatio ** 2,
    from: "Giaraffa, Springs & Dampers, part 2: 4π²f²·m over the motion ratio squared",
  },
  "ex-fuel": {
    value: (20 * g * 2.2) / wheelbase / (2 * rearRide),
    from: "moments about the front axle, over two ride rates",
  },
  "ex-cross": {
    value: (crossLoad + rearLeftGain + frontRightGain) / (mass * g),
    from: "right front and left rear at rest and what the seat gave",
  },
  "ex-legal": {
    value: Math.floor(19.5 / (0.75 / 0.65)),
    from: "(130 − 110 − 0.5 mm) in half turns of 0.75/0.65 mm, whole ones",
  },
  "travel-braking": { value: outside, from: "heave of the nose and lean on its wheels, by hand" },
  "half-travel": {
    value: halved,
    from: "margins of all four wheels in balance, stops of ½·c·δ² met by small steps",
    within: 0.005 / Math.abs(halved),
  },
};
