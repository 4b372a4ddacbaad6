import type { Pins } from "../../site/chapter/pins.js";
import { asItIs, carByHand } from "./demo-car-by-hand.js";
import { evenTurn, movedBy } from "./roll-by-hand.js";

// The demo car, retyped
const g = 9.80665;
const mass = 810 + 80 + 30 + 75 + 85;
const height = (810 * 0.54 + 80 * 0.48 + 30 * 0.4 + (75 + 85) * 0.29) / mass;
const frontWeight = mass * g * (1 - (810 * 1.07 + 80 * 1.35 + 30 * 2.2 + 85 * 2.4) / mass / 2.4);
const rearWeight = mass * g - frontWeight;
const [frontTrack, rearTrack] = [1.44, 1.45];
const track = (frontTrack + rearTrack) / 2;

// The club tyre at 200 kPa, upright: 1.15 − 0.15·(F − 3000)/3000 = 1.3 − 5e-5·F
const s = 5e-5;
const friction = (load: number) => 1.3 - s * load;
const grip = (load: number) => friction(load) * load;
const lost = (transfer: number) => 2 * s * transfer ** 2;

const frontLoad = frontWeight / 2;
const frontTransfer = ((frontWeight / g) * 8 * height) / frontTrack;

// Share of the front axle, from the balance of body and axles
const turning = evenTurn(carByHand(asItIs), 8);
const share = movedBy(turning.front) / (movedBy(turning.front) + movedBy(turning.rear));

const total = (mass * 8 * height) / track;
const frontGain = lost(share * total) - lost((share - 0.1) * total);
const rearGain = lost((1 - share) * total) - lost((1.1 - share) * total);

/** Fastest turn of four equal tyres, m/s²: x = μ0 − s·F·(1 + (k·x)²) with x in g, k = 2h/t. */
function fastestTurn(kilograms: number, centre: number): number {
  const F = (kilograms * g) / 4;
  const a = s * F * ((2 * centre) / track) ** 2;
  return ((Math.sqrt(1 + 4 * a * (1.3 - s * F)) - 1) / (2 * a)) * g;
}
const seconds = (ay: number) => (2 * Math.PI * 20) / Math.sqrt(ay * 20);
const withPassenger = fastestTurn(mass + 80, height);

export const pins: Pins = {
  "friction-at-rest": { value: friction(frontLoad), from: "1.3 − 0.05 per kN of front tyre load" },
  "twice-the-load": { value: grip(2 * frontLoad) / grip(frontLoad), from: "μ0·F − s·F², twice" },
  "front-transfer": { value: frontTransfer, from: "m·ay·h/t of the front axle alone" },
  "front-loss": { value: lost(frontTransfer), from: "2·s·ΔF²" },
  "front-loss-share": {
    value: lost(frontTransfer) / (2 * grip(frontLoad)),
    from: "2·s·ΔF² over 2·(μ0·F − s·F²)",
  },
  "published-even": {
    value: 2 * 3690.4,
    from: "Bakker, Nyborg, Pacejka, SAE 870421 (1987): D at 4 kN",
  },
  "published-own-peaks": {
    value: 44.2 * 2 ** 2,
    from: "Bakker, Nyborg, Pacejka, SAE 870421 (1987): 2·a1·ΔF² in kN",
  },
  "published-pair": {
    value: 7201.03,
    from: "greatest sum of the curves of SAE 870421 and SAE 890087 at 2 and 6 kN; given to 0.01 N",
    within: 2e-6,
  },
  "ten-points-front": {
    value: frontGain,
    from: "2·s·(ΔF² − ΔF′²), shares from body and axles in balance",
  },
  "ten-points-rear": {
    value: rearGain,
    from: "2·s·(ΔF² − ΔF′²), shares from body and axles in balance",
  },
  "ten-points-balance": {
    value:
      frontGain / (2 * grip(frontLoad) - lost(share * total)) -
      rearGain / (2 * grip(rearWeight / 2) - lost((1 - share) * total)),
    from: "gain over grip of each pair, front less rear",
  },
  rounds: {
    value: 10 * (seconds(withPassenger) - seconds(fastestTurn(mass, height))),
    from: "closed form of the quadratic, 2π·R/√(ay·R), ten rounds",
  },
  "ex-sensitivity": { value: 3880, from: "0.97 × 4000" },
  "ex-square": { value: 1.21 * lost(frontTransfer), from: "1.1² of the loss" },
  "ex-track": {
    value: lost(frontTransfer) * (1 - (1.44 / 1.5) ** 2),
    from: "loss with 1/t²",
  },
  "ex-published": { value: 0.8784, from: "SAE 870421: 1.011 − 0.0221 × 6" },
  "ex-split": { value: 2 * s * 0.08 * total ** 2, from: "2·s·0.08·ΔF²" },
  "ex-ballast": { value: 5e-5 * 15 * g, from: "s × 15 kg of weight" },
};
