import fc from "fast-check";
import { expect, test } from "vitest";
import { findPeak } from "../../../lib/solve.js";
import {
  type LinearCar,
  linearStepSteer,
  steadyTurn,
  yawMode,
} from "../../../lib/transient/linear-car.js";
import { between } from "../evenly.js";

// Abe, Vehicle Handling Dynamics, 2nd ed., examples 3.6 and 3.7: 55 and 60 kN/rad for each tyre
const abe = (kilometresPerHour: number): LinearCar => ({
  mass: 1500,
  yawInertia: 2500,
  distance: { front: 1.1, rear: 1.6 },
  corneringStiffness: { front: 110e3, rear: 120e3 },
  speed: kilometresPerHour / 3.6,
});

test("at 140 km/h a step of 0.04 rad swings to the published peak and settles where published", () => {
  const car = abe(140);
  const end = steadyTurn(car, 0.04);
  expect(end.yawRate).toBeCloseTo(0.21547, 5);
  expect(end.sideSlip).toBeCloseTo(-0.03381, 5);
  const peak = findPeak((time) => linearStepSteer(car, 0.04, time).yawRate, 0, 0.6);
  expect(peak.value).toBeCloseTo(0.27151, 5);
  expect(peak.at).toBeCloseTo(0.329, 3);
});

test("at 60 km/h frequency, damping and overshoot are the published ones", () => {
  const car = abe(60);
  const { naturalFrequency, dampingRatio } = yawMode(car);
  expect(naturalFrequency).toBeCloseTo(10.98994, 5);
  expect(dampingRatio).toBeCloseTo(0.89933, 5);
  const peak = findPeak((time) => linearStepSteer(car, 0.04, time).yawRate, 0, 1.2);
  expect(peak.value / steadyTurn(car, 0.04).yawRate - 1).toBeCloseTo(0.008, 5);
});

test("the closed form satisfies the equations of motion", () => {
  const time = between(0.01, 2);
  const speed = between(5, 60);
  fc.assert(
    fc.property(time, speed, (t, metresPerSecond) => {
      const car = { ...abe(60), speed: metresPerSecond };
      const at = (moment: number) => linearStepSteer(car, 0.04, moment);
      const [now, step] = [at(t), 1e-5];
      const yawing = (at(t + step).yawRate - at(t - step).yawRate) / (2 * step);
      const drifting = (at(t + step).sideSlip - at(t - step).sideSlip) / (2 * step);
      const front = 110e3 * (0.04 - now.sideSlip - (1.1 * now.yawRate) / car.speed);
      const rear = 120e3 * ((1.6 * now.yawRate) / car.speed - now.sideSlip);
      expect(yawing).toBeCloseTo((1.1 * front - 1.6 * rear) / 2500, 4);
      expect(drifting + now.yawRate).toBeCloseTo((front + rear) / (1500 * car.speed), 4);
    }),
  );
});

test("it starts at rest and ends in the steady turn", () => {
  const start = linearStepSteer(abe(100), 0.04, 0);
  expect(start.yawRate).toBeCloseTo(0, 12);
  expect(start.sideSlip).toBeCloseTo(0, 12);
  const late = linearStepSteer(abe(100), 0.04, 20);
  expect(late.yawRate).toBeCloseTo(steadyTurn(abe(100), 0.04).yawRate, 9);
});

test("an oversteering car has no steady turn above its critical speed", () => {
  const car = { ...abe(300), corneringStiffness: { front: 160e3, rear: 70e3 } };
  expect(() => steadyTurn(car, 0.04)).toThrow("critical speed");
  expect(yawMode(car).naturalFrequency).toBe(0);
});
