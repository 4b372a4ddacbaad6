import type { Pins } from "../../site/chapter/pins.js";
import { asItIs, carByHand } from "./demo-car-by-hand.js";
import { evenTurn, leaningOut } from "./roll-by-hand.js";

// The demo car, typed again from its description.
const g = 9.80665; // m/s², standard gravity
const body = { mass: 810, behind: 1.07, height: 0.54 };
const driver = { mass: 80, behind: 1.35, height: 0.48 };
const fuel = { mass: 30, behind: 2.2, height: 0.4 };
const [frontUnsprung, rearUnsprung, unsprungHeight] = [75, 85, 0.29]; // kg, kg, m
const [wheelbase, frontTrack, rearTrack] = [2.4, 1.44, 1.45]; // m

const sprung = 810 + 80 + 30; // kg
const sprungMoment =
  body.mass * body.height + driver.mass * driver.height + fuel.mass * fuel.height;
const mass = sprung + frontUnsprung + rearUnsprung;
const height = (sprungMoment + (frontUnsprung + rearUnsprung) * unsprungHeight) / mass;
const track = (frontTrack + rearTrack) / 2;
const sprungBehind =
  (body.mass * body.behind + driver.mass * driver.behind + fuel.mass * fuel.behind) / sprung;
const behind = (sprung * sprungBehind + rearUnsprung * wheelbase) / mass;
const frontAtRest = mass * g * (1 - behind / wheelbase);

const car = carByHand(asItIs);
const leaning = leaningOut(car, evenTurn(car, 7)); // N·m at 7 m/s²

export const pins: Pins = {
  weight: { value: 1080 * g, from: "m·g" },
  "front-wheel": { value: frontAtRest / 2, from: "moments about the rear axle" },
  "lean-extra": {
    value: leaning / track,
    from: "weights of body and wheels times how far out, by hand",
  },
  transfer: { value: (mass * 7 * height) / track, from: "m·a·h/t" },
  tip: { value: (track / (2 * height)) * g, from: "NHTSA: static stability factor T/2h, times g" },
  lower: { value: (0.01 * sprung) / mass / height, from: "920 of 1080 kg come down 10 mm" },
  spacer: { value: 1 - 1445 / 1485, from: "track from 1445 to 1485 mm" },
  braking: { value: (mass * 8 * height) / wheelbase, from: "m·a·h/L" },
  push: { value: 30 / 1.445, from: "push × height / track, in kg" },
  "lower-camber": { value: (-1.72 * Math.PI) / 180, from: "−1.5° − 10 mm × 0.022 °/mm" },
  "lower-roll-centre": { value: 0.038, from: "50 mm − 1.2 × 10 mm" },
  "ex-harder": { value: (mass * 9 * height) / track, from: "m·a·h/t" },
  "ex-faster": { value: 0.1025, from: "1.05² − 1" },
  "ex-passenger": { value: (80 * 7 * 0.48) / 1.445, from: "m·a·h/t of the passenger" },
  "ex-lower": { value: 0.05 * height, from: "in proportion to height" },
  "ex-braking": {
    value: frontAtRest + (mass * 8 * height) / wheelbase,
    from: "at rest, and m·a·h/L more",
  },
  "ex-van": { value: g, from: "1.6 / (2 × 0.8) = 1 g" },
};
