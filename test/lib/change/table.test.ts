import { describe, expect, test } from "vitest";
import { phaseNames } from "../../../lib/balance/phases.js";
import { standingCar } from "../../../lib/balance/standing-car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { behaviourOf, differenceOf, tipsIn } from "../../../lib/change/behaviour.js";
import type { Change } from "../../../lib/change/change.js";
import { baselineOf, effectOf } from "../../../lib/change/effect.js";
import { changeTable } from "../../../lib/change/table.js";
import { restOf } from "../../../lib/statics/rest.js";

const before = baselineOf(standingCar(demoCar));
const effect = (change: Change) => effectOf(change, before);
const middle = (change: Change) => effect(change).moved.phases.middle.understeerMargin;

describe("the signs that the trade knows, in the middle of a corner", () => {
  // common practice, no source: the softer end keeps more grip while all wheels are down
  test.each<[string, Change, "understeer" | "oversteer"]>([
    ["a stiffer front bar", { lever: "barPosition", end: "front", by: 1 }, "understeer"],
    ["a softer front bar", { lever: "barPosition", end: "front", by: -1 }, "oversteer"],
    ["a stiffer rear bar", { lever: "barPosition", end: "rear", by: 1 }, "oversteer"],
    ["stiffer front springs", { lever: "springRate", end: "front", by: 5e3 }, "understeer"],
    ["softer rear springs", { lever: "springRate", end: "rear", by: -5e3 }, "understeer"],
    [
      "a higher front roll centre",
      { lever: "rollCentreHeight", end: "front", by: 0.01 },
      "understeer",
    ],
    ["more front camber", { lever: "camber", end: "front", by: -0.0087 }, "oversteer"],
    [
      "far too much front pressure",
      { lever: "tyrePressure", end: "front", by: 45e3 },
      "understeer",
    ],
    ["ballast behind", { lever: "ballast", by: 30 }, "oversteer"],
  ])("%s moves balance the way it is said to", (_, change, way) => {
    if (way === "understeer") expect(middle(change)).toBeGreaterThan(0);
    else expect(middle(change)).toBeLessThan(0);
  });
});

test("dampers move nothing but the phase in which the body rolls", () => {
  const { phases } = effect({ lever: "damperRebound", end: "rear", by: 800 }).moved;
  expect(phases["turn-in"].understeerMargin).not.toBe(0);
  for (const name of ["braking in", "middle", "power on"] as const)
    expect(phases[name]).toEqual({ understeerMargin: 0, lateralAcceleration: 0 });
});

test("brake balance moves the braking phases and no other", () => {
  const { phases } = effect({ lever: "brakeFrontShare", by: 0.02 }).moved;
  expect(phases["braking in"].understeerMargin).toBeGreaterThan(0);
  expect(phases.middle.understeerMargin).toBe(0);
});

test("a bar moves neither height nor alignment nor one-axle bounce", () => {
  const { figures } = effect({ lever: "barPosition", end: "front", by: 1 }).moved;
  for (const end of ["front", "rear"] as const) {
    expect(figures.rideHeight[end]).toBeCloseTo(0, 9);
    expect(figures.camber[end]).toBeCloseTo(0, 9);
    expect(figures.rideFrequency[end]).toBeCloseTo(0, 9);
  }
  expect(figures.rollGradient).toBeLessThan(0);
  expect(figures.oneWheelRate.front).toBeCloseTo(10e3 * 0.6 ** 2, 6); // by hand: Δk·i²
});

test("softer springs let their end down, and the seats bring it back", () => {
  const { moved, putBack } = effect({ lever: "springRate", end: "front", by: -5e3 });
  const load = ((1080 * (1 - 1.1525 / 2.4) - 75) * 9.80665) / 2; // on one spring's wheel
  const sink = (load / 0.65 / 55e3 - load / 0.65 / 60e3) / 0.65; // by hand, at the wheel
  expect(moved.figures.rideHeight.front).toBeCloseTo(-sink, 4);
  expect(putBack?.turns.front.left).toBeGreaterThan(0);
  const step = 1.5e-3 / 2 / 0.65; // half a turn of the seat, at the wheel
  expect(Math.abs(putBack?.moved.figures.rideHeight.front ?? 1)).toBeLessThan(step);
});

