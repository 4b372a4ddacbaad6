import { expect, test } from "vitest";
import { carBalance } from "../../../lib/balance/car-balance.js";
import { phaseBalances, phaseNames, phases } from "../../../lib/balance/phases.js";
import { lightCar } from "./cars.js";

test("each phase is the balance of what the driver does in it", () => {
  const balances = phaseBalances(lightCar, 20);
  for (const name of phaseNames)
    expect(balances[name]).toEqual(carBalance(lightCar, { speed: 20, ...phases[name] }));
});

test("a start from a similar car gives the same balances", () => {
  const stiff = { ...lightCar, front: { ...lightCar.front, rollStiffness: 33e3 } };
  const start = phaseBalances(stiff, 20);
  const [cold, warm] = [phaseBalances(lightCar, 20), phaseBalances(lightCar, 20, start)];
  for (const name of phaseNames)
    expect(warm[name].understeerMargin).toBeCloseTo(cold[name].understeerMargin, 4);
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
