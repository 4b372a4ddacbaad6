import { expect, test } from "vitest";
import { linearStepSteer } from "../../../lib/transient/linear-car.js";
import { rungeKuttaStep } from "../../../lib/transient/runge-kutta.js";
import { stepFigures, timeToReach } from "../../../lib/transient/step-figures.js";

const times = (count: number, step: number) => Array.from({ length: count }, (_, i) => i * step);

test("a second-order signal has the peak and overshoot of the closed form", () => {
  // overshoot e^(−πζ/√(1−ζ²)) at π/(ωn√(1−ζ²)), any text on vibration
  const [frequency, damping] = [8, 0.4];
  const swung = Math.sqrt(1 - damping ** 2);
  const values = times(2000, 0.002).map((t) => {
    const angle = frequency * swung * t;
    const swing = Math.cos(angle) + (damping / swung) * Math.sin(angle);
    return 1 - Math.exp(-damping * frequency * t) * swing;
  });
  const figures = stepFigures({ step: 0.002, values });
  expect(figures.overshoot).toBeCloseTo(Math.exp((-Math.PI * damping) / swung), 5);
  expect(figures.peakTime).toBeCloseTo(Math.PI / (frequency * swung), 4);
  expect(figures.steady).toBeCloseTo(1, 5);
});

test("a first-order signal reaches 90 % after ln 10 time constants and never overshoots", () => {
  const values = times(4000, 0.005).map((t) => 3 * (1 - Math.exp(-t)));
  const figures = stepFigures({ step: 0.005, values });
  expect(figures.responseTime).toBeCloseTo(Math.LN10, 3);
  expect(figures.overshoot).toBeLessThan(1e-6);
});

test("a level is reached between two samples where the straight line says", () => {
  const ramp = { step: 0.1, values: [0, 0, 1, 3] };
  expect(timeToReach(ramp, 0.25)).toBeCloseTo(0.125, 12);
  expect(timeToReach(ramp, 2)).toBeCloseTo(0.25, 12);
  expect(timeToReach(ramp, 0)).toBe(0);
  expect(timeToReach(ramp, 4)).toBe(0);
});

test("the published car has the published peak time and overshoot", () => {
  // Abe, Vehicle Handling Dynamics, 2nd ed., example 3.6: 0.27151 rad/s at 0.329 s, 0.21547 steady
  const car = {
    mass: 1500,
    yawInertia: 2500,
    distance: { front: 1.1, rear: 1.6 },
    corneringStiffness: { front: 110e3, rear: 120e3 },
    speed: 140 / 3.6,
  };
  const values = times(5000, 0.002).map((t) => linearStepSteer(car, 0.04, t).yawRate);
  const figures = stepFigures({ step: 0.002, values });
  expect(figures.peakTime).toBeCloseTo(0.329, 3);
  expect(figures.overshoot).toBeCloseTo(0.27151 / 0.21547 - 1, 3);
});

test("a signal to the other side has the same figures", () => {
  const values = times(1000, 0.01).map((t) => 1 - Math.exp(-2 * t) * Math.cos(5 * t));
  const there = stepFigures({ step: 0.01, values });
  const back = stepFigures({ step: 0.01, values: values.map((value) => -value) });
  expect(back).toEqual({ ...there, steady: -there.steady });
});

test("too few samples and a signal that dies are refused", () => {
  expect(() => stepFigures({ step: 0.1, values: [1, 2] })).toThrow("at least 10 samples");
  expect(() => stepFigures({ step: 0.1, values: new Array(20).fill(0) })).toThrow("settle to zero");
});

test("a Runge-Kutta step is exact to fourth order", () => {
  const after = (step: number) => rungeKuttaStep((_, [x = 0]) => [x], 0, [1], step)[0] ?? 0;
  const [coarse, fine] = [after(0.1) - Math.exp(0.1), after(0.05) - Math.exp(0.05)];
  expect(coarse / fine).toBeGreaterThan(28); // 2⁵ for the error of one step
  expect(coarse / fine).toBeLessThan(36);
});
