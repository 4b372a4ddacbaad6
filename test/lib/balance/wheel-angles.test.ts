import fc from "fast-check";
import { expect, test } from "vitest";
import type { HandlingAxle } from "../../../lib/balance/handling-car.js";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { understeerGradientAt } from "../../../lib/balance/handling-curve.js";
import { axlesAt } from "../../../lib/balance/loads-in-turn.js";
import { leanPerRoll, steerPerRoll } from "../../../lib/balance/wheel-angles.js";
import type { Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { carFromJson } from "../../../lib/car/file/parse.js";
import { drive } from "../../../lib/transient/drive.js";
import { GRAVITY } from "../../../lib/units.js";
import { beam } from "../linkage/reference-corners.js";
import { anyCar } from "./cars.js";

const degrees = (angle: number) => (angle * 180) / Math.PI;

/** The demo car with a beam behind, the front ends of its trailing links higher by so much, m. */
function onBeam(raised: number): Car {
  const up = ({ body, axle }: typeof beam.leftLink) => ({
    axle,
    body: { ...body, z: body.z + raised },
  });
  const linkage = { ...beam, leftLink: up(beam.leftLink), rightLink: up(beam.rightLink) };
  const { car } = carFromJson({
    ...demoCar,
    rear: { ...demoCar.rear, spring: { ...demoCar.rear.spring, spacing: 1 }, linkage },
  });
  if (car === undefined) throw new Error("a beam under the demo car is a car");
  return car;
}

test("the outer wheel of an independent axle toes in with its bump, whatever its roll steer says", () => {
  // by hand: roll of 1 rad in the suspension lifts the outer wheel by half the track
  fc.assert(
    fc.property(anyCar, ({ front }) => {
      const axle: HandlingAxle = { ...front, independent: true };
      const bump = (axle.suspensionRollShare * axle.track) / 2;
      expect(steerPerRoll(axle)).toBeCloseTo(axle.toeGain * bump, 12);
      expect(leanPerRoll(axle)).toBeCloseTo(-1 - axle.camberGain * bump, 12);
      expect(steerPerRoll({ ...axle, rollSteer: 0.3 })).toBe(steerPerRoll(axle));
    }),
  );
});

test("a beam turns by its roll steer and leans by its tyres, whatever its gains in heave", () => {
  fc.assert(
    fc.property(anyCar, ({ front }) => {
      const axle: HandlingAxle = { ...front, independent: false };
      expect(steerPerRoll(axle)).toBeCloseTo(axle.rollSteer * axle.suspensionRollShare, 12);
      expect(leanPerRoll(axle)).toBeCloseTo(axle.suspensionRollShare - 1, 12);
      const other = { ...axle, toeGain: 0.5, camberGain: -0.5 };
      expect([steerPerRoll(other), leanPerRoll(other)]).toEqual([
        steerPerRoll(axle),
        leanPerRoll(axle),
      ]);
    }),
  );
});

test.each([0, 0.03, 0.06])(
  "trailing links %s m higher in front take what the rear steers off the understeer gradient",
  (raised) => {
    // In a steady turn each rad that the rear wheels turn outwards is a rad less of steering in
    // front: δ = L/R + K·ay + δr (common practice, no source). Slope of the roll axis: see the
    // tests of the linkage's geometry.
    const car = handlingCarOf(onBeam(raised));
    const straight = { ...car, rear: { ...car.rear, rollSteer: 0 } };
    const fast = { speed: 40 };
    const roll = axlesAt(car, fast, 0).rollAngle.rear.slope; // rad per m/s²
    const rollSteer = -(0.44 + 16 * raised) / 8.12;
    const moved = rollSteer * car.rear.suspensionRollShare * roll;
    const [now, before] = [car, straight].map((one) => understeerGradientAt(one, fast) ?? NaN);
    expect(before).toBeGreaterThan(0);
    expect(((now ?? NaN) - (before ?? NaN)) / moved).toBeCloseTo(1, 1);
  },
);

test("a drive settles with that roll steer too", () => {
  // δ/r = (L + K·v²)/v, so a change of the gradient moves it by ΔK·v – Wong, ch. 5
  const [speed, steer] = [30, 0.002];
  const car = { ...handlingCarOf(onBeam(0.06)), dragFactor: 0 };
  const straight = { ...car, rear: { ...car.rear, rollSteer: 0 } };
  const perYaw = [car, straight].map(
    (one) =>
      steer / (drive(one, { speed, duration: 4, steer: () => steer }).at(-1)?.yawRate ?? NaN),
  );
  const roll = axlesAt(car, { speed }, 0).rollAngle.rear.slope;
  const moved = (-1.4 / 8.12) * car.rear.suspensionRollShare * roll * speed;
  expect(((perYaw[0] ?? NaN) - (perYaw[1] ?? NaN)) / moved).toBeCloseTo(1, 1);
});

test("links along the car that rise steeply enough turn understeer into oversteer", () => {
  const gradients = [0, 0.03, 0.06].map(
    (raised) => understeerGradientAt(handlingCarOf(onBeam(raised)), { speed: 40 }) ?? NaN,
  );
  const [level = NaN, rising = NaN, steep = NaN] = gradients.map((one) => degrees(one) * GRAVITY);
  expect(level).toBeGreaterThan(0.1); // ° for each g
  expect(Math.abs(rising)).toBeLessThan(0.05);
  expect(steep).toBeLessThan(-0.15);
});
