import { expect, test } from "vitest";
import { carBalance } from "../../../../lib/balance/car-balance.js";
import { handlingCarOf } from "../../../../lib/balance/handling-car-of.js";
import { phaseNames } from "../../../../lib/balance/phases.js";
import { standingCar } from "../../../../lib/balance/standing-car.js";
import { demoCar } from "../../../../lib/car/demo-car.js";
import { applyChange } from "../../../../lib/change/apply.js";
import { behaviourOf } from "../../../../lib/change/behaviour.js";
import { cellsOf, shiftsOf } from "../../../../lib/day/debrief/cells.js";
import type { Venue, VenueCorner } from "../../../../lib/day/plan/venue.js";

const left: VenueCorner = { name: "Left", direction: "left", radius: 70, speed: 25 };
const right: VenueCorner = { ...left, name: "Right", direction: "right" };
const venue: Venue = { name: "Both ways", corners: [left, right] };

test("every part of every corner has a cell, in the order in which they are driven", () => {
  const cells = cellsOf(standingCar(demoCar), venue);
  expect(cells.map(({ corner }) => corner)).toEqual([
    ...Array(4).fill("Left"),
    ...Array(4).fill("Right"),
  ]);
  expect(cells.map(({ phase }) => phase)).toEqual([...phaseNames, ...phaseNames]);
});

test("left and right corners together are what the change table calls balance", () => {
  const cells = cellsOf(standingCar(demoCar), venue);
  for (const phase of phaseNames) {
    const both = cells.filter((cell) => cell.phase === phase);
    const mean = both.reduce((sum, { balance }) => sum + balance, 0) / 2;
    expect(mean).toBeCloseTo(behaviourOf(standingCar(demoCar)).phases[phase].understeerMargin, 4);
  }
});

test("going uphill asks the tyres for the push of gaining speed", () => {
  const grade = 0.06;
  const push = 9.80665 * (grade / Math.hypot(1, grade)); // by hand: g·sin(atan grade)
  const driving = { speed: 25, longitudinalAcceleration: push };
  const cells = cellsOf(standingCar(demoCar), { name: "Hill", corners: [{ ...left, grade }] });
  const middle = cells.find(({ phase }) => phase === "middle");
  const asIfGaining = carBalance(handlingCarOf(demoCar), driving);
  // the road carries cos(atan 0.06) of the weight: 0.2 % less
  expect(middle?.balance).toBeCloseTo(asIfGaining.understeerMargin, 2);
});

test("what a corner leaves to spare is what the car can do less what the corner asks", () => {
  const cells = cellsOf(standingCar(demoCar), venue);
  for (const { lateralAcceleration, spare } of cells)
    expect(lateralAcceleration - (spare ?? Number.NaN)).toBeCloseTo(625 / 70, 9); // by hand: 25²/70
});

test("a stiffer front bar shifts every cell towards the front sliding first", () => {
  const stiffer = applyChange(demoCar, { lever: "barPosition", end: "front", by: 1 });
  const shifts = shiftsOf(
    cellsOf(standingCar(demoCar), venue),
    cellsOf(standingCar(stiffer, demoCar), venue),
  );
  for (const { shift } of shifts) expect(shift).toBeGreaterThan(0);
});
