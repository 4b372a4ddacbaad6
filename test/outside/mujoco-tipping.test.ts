import { beforeAll, expect, test } from "vitest";
import { tippingAcceleration } from "../../lib/load/tipping.js";
import { rolledInTurn } from "../../lib/load/wheel-lift.js";
import { type CarOnTyres, tipsIn } from "./car-on-tyres.js";
import { type Mechanics, startMechanics } from "./mechanics.js";
import { randomNumbers } from "./random-numbers.js";
import { inRoll, lowAndTall, randomCarOnTyres } from "./random-on-tyres.js";

// MuJoCo 3 (mujoco-js 0.0.7, Apache-2.0), a general engine for jointed bodies, with its weight turned
// slowly, which is what a turn that tightens feels like.

const LONG = process.env.LONG_RUNS !== undefined;
const CARS = LONG ? 40 : 3;
const MOST_TRAVEL = 0.08; // m in bump, which is more than the stops of a car leave it
const HARDEST = 13; // m/s², more than any tyre here holds: beyond it a car slides and never tips

let mechanics: Mechanics;
beforeAll(async () => {
  mechanics = await startMechanics();
});

/** m in bump of the outer wheels of a car that tips, the further of the two. */
function travelAtTip(car: CarOnTyres): number {
  const state = rolledInTurn(inRoll(car), 1e3);
  if (state === undefined) return Infinity;
  const travel = (end: "front" | "rear") =>
    (car[end].track / 2) * (state.body[end] - state.tyres[end]);
  return Math.max(travel("front"), travel("rear"));
}

test(`${CARS} low and tall cars stand 2 % below the threshold and tip over 2 % above it`, () => {
  const between = randomNumbers(20261130);
  const wrong: string[] = [];
  for (let i = 0; i < CARS; ) {
    const car = randomCarOnTyres(between, lowAndTall);
    if (travelAtTip(car) > MOST_TRAVEL) continue;
    const tip = tippingAcceleration(inRoll(car));
    if (tip > HARDEST) continue;
    if (tipsIn(mechanics, car, 0.98 * tip)) wrong.push(`car ${i} tips below ${tip} m/s²`);
    if (!tipsIn(mechanics, car, 1.02 * tip)) wrong.push(`car ${i} stands above ${tip} m/s²`);
    i += 1;
  }
  expect(wrong).toEqual([]);
}, 900_000);
