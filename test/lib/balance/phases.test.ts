import { expect, test } from "vitest";
import { phaseBalances, phaseNames, phases } from "../../../lib/balance/phases.js";
import { trim } from "../../../lib/balance/trim.js";
import { lightCar } from "./cars.js";

test("in each phase the four-wheel car holds a turn just inside the limit, and none beyond it", () => {
  const balances = phaseBalances(lightCar, 20);
  for (const name of phaseNames) {
    const driving = { speed: 20, ...phases[name] };
    const limit = balances[name].lateralAcceleration;
    expect(trim(lightCar, driving, limit * 0.995), name).toBeDefined();
    expect(trim(lightCar, driving, limit * 1.005), name).toBeUndefined();
  }
});

test("a start from a similar car gives the same balances", () => {
  const stiff = { ...lightCar, front: { ...lightCar.front, rollStiffness: 33e3 } };
  const start = phaseBalances(stiff, 20);
  const [cold, warm] = [phaseBalances(lightCar, 20), phaseBalances(lightCar, 20, start)];
  for (const name of phaseNames)
    expect(warm[name].understeerMargin).toBeCloseTo(cold[name].understeerMargin, 3);
});

test("more braking at the front moves braking-in towards understeer and leaves the middle alone", () => {
  const before = phaseBalances(lightCar, 20);
  const after = phaseBalances({ ...lightCar, brakeFrontShare: 0.74 }, 20);
  const change = (name: (typeof phaseNames)[number]) =>
    after[name].understeerMargin - before[name].understeerMargin;
  expect(change("braking in")).toBeGreaterThan(0.2);
  expect(change("middle")).toBe(0);
});

test("a stiff front damper is felt at turn-in and not in the middle", () => {
  const damped = { ...lightCar, front: { ...lightCar.front, rollDamping: 6000 } };
  const [before, after] = [phaseBalances(lightCar, 20), phaseBalances(damped, 20)];
  expect(after["turn-in"].understeerMargin).toBeGreaterThan(
    before["turn-in"].understeerMargin + 0.05,
  );
  expect(after.middle).toEqual(before.middle);
});
