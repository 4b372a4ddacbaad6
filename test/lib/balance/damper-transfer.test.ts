import fc from "fast-check";
import { expect, test } from "vitest";
import { damperTransfer } from "../../../lib/balance/damper-transfer.js";
import type { HandlingCar } from "../../../lib/balance/handling-car.js";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { phases } from "../../../lib/balance/phases.js";
import { transferLines } from "../../../lib/balance/transfer-line.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { between } from "../evenly.js";
import { anyCar } from "./cars.js";

const gravity = 9.80665;

/** Moment of the sprung mass about the roll axis for each m/s², kg·m: Σ ms·d. */
function leverOf({ sprungMass, sprungFrontShare, sprungHeight, front, rear }: HandlingCar) {
  const axis =
    sprungFrontShare * front.rollCentreHeight + (1 - sprungFrontShare) * rear.rollCentreHeight;
  return sprungMass * (sprungHeight - axis);
}

/** Sum over both axles. */
const both = ({ front, rear }: HandlingCar, of: (axle: HandlingCar["front"]) => number) =>
  of(front) + of(rear);

/**
 * N on each axle beyond those of a settled turn, of a body that rolls while lateral acceleration
 * grows by `jerk`, after a long while: I·φ̈ + C·φ̇ + (K − ms·g·d)·φ = ms·d·ay in small steps of
 * time – Abe, Vehicle Handling Dynamics, ch. 6.
 *
 * @param weighs - m/s² of gravity on the body that leans
 */
function beyondSettled(car: HandlingCar, jerk: number, weighs: number) {
  const lever = leverOf(car);
  const stiffness = both(car, (axle) => axle.rollStiffness) - weighs * lever;
  const damping = both(car, (axle) => axle.rollDamping);
  const inertia = car.rollInertia + (lever * lever) / car.sprungMass;
  const slowest = Math.max(damping / stiffness, inertia / damping); // s
  const step = 0.2 / Math.max(damping / inertia, Math.sqrt(stiffness / inertia));
  let [time, angle, rate] = [0, 0, 0];
  while (time < 40 * slowest) {
    rate += (step * (lever * jerk * time - damping * rate - stiffness * angle)) / inertia;
    angle += step * rate;
    time += step;
  }
  const settled = (lever * jerk * time) / stiffness;
  const end = ({ rollStiffness, rollDamping, track }: HandlingCar["front"]) =>
    (rollStiffness * (angle - settled) + rollDamping * rate) / track;
  return { front: end(car.front), rear: end(car.rear) };
}

function transferOf(car: HandlingCar, jerk: number) {
  const onFour = transferLines(car, { front: 1e9, rear: 1e9 }, { front: false, rear: false });
  if (onFour === undefined) throw new Error("these cars stand on their springs");
  return damperTransfer(car, onFour, jerk);
}

test("dampers move what a body in motion moves beyond a settled turn, were its lean without weight", () => {
  fc.assert(
    fc.property(anyCar, between(-20, 20), (car, jerk) => {
      const moved = transferOf(car, jerk);
      const found = beyondSettled(car, jerk, 0);
      // the roll gain itself knows the weight that leans: ms·d/K without it, ms·d/(K − ms·g·d) with it
      const stiffness = both(car, (axle) => axle.rollStiffness);
      const gain = stiffness / (stiffness - gravity * leverOf(car));
      const size = 1 + Math.abs(found.front) + Math.abs(found.rear);
      expect((moved.front - gain * found.front) / size).toBeCloseTo(0, 2);
      expect((moved.rear - gain * found.rear) / size).toBeCloseTo(0, 2);
    }),
    { numRuns: 50 },
  );
});

test("what the later lean of the demo car would weigh at turn-in is left out: 16 N in all", () => {
  const car = handlingCarOf(demoCar);
  const { lateralJerk = Number.NaN } = phases["turn-in"];
  const moved = transferOf(car, lateralJerk);
  const found = beyondSettled(car, lateralJerk, gravity);
  const missing = moved.front + moved.rear - found.front - found.rear;
  expect(missing).toBeGreaterThan(15);
  expect(missing).toBeLessThan(18);
});

test("a damper in front alone presses the outer front tyre and takes it off behind", () => {
  const car = handlingCarOf(demoCar);
  const front = { ...car, rear: { ...car.rear, rollDamping: 0 } };
  expect(transferOf(front, 12).front).toBeGreaterThan(0);
  expect(transferOf(front, 12).rear).toBeLessThan(0);
  expect(transferOf(front, 0)).toEqual({ front: 0, rear: 0 });
});
