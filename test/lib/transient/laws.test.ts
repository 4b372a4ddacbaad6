import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { drive } from "../../../lib/transient/drive.js";
import { stepSteer } from "../../../lib/transient/step-steer.js";
import { anyCar, RUNS } from "../car/any-car.js";
import { between } from "../evenly.js";

vi.setConfig({ testTimeout: 20_000 + 200 * RUNS });

// Cars of these laws have every number anywhere in the range of the parameter table.

const speed = between(5, 60);

/** A result, or nothing where the car was refused. */
function unlessRefused<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    expect(error).toBeInstanceOf(RangeError);
    return undefined;
  }
}

test("a second of driving any car ends in finite numbers", () => {
  fc.assert(
    fc.property(anyCar, speed, between(-0.2, 0.2), (car, v, angle) => {
      const handling = unlessRefused(() => handlingCarOf(car));
      if (handling === undefined) return;
      const moments = drive(handling, { speed: v, duration: 1, steer: () => angle });
      const { yawRate = NaN, rollAngle = NaN, lateralSpeed = NaN } = moments.at(-1) ?? {};
      expect(Number.isFinite(yawRate + rollAngle + lateralSpeed)).toBe(true);
    }),
    { numRuns: RUNS / 10 },
  );
});

test("a step of steering of any car has finite figures, or is refused in a sentence", () => {
  fc.assert(
    fc.property(anyCar, speed, (car, v) => {
      const step = unlessRefused(() => stepSteer(handlingCarOf(car), { speed: v, duration: 1.5 }));
      if (step === undefined) return;
      const { responseTime, peakTime, overshoot } = step.yawRate;
      expect(Number.isFinite(responseTime + peakTime + overshoot + step.tbFactor)).toBe(true);
    }),
    { numRuns: RUNS / 10 },
  );
});
