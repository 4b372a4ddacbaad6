import { expect, test } from "vitest";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { trim } from "../../../lib/balance/trim.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { steadyTurn } from "../../../lib/transient/linear-car.js";
import { linearCarOf } from "../../../lib/transient/linear-car-of.js";
import { withoutTrail } from "../balance/without-trail.js";

const gravity = 9.80665;
const car = handlingCarOf(demoCar);

test("cornering stiffness is that of the tyre's formula at half the load of the axle", () => {
  // Pacejka 2012, eq. 4.E25 at nominal pressure: PKY1·Fz0·sin(PKY4·atan(Fz/(PKY2·Fz0)))
  const pair = (load: number) => 2 * 21 * 3000 * Math.sin(2 * Math.atan(load / (1.8 * 3000)));
  const firm = { ...car, front: withoutTrail(car.front), rear: withoutTrail(car.rear) };
  const { corneringStiffness, mass, distance } = linearCarOf(firm, 25);
  const share = distance.rear / demoCar.wheelbase;
  expect(corneringStiffness.front).toBeCloseTo(pair((mass * gravity * share) / 2), 6);
  expect(corneringStiffness.rear).toBeCloseTo(pair((mass * gravity * (1 - share)) / 2), 6);
});

test("a gentle turn of the linear car is that of the four-wheel car without roll", () => {
  const axle = (end: typeof car.front) => ({
    ...end,
    camber: { left: 0, right: 0 },
    toe: { left: 0, right: 0 },
    camberGain: 0,
    toeGain: 0,
    rollSteer: 0,
    independent: false,
    suspensionRollShare: 1,
    tyreRollStiffness: Infinity,
    leftExcessLoad: 0,
  });
  const upright = { ...car, front: axle(car.front), rear: axle(car.rear) };
  const turn = trim(upright, { speed: 25 }, 0.2);
  const linear = steadyTurn(linearCarOf(upright, 25), turn?.steer ?? NaN);
  expect(linear.yawRate / (turn?.yawRate ?? NaN)).toBeCloseTo(1, 1.7);
  expect(linear.sideSlip / (turn?.sideSlip ?? NaN)).toBeCloseTo(1, 1.7);
});

test("downforce makes the tyres stiffer with speed", () => {
  const winged = { ...car, rear: { ...car.rear, downforceFactor: 1 } };
  const stiffness = (speed: number) => linearCarOf(winged, speed).corneringStiffness;
  expect(stiffness(50).rear).toBeGreaterThan(stiffness(20).rear);
  expect(stiffness(50).front).toBe(stiffness(20).front);
  expect(() => linearCarOf(car, 0)).toThrow("speed");
});
