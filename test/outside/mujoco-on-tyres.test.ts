import { beforeAll, expect, test } from "vitest";
import { distributeLoadTransfer } from "../../lib/load/distribution.js";
import { firstWheelLift } from "../../lib/load/first-lift.js";
import { tippingAcceleration } from "../../lib/load/tipping.js";
import { type CarOnTyres, type Standing, standing, standingSlowly } from "./car-on-tyres.js";
import { type Mechanics, startMechanics } from "./mechanics.js";
import { randomNumbers } from "./random-numbers.js";
import { clubCars, inRoll, lowAndTall, randomCarOnTyres } from "./random-on-tyres.js";

// MuJoCo 3 (mujoco-js 0.0.7, Apache-2.0), a general engine for jointed bodies: tyres are springs that
// only push, under wheels on arms that find their own place, or under beams; small angles are not
// taken for granted there, and side force is shared unevenly between the two tyres of an axle.

const LONG = process.env.LONG_RUNS !== undefined;

let mechanics: Mechanics;
beforeAll(async () => {
  mechanics = await startMechanics();
});

/** What the turn adds to roll, and the front axle's share of what it moves across. */
function whatTurnDoes(turning: Standing, straight: Standing) {
  const moved = (end: "front" | "rear") =>
    (turning[end].right - turning[end].left - straight[end].right + straight[end].left) / 2;
  const [front, rear] = [moved("front"), moved("rear")];
  return { roll: turning.roll - straight.roll, frontShare: front / (front + rear) };
}

const LEVEL: Standing = {
  roll: 0,
  front: { left: 0, right: 0 },
  rear: { left: 0, right: 0 },
};

/** How far the library is from the engine: roll as a part of it, share in points. */
function apart(car: CarOnTyres, lateralAcceleration: number, even: boolean) {
  const turning = standing(mechanics, car, lateralAcceleration);
  const straight = even ? LEVEL : standing(mechanics, car, 0);
  const engine = whatTurnDoes(turning, straight);
  const library = distributeLoadTransfer(inRoll(car), lateralAcceleration);
  return {
    roll: Math.abs(library.rollAngle.front / engine.roll - 1),
    share: 100 * Math.abs(library.frontShare - engine.frontShare),
    up: turning.front.left === 0 || turning.rear.left === 0,
  };
}

/** The value that a part of a list stays within. */
function within(values: readonly number[], part: number): number {
  const ordered = [...values].sort((a, b) => a - b);
  return ordered[Math.ceil(part * ordered.length) - 1] ?? Number.NaN;
}

function spread(values: readonly number[]): number[] {
  return [within(values, 0.5), within(values, 0.9), within(values, 1)];
}

/** One in three on seats turned against each other: uneven scales. */
function onSeats(car: CarOnTyres, by: number): CarOnTyres {
  const turned = (axle: CarOnTyres["front"], left: number): CarOnTyres["front"] =>
    axle.kind === "arms" ? { ...axle, seats: { left, right: -left } } : axle;
  return { ...car, front: turned(car.front, by), rear: turned(car.rear, -by) };
}

const cars = LONG ? 100 : 14;

test(`${cars} cars roll and share their load as the engine has it, wheels down`, () => {
  const between = randomNumbers(LONG ? 20261128 : 2);
  const all = Array.from({ length: cars }, (_, i) => {
    const car = randomCarOnTyres(between, clubCars);
    const lateralAcceleration = between(2, 7);
    const seats = i % 3 === 0 ? between(-0.006, 0.006) : 0;
    return apart(onSeats(car, seats), lateralAcceleration, seats === 0);
  }).filter(({ up }) => !up);
  expect(all.length).toBeGreaterThan(0.9 * cars);
  const [rollMedian, rollMost, rollWorst] = spread(all.map(({ roll }) => roll));
  expect(rollMedian).toBeLessThan(0.01);
  expect(rollMost).toBeLessThan(0.025);
  expect(rollWorst).toBeLessThan(0.06);
  const [shareMedian, shareMost, shareWorst] = spread(all.map(({ share }) => share));
  expect(shareMedian).toBeLessThan(0.1);
  expect(shareMost).toBeLessThan(0.4);
  expect(shareWorst).toBeLessThan(1.7);
  if (LONG) console.log({ rollMedian, rollMost, rollWorst, shareMedian, shareMost, shareWorst });
}, 600_000);

/** The car with a bar so stiff behind that its inner rear wheel goes up. */
function stiffBehind(car: CarOnTyres): CarOnTyres {
  const { rear } = car;
  const one = { rightShare: 1 }; // a wheel in the air has no side force
  if (rear.kind === "beam")
    return { ...car, rear: { ...rear, ...one, rollStiffness: rear.rollStiffness + 60e3 } };
  return { ...car, rear: { ...rear, ...one, barRollStiffness: 60e3 } };
}

test("a car with one wheel up stands as the engine has it", () => {
  const between = randomNumbers(LONG ? 20261129 : 2);
  const all: { roll: number; load: number }[] = [];
  while (all.length < (LONG ? 40 : 4)) {
    const car = stiffBehind(randomCarOnTyres(between, lowAndTall));
    const { axle, lateralAcceleration: lift } = firstWheelLift(inRoll(car));
    const room = Math.min(13, tippingAcceleration(inRoll(car))) / lift - 1;
    if (axle === "front" || room < 0.1) continue;
    const ay = lift * (1 + between(0.1, 0.3) * room);
    const engine = standingSlowly(mechanics, car, ay);
    const library = distributeLoadTransfer(inRoll(car), ay);
    const { left, right } = library.front.load;
    expect(library.rear.lifted).toBe(true);
    all.push({
      roll: Math.abs(library.rollAngle.front / engine.roll - 1),
      load: Math.abs(right - engine.front.right) / (left + right),
    });
  }
  const load = spread(all.map((one) => one.load));
  const roll = spread(all.map((one) => one.roll));
  if (LONG) console.log({ load, roll });
  const most = { load: [0.01, 0.03, 0.05], roll: [0.05, 0.12, 0.25] }; // median, nine of ten, worst
  expect(load.every((value, i) => value < (most.load[i] ?? 0))).toBe(true);
  expect(roll.every((value, i) => value < (most.roll[i] ?? 0))).toBe(true);
}, 600_000);