test("the put-back car of a spring change moves balance by the spring alone", () => {
  const { moved, putBack } = effect({ lever: "springRate", end: "rear", by: 5e3 });
  expect(putBack?.moved.phases.middle.understeerMargin).toBeLessThan(0);
  expect(putBack?.moved.phases.middle.understeerMargin).not.toBe(
    moved.phases.middle.understeerMargin,
  );
});

test("a change that breaks a limit of the class says which", () => {
  const low = effect({ lever: "seatTurns", end: "front", by: -10 });
  expect(low.broken.map(({ parameter, where }) => `${parameter} ${where}`)).toEqual([
    "rideHeight front left",
    "rideHeight front right",
  ]);
  expect(effect({ lever: "seatTurns", end: "front", by: -1 }).broken).toEqual([]);
});

test("what moved is the changed car's behaviour minus the first car's", () => {
  const { car, moved } = effect({ lever: "barPosition", end: "rear", by: 1 });
  const after = behaviourOf(standingCar(car, demoCar));
  const { phases, figures } = differenceOf(after, before.behaviour);
  expect(moved.figures).toEqual(figures);
  for (const name of phaseNames) {
    const [there, here] = [moved.phases[name], phases[name]];
    expect(there.understeerMargin).toBeCloseTo(here.understeerMargin, 3); // solver's start differs
    expect(there.lateralAcceleration).toBeCloseTo(here.lateralAcceleration, 4);
  }
});

test("the table has a row for every change that the car allows, each once", () => {
  const rows = changeTable(standingCar(demoCar));
  expect(rows.length).toBe(44);
  expect(new Set(rows.map(({ change }) => JSON.stringify(change))).size).toBe(44);
  for (const row of rows) expect(row.effect?.moved.phases.middle).toBeDefined();
});

test("changes start from where the car stands now, not from where it was measured", () => {
  const turned = { ...demoCar.front.spring, seatTurns: { left: 4, right: 4 } };
  const raised = { ...demoCar, front: { ...demoCar.front, spring: turned } };
  const from = baselineOf(standingCar(raised, demoCar));
  expect(from.behaviour.figures.rideHeight.front).toBeCloseTo(
    (restOf(raised, demoCar).rideHeight.front.left +
      restOf(raised, demoCar).rideHeight.front.right) /
      2,
    12,
  );
  const { putBack } = effectOf({ lever: "springRate", end: "front", by: 5e3 }, from);
  expect(putBack?.car.front.spring.seatTurns.left).toBeLessThan(4);
  expect(putBack?.car.front.spring.seatTurns.left).toBeGreaterThan(-4);
});

test("a car that tips over before its tyres let go says in which parts of the corner", () => {
  expect(effect({ lever: "barPosition", end: "front", by: 1 }).tips).toEqual([]);
  // locked: an open differential would leave it without push before the second wheel is up
  const rear = { ...demoCar.rear, differential: { kind: "locked" as const } };
  const tall = { ...demoCar, rear, body: { ...demoCar.body, height: 1.1 } };
  const from = baselineOf(standingCar(tall));
  const { tips } = effectOf({ lever: "camber", end: "front", by: -0.0044 }, from);
  expect(tips).toContain("middle");
  const oneSided = { ...tall, body: { ...tall.body, height: 0.8, leftOfCentre: 0.12 } };
  const { left, right } = baselineOf(standingCar(oneSided)).corners;
  expect([left.middle.tips, right.middle.tips]).toEqual([false, true]);
  expect(tipsIn({ left, right })).toContain("middle");
});
