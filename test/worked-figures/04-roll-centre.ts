import type { Pins } from "./pins.js";

// The demo car, retyped.
const g = 9.80665; // m/s²
const ay = 7; // m/s²
const wheelbase = 2.4;
const sprung = 810 + 80 + 30; // body, driver, fuel, kg
const sprungHeight = (810 * 0.54 + 80 * 0.48 + 30 * 0.4) / sprung;
const behindFront = (810 * 1.07 + 80 * 1.35 + 30 * 2.2) / sprung;
const sprungFront = sprung * (1 - behindFront / wheelbase);
const sprungRear = sprung - sprungFront;
const front = {
  track: 1.44,
  rollCentre: 0.05,
  wheels: 75,
  wheelsHeight: 0.29,
  wheelRate: 60e3 * 0.65 ** 2,
};
const rear = {
  track: 1.45,
  rollCentre: 0.09,
  wheels: 85,
  wheelsHeight: 0.29,
  wheelRate: 50e3 * 0.75 ** 2,
};
const tyre = 215e3; // N/m at 200 kPa

const series = (a: number, b: number) => 1 / (1 / a + 1 / b);
const springs = (rate: number, track: number) => (rate * track ** 2) / 2;
const bar = (rate: number, ratio: number, track: number) => rate * ratio ** 2 * track ** 2;
const frontStiffness = series(
  springs(front.wheelRate, front.track) + bar(22e3, 0.6, front.track),
  springs(tyre, front.track),
);
const rearStiffness = series(
  springs(rear.wheelRate, rear.track) + bar(5e3, 0.6, rear.track),
  springs(tyre, rear.track),
);

const arm = (frontHeight = front.rollCentre, rearHeight = rear.rollCentre, height = sprungHeight) =>
  height - (sprungFront * frontHeight + sprungRear * rearHeight) / sprung;
const roll = (d: number, stiffness = frontStiffness + rearStiffness) =>
  (sprung * ay * d) / (stiffness - sprung * g * d);

/** Load moved at the front and at the rear, with the front roll centre and stiffness as given. */
function moved(frontHeight: number, stiffness: number) {
  const angle = roll(arm(frontHeight), stiffness + rearStiffness);
  const atFront =
    stiffness * angle + sprungFront * ay * frontHeight + front.wheels * ay * front.wheelsHeight;
  const atRear =
    rearStiffness * angle +
    sprungRear * ay * rear.rollCentre +
    rear.wheels * ay * rear.wheelsHeight;
  return { front: atFront / front.track, rear: atRear / rear.track };
}
function share(frontHeight: number, stiffness = frontStiffness) {
  const load = moved(frontHeight, stiffness);
  return load.front / (load.front + load.rear);
}
function halved(f: (x: number) => number, low: number, high: number): number {
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (f(low) * f(middle) <= 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

const frontLinks = (sprungFront * ay * 0.05) / 1.44;
const frontSideForce = (sprungFront + 75) * ay;
const jacking = ((frontSideForce / 3) * 2 * 0.05) / 1.44;
const degree = Math.PI / 180;
const twoMethods =
  "arms that meet 1.975 m inboard and 0.270 m up: line intersection and virtual work";

export const pins: Pins = {
  "lever-arm": {
    value: arm(),
    from: "sprung height less the roll centres, weighed by sprung mass",
  },
  "roll-angle": { value: roll(arm()), from: "m·ay·d / (K − m·g·d)" },
  "front-links": { value: frontLinks, from: "m·ay·h/t over the front axle" },
  "front-springs": { value: (frontStiffness * roll(arm())) / 1.44, from: "K·φ/t" },
  "front-total": { value: moved(0.05, frontStiffness).front, from: "sum of the three parts" },
  "drawn-roll-centre": { value: (0.72 * 0.27) / 1.975, from: twoMethods },
  "drawn-camber-gain": {
    value: (0.0290105 * degree) / 1e-3,
    from: `${twoMethods}; six digits`,
    within: 1e-5,
  },
  "drawn-camber-in-roll": { value: 1 - 0.72 / 1.975, from: `1 − (t/2)/f; ${twoMethods}` },
  "front-jacking": { value: jacking, from: "(F_o − F_i)·2h/t with 2/3 and 1/3 of (m_s + m_u)·ay" },
  "front-rise": { value: jacking / (2 * 60e3 * 0.65 ** 2), from: "J/(2k) at the wheels" },
  "share-now": { value: share(0.05), from: "three parts at both axles" },
  "share-higher": { value: share(0.07), from: "three parts at both axles" },
  "same-bar": {
    value: halved((extra) => share(0.05, frontStiffness + extra) - share(0.07), 0, 1e5),
    from: "bisection on the share",
  },
  "front-turns": {
    value: (-0.01 * 0.65) / 1.5e-3,
    from: "height × motion ratio / seat travel a turn",
  },
  "rear-turns": {
    value: (-0.01 * 0.75) / 1.5e-3,
    from: "height × motion ratio / seat travel a turn",
  },
  "height-left": {
    value: 0.13 - 0.01 - 0.11,
    from: "front ride height less the step and the limit",
  },
  "front-camber": { value: -0.22 * degree, from: "−22 °/m over 10 mm" },
  "front-toe": { value: -0.03 * degree, from: "−3 °/m over 10 mm" },
  "rear-camber": { value: -0.18 * degree, from: "−18 °/m over 10 mm" },
  "rear-toe": { value: 0.02 * degree, from: "2 °/m over 10 mm" },
  "draw-it": { value: 0.09375, from: "0.75 × 0.2 / 1.6" },
  "rear-links": { value: (sprungRear * 8 * 0.09) / 1.45, from: "m·ay·h/t over the rear axle" },
  lift: { value: 400 / 3, from: "jacking of 4000/2000 N at 50 mm on 1.5 m, worked by hand" },
  "lift-again": { value: 90, from: "40 × 1.5²" },
  "stiffer-for-roll": { value: 0.04 / arm(), from: "K grows as d" },
  "roll-when-lower": { value: roll(arm() + 0.03), from: "d longer by 50 − 20 mm" },
};
