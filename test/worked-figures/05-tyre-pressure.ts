import type { Pins } from "../../site/chapter/pins.js";
import { asItIs, carByHand, g } from "./demo-car-by-hand.js";
import { evenTurn, movedBy } from "./roll-by-hand.js";

// The demo car, retyped
const [body, driver, fuel] = [810, 80, 30]; // kg
const unsprungFront = 75; // kg
const wheelbase = 2.4; // m
const [trackFront, trackRear] = [1.44, 1.45]; // m
const wheelRateFront = 60e3 * 0.65 ** 2; // N/m
const wheelRateRear = 50e3 * 0.75 ** 2; // N/m
const barFront = 22e3 * 0.6 ** 2 * trackFront ** 2; // N·m/rad
const barRear = 5e3 * 0.6 ** 2 * trackRear ** 2; // N·m/rad
const [warm, more] = [200e3, 220e3]; // Pa: four steps of 5 kPa

// Where the mass is
const sprung = body + driver + fuel;
const sprungBehind = (body * 1.07 + driver * 1.35 + fuel * 2.2) / sprung;
const sprungFront = sprung * (1 - sprungBehind / wheelbase);
const massFront = sprungFront + unsprungFront;
const load = (massFront * g) / 2; // N on one front tyre

// The club tyre, retyped: stiffness, grip and cornering stiffness against pressure
const relative = (pressure: number) => (pressure - 200e3) / 200e3;
const parabola = Math.sqrt(((215e3 * 0.29) / 3000) ** 2 - 4 * 20); // Pacejka 2012, eq. A3.4
const underLoad = (tyreLoad: number, pressure: number) => {
  const air = 3000 * (1 + 0.65 * relative(pressure)); // N
  const slope = Math.sqrt(parabola ** 2 + (4 * 20 * tyreLoad) / air);
  return {
    stiffness: (air / 0.29) * slope, // of load = air·(parabola·x + 20·x²), x = squash / 0.29 m
    squash: (0.29 * (slope - parabola)) / (2 * 20),
  };
};
const stiffness = (pressure: number, tyreLoad = load) => underLoad(tyreLoad, pressure).stiffness;
const flatness = (pressure: number) => 1 - 0.6 * relative(pressure) ** 2;
const gripAtNoLoad = 1.15 + 0.15; // 1.15 at 3 kN, 0.05 less for each kN
const gripFall = 0.15 / 3000; // 1/N
function cornering(tyreLoad: number, pressure: number) {
  const dp = relative(pressure);
  const bend = 1.8 * (1 - 0.05 * dp);
  return 21 * 3000 * (1 - 0.4 * dp) * Math.sin(2 * Math.atan(tyreLoad / 3000 / bend));
}

// Springs in series, and roll stiffness with the tyres below
const series = (a: number, b: number) => 1 / (1 / a + 1 / b);
const rideRate = (pressure: number) => series(wheelRateFront, stiffness(pressure));
const roll = (wheelRate: number, bar: number, track: number, pressure: number) =>
  series(0.5 * wheelRate * track ** 2 + bar, 0.5 * stiffness(pressure, 3000) * track ** 2);
const rollFront = (pressure: number) => roll(wheelRateFront, barFront, trackFront, pressure);
const rollRear = roll(wheelRateRear, barRear, trackRear, warm);
const frontShare = (pressure: number) => rollFront(pressure) / (rollFront(pressure) + rollRear);

// Limit of the front axle: m·ay = f·(2(μ0 − sF)F − 2s(T·ay)²), a quadratic in ay
function frontLimit(pressure: number) {
  const car = carByHand(asItIs);
  const front = { ...car.front, tyres: 0.5 * stiffness(pressure) * trackFront ** 2 };
  const transfer = movedBy(evenTurn({ ...car, front }, 1).front); // N for each m/s²
  const f = flatness(pressure);
  const a = 2 * f * gripFall * transfer ** 2;
  const c = -2 * f * (gripAtNoLoad - gripFall * load) * load;
  return (-massFront + Math.sqrt(massFront ** 2 - 4 * a * c)) / (2 * a);
}

const slip = (mass: number, pressure: number) => mass / (2 * cornering((mass * g) / 2, pressure)); // rad/(m/s²)

// Sealed air: whole pressure over whole temperature stays
const air = 101325; // Pa
const kelvin = 273.15;
const sealed = (pressure: number, from: number, to: number) =>
  ((pressure + air) * (to + kelvin)) / (from + kelvin) - air;
const coldStart = 170e3; // Pa: the cold setting to the nearest 5 kPa

export const pins: Pins = {
  "measured-per-step": {
    value: (5e3 * (292.7e3 - 228.5e3)) / (12 * 6894.757293168),
    from: "Tse 2021, 255/40R17 at 24 and 36 psi; psi from NIST SP 811",
  },
  "stiffness-per-step": {
    value: stiffness(warm + 5e3) - stiffness(warm),
    from: "slope of load against squash, eq. A3.3 of Pacejka 2012 with the club tyre",
  },
  "tyre-stiffness-gain": { value: stiffness(more) / stiffness(warm) - 1, from: "the same slope" },
  "ride-rate-gain": {
    value: rideRate(more) / rideRate(warm) - 1,
    from: "in series with 25.35 N/mm",
  },
  "height-rise": {
    value: underLoad(load, warm).squash - underLoad(load, more).squash,
    from: "root of the parabola of load against squash",
  },
  "share-shift": {
    value: frontShare(more) - frontShare(warm),
    from: "roll stiffness of springs and bars over tyres, both ends",
  },
  "print-shrinks": { value: 1.1 ** -0.51 - 1, from: "Tse 2024, exponent −0.51" },
  "print-by-air-alone": { value: 1 / 1.1 - 1, from: "area = load/pressure" },
  "published-stiffness": {
    value: 48580.1 / 58077.8 - 1,
    from: "Pacejka 2012, App. 3, at 4 kN: 58077.8 and 48580.1 N/rad; within their six digits",
    within: 2e-5,
  },
  "one-kelvin": { value: (200e3 + air) / (20 + kelvin), from: "ideal gas: whole p over T" },
  "cold-setting": { value: sealed(200e3, 55, 20), from: "ideal gas, 55 °C back to 20 °C" },
  "front-limit-change": {
    value: frontLimit(more) - frontLimit(warm),
    from: "the quadratic of load-sensitive tyres and transfer, at 220 and 200 kPa",
  },
  "gradient-change": {
    value: slip(massFront, more) - slip(massFront, warm),
    from: "front slip m/(2C) at 220 less that at 200 kPa; the rear stays",
  },
  "ex-hot": { value: sealed(coldStart, 20, 60), from: "ideal gas" },
  "ex-cold": { value: sealed(200e3, 50, 8), from: "ideal gas" },
  "ex-sun": {
    value: sealed(coldStart, 20, 60) - sealed(coldStart, 35, 60),
    from: "ideal gas, both sides",
  },
  "ex-bleed": { value: sealed(200e3, 60, 10), from: "ideal gas" },
  "ex-print": { value: 1 - 1.2 ** -0.51, from: "Tse 2024, exponent −0.51" },
  "ex-square": { value: 0.6 * 0.2 ** 2, from: "e·(Δp/p_b)², club tyre" },
};
