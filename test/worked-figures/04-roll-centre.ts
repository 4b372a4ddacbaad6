import type { Pins } from "../../site/chapter/pins.js";
import { type AxleByHand, asItIs, type CarByHand, carByHand, g } from "./demo-car-by-hand.js";
import { evenTurn, movedBy } from "./roll-by-hand.js";

// The demo car, retyped.
const ay = 7; // m/s²
const wheelbase = 2.4;
const sprung = 810 + 80 + 30; // body, driver, fuel, kg
const sprungHeight = (810 * 0.54 + 80 * 0.48 + 30 * 0.4) / sprung;
const behindFront = (810 * 1.07 + 80 * 1.35 + 30 * 2.2) / sprung;
const sprungFront = sprung * (1 - behindFront / wheelbase);
const sprungRear = sprung - sprungFront;
const car = carByHand(asItIs);

/** Height of the body above its roll axis, m. */
const arm = () => sprungHeight - (sprungFront * 0.05 + sprungRear * 0.09) / sprung;

/** The car with its roll centres and its body higher by so much, m. */
function raised(atFront: number, atRear = 0, body = 0): CarByHand {
  const axle = (a: AxleByHand, by: number): AxleByHand => ({
    ...a,
    rollCentre: a.rollCentre + by,
    arm: a.arm + body - by,
    springs: a.springs + a.sprung * g * by, // weight on the links
  });
  return { ...car, front: axle(car.front, atFront), rear: axle(car.rear, atRear) };
}
const turning = evenTurn(car, ay);
const frontTotal = movedBy(turning.front);
const frontWheels = (car.front.ownShare * 75 * 0.29 * ay) / 1.44;
function share(of: CarByHand) {
  const { front, rear } = evenTurn(of, ay);
  return movedBy(front) / (movedBy(front) + movedBy(rear));
}
const stiffened = (extra: number): CarByHand => ({
  ...car,
  front: { ...car.front, springs: car.front.springs + extra },
});
function halved(f: (x: number) => number, low: number, high: number): number {
  for (let i = 0; i < 60; i++) {
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
  "roll-angle": { value: turning.roll, from: "moments on body and axles" },
  "front-links": { value: frontLinks, from: "m·ay·h/t over the front axle" },
  "front-springs": {
    value: frontTotal - frontLinks - frontWheels,
    from: "all that the tyres move less links and wheels",
  },
  "front-total": { value: frontTotal, from: "half of outer less inner tyre" },
  "drawn-roll-centre": { value: (0.72 * 0.27) / 1.975, from: twoMethods },
  "drawn-camber-gain": {
    value: (0.0290105 * degree) / 1e-3,
    from: `${twoMethods}; six digits`,
    within: 1e-5,
  },
  "drawn-camber-in-roll": { value: 1 - 0.72 / 1.975, from: `1 − (t/2)/f; ${twoMethods}` },
  "front-jacking": { value: jacking, from: "(F_o − F_i)·2h/t with 2/3 and 1/3 of (m_s + m_u)·ay" },
  "front-rise": { value: jacking / (2 * 60e3 * 0.65 ** 2), from: "J/(2k) at the wheels" },
  "share-now": { value: share(car), from: "moments on body and axles" },
  "share-higher": { value: share(raised(0.02)), from: "the same, 20 mm higher" },
  "same-bar": {
    value: halved((extra) => share(stiffened(extra)) - share(raised(0.02)), 0, 1e5),
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
  "roll-when-lower": {
    value: evenTurn(raised(-0.05, -0.05, -0.02), ay).roll,
    from: "moments on body and axles, roll centres 50 mm and body 20 mm lower",
  },
};
