import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { barRateOf } from "../../../lib/car/axle.js";
import type { Axle, Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { geometryOfLinkage } from "../../../lib/car/file/linkage-geometry.js";
import { tyreNamed } from "../../../lib/car/tyres.js";
import { standAxle } from "../../../lib/linkage/axle-in-space.js";
import type { Wheels } from "../../../lib/load/wheels.js";
import { measuredLoadsOf } from "../../../lib/statics/measured-loads.js";
import { putBack } from "../../../lib/statics/put-back.js";
import { restOf } from "../../../lib/statics/rest.js";
import { beam } from "../linkage/reference-corners.js";
import { energyOf, minimise } from "./energy-of-car.js";

const g = 9.80665;
const list = ({ front, rear }: Wheels<number>) => [front.left, front.right, rear.left, rear.right];
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const withFront = (change: Partial<Axle>): Car => ({
  ...demoCar,
  front: { ...demoCar.front, ...change },
});

const axleChange = fc.record({
  rate: within(0.6, 1.6),
  left: within(-4, 4),
  right: within(-4, 4),
  pressureLeft: within(160e3, 245e3),
  pressureRight: within(160e3, 245e3),
  position: fc.constantFrom(1, 2, 3, 4),
  beam: fc.boolean(),
});

/** A set-up of the demo car far from the one it was measured with. */
const changedCars = fc
  .record({ front: axleChange, rear: axleChange, driver: within(0, 120), side: within(-0.5, 0.5) })
  .map(({ front, rear, driver, side }): [Car, Car] => {
    const spacing = (axle: Axle, beam: boolean) => (beam ? { spacing: axle.track * 0.7 } : {});
    const then = (axle: Axle, { beam }: typeof front): Axle => ({
      ...axle,
      spring: { ...axle.spring, ...spacing(axle, beam) },
    });
    const now = (axle: Axle, change: typeof front): Axle => ({
      ...axle,
      spring: {
        ...axle.spring,
        ...spacing(axle, change.beam),
        rate: axle.spring.rate * change.rate,
        seatTurns: { left: change.left, right: change.right },
      },
      ...(axle.bar && { bar: { ...axle.bar, position: change.position } }),
      tyre: { ...axle.tyre, pressure: { left: change.pressureLeft, right: change.pressureRight } },
    });
    const changed = {
      ...demoCar,
      driver: { mass: driver, behindFrontAxle: 1.3, leftOfCentre: side, height: 0.5 },
      front: now(demoCar.front, front),
      rear: now(demoCar.rear, rear),
    };
    const measured = {
      ...demoCar,
      front: then(demoCar.front, front),
      rear: then(demoCar.rear, rear),
    };
    return [changed, measured];
  });

const tyreRates = (car: Car) =>
  [car.front, car.rear].flatMap(({ tyre }) =>
    [tyre.pressure.left, tyre.pressure.right].map(
      (pressure) => tyreNamed(tyre.name).verticalStiffness({ load: 3000, pressure }), // as at the load it was made for
    ),
  );

describe("a car at rest", () => {
  it("stands as it was measured when nothing was changed", () => {
    const rest = restOf(demoCar);
    expect(rest.heave).toBeCloseTo(0, 12);
    expect(rest.roll).toBeCloseTo(0, 12);
    expect(rest.rideHeight.front.left).toBeCloseTo(0.13, 12);
    list(rest.load).forEach((load, i) => {
      expect(load).toBeCloseTo(list(measuredLoadsOf(demoCar))[i] ?? Number.NaN, 6);
    });
  });

  it("carries its weight, whole and about both axes", () => {
    fc.assert(
      fc.property(changedCars, ([car, measured]) => {
        const [fl = 0, fr = 0, rl = 0, rr = 0] = list(restOf(car, measured).load);
        const parts = [car.body, car.driver, car.fuel].flatMap((part) => part ?? []);
        const sum = (of: (part: (typeof parts)[number]) => number) =>
          parts.reduce((total, part) => total + part.mass * g * of(part), 0);
        const wheels = (car.front.unsprungMass + car.rear.unsprungMass) * g;
        expect(fl + fr + rl + rr).toBeCloseTo(sum(() => 1) + wheels, 6);
        const rear =
          sum((part) => part.behindFrontAxle) + car.rear.unsprungMass * g * car.wheelbase;
        expect((rl + rr) * car.wheelbase).toBeCloseTo(rear, 6);
      }),
    );
  });

  it("is where a general minimiser of potential energy finds the lowest point", () => {
    fc.assert(
      fc.property(changedCars, ([car, measured]) => {
        const rest = restOf(car, measured);
        const bars = [car.front.bar, car.rear.bar].map((bar) => (bar ? barRateOf(bar) : 0));
        const energy = energyOf(car, measured, {
          loads: list(measuredLoadsOf(measured)),
          tyreRates: tyreRates(car),
          tyreRatesThen: tyreRates(measured),
          barRates: [bars[0] ?? 0, bars[1] ?? 0],
        });
        const lowest = minimise(energy, 7);
        expect(Math.abs(rest.heave - (lowest[0] ?? 1))).toBeLessThan(2e-6);
        expect(Math.abs(rest.pitch - (lowest[1] ?? 1))).toBeLessThan(2e-6);
        expect(Math.abs(rest.roll - (lowest[2] ?? 1))).toBeLessThan(2e-6);
      }),
      { numRuns: 25 },
    );
  });

  it("rises with a stiffer spring and with more air, as practice says", () => {
    const stiffer = restOf(withFront({ spring: { ...demoCar.front.spring, rate: 80e3 } }), demoCar);
    const harder = restOf(
      withFront({ tyre: { ...demoCar.front.tyre, pressure: { left: 240e3, right: 240e3 } } }),
      demoCar,
    );
    expect(stiffer.rideHeight.front.left).toBeGreaterThan(0.13);
    expect(harder.rideHeight.front.right).toBeGreaterThan(0.13);
  });

  it("rises by the shorter deflection of the stiffer spring when both are changed alike", () => {
    // by hand, one corner in heave: the same load F presses k1 less: F/(i²k0) − F/(i²k1)
    const symmetric: Car = {
      ...demoCar,
      body: { ...demoCar.body, leftOfCentre: 0, behindFrontAxle: 1.2 },
      driver: { mass: 0, behindFrontAxle: 1.2, leftOfCentre: 0, height: 0.5 },
      fuel: { mass: 0, behindFrontAxle: 1.2, leftOfCentre: 0, height: 0.4 },
    };
    const rate = 75e3;
    const changed = {
      ...symmetric,
      front: { ...symmetric.front, spring: { ...symmetric.front.spring, rate } },
    };
    const load = (810 * g) / 4;
    const rise = load / 0.65 ** 2 / 60e3 - load / 0.65 ** 2 / 75e3;
    expect(restOf(changed, symmetric).rideHeight.front.left - 0.13).toBeCloseTo(rise, 9);
  });

  it("leaves heights and loads alone when a bar is changed on a level car", () => {
    const bar = demoCar.front.bar;
    if (bar === undefined) throw new Error("the demo car has a front bar");
    const rest = restOf(withFront({ bar: { ...bar, position: 5 } }), demoCar);
    expect(rest.heave).toBeCloseTo(0, 10);
    expect(rest.crossShare).toBeCloseTo(restOf(demoCar).crossShare, 10);
  });

  it("puts the cross weight up when the right front seat is raised", () => {
    const seats = { ...demoCar.front.spring, seatTurns: { left: 0, right: 2 } };
    const rest = restOf(withFront({ spring: seats }), demoCar);
    expect(rest.crossShare).toBeGreaterThan(restOf(demoCar).crossShare);
    expect(rest.rideHeight.front.right).toBeGreaterThan(0.13);
    expect(rest.frontShare).toBeCloseTo(restOf(demoCar).frontShare, 9);
  });

  it("leans to the side of a driver who gets in", () => {
    const { driver: _, ...empty } = demoCar;
    const rest = restOf(demoCar, { ...empty });
    expect(rest.roll).toBeLessThan(0); // driver on the left: left side down
    expect(rest.heave).toBeLessThan(0);
  });

  it("lifts a wheel rather than pull on the road", () => {
    const soft = (axle: Axle, left: number): Axle => ({
      ...axle,
      spring: { ...axle.spring, seatTurns: { left, right: -left } },
    });
    const warped = { ...demoCar, front: soft(demoCar.front, 60), rear: soft(demoCar.rear, -60) };
    const loads = list(restOf(warped).load);
    expect(loads.filter((load) => load === 0)).toHaveLength(1);
    expect(loads.reduce((a, b) => a + b)).toBeCloseTo(1080 * g, 6);
    expect(() => putBack(warped, demoCar)).toThrow(/is in the air/);
  });
});

describe("camber and toe of an axle that rolls at rest", () => {
  const soft: Car = {
    ...demoCar,
    rear: { ...demoCar.rear, spring: { ...demoCar.rear.spring, rate: 25e3 } },
  };
  const spacing = (spring: Axle["spring"]) => ({ ...spring, spacing: 1 });
  const onBeam: Car = {
    ...soft,
    rear: {
      ...soft.rear,
      track: 1.48, // that of the beam
      spring: spacing(soft.rear.spring),
      geometry: geometryOfLinkage(beam),
      camber: { left: 0, right: 0 },
      toe: { left: 0, right: 0 },
    },
  };
  const driverAt = (car: Car, leftOfCentre: number): Car => ({
    ...car,
    driver: { mass: 150, behindFrontAxle: 1.5, leftOfCentre, height: 0.5 },
  });

  it("is on a beam what its joints make of it under a body that leans on its springs", () => {
    const { load, travel, camber, toe } = restOf(driverAt(onBeam, 0.6), driverAt(onBeam, 0));
    const { left, right } = travel.rear;
    const position = { heave: -(left + right) / 2, rollAngle: (right - left) / onBeam.rear.track };
    expect(Math.abs(position.rollAngle)).toBeGreaterThan(0.005);
    const axle = standAxle(beam, position);
    expect(toe.rear.left).toBeCloseTo(axle.left.toe, 4);
    expect(toe.rear.right).toBeCloseTo(axle.right.toe, 4);
    expect(Math.abs(toe.rear.left)).toBeGreaterThan(3e-4); // turned, not toed in
    // on tyres the beam leans by the difference of their squash over the track
    const before = measuredLoadsOf(driverAt(onBeam, 0)).rear;
    const more = load.rear.left - before.left - (load.rear.right - before.right);
    const lean = more / (tyreRates(onBeam)[2] ?? Number.NaN) / onBeam.rear.track; // to the left
    expect(camber.rear.left).toBeCloseTo(lean, 9);
    expect(camber.rear.right).toBeCloseTo(-lean, 9);
  });

  it("follows each wheel's own travel where the wheels are independent", () => {
    const { travel, toe } = restOf(driverAt(soft, 0.6), driverAt(soft, 0));
    const { toeGain = Number.NaN } = soft.rear.geometry;
    for (const side of ["left", "right"] as const)
      expect(toe.rear[side]).toBeCloseTo(soft.rear.toe[side] + toeGain * travel.rear[side], 12);
  });
});

describe("a car that cannot stand", () => {
  const outside = { ...demoCar.body, leftOfCentre: demoCar.front.track };

  it("is refused when its weight lies beside its wheels", () => {
    expect(() => restOf({ ...demoCar, body: outside })).toThrow(/^The car cannot stand/);
  });

  it("is refused too when only a body lying over would be in balance", () => {
    const { driver: _driver, fuel: _fuel, ...alone } = demoCar;
    const below = { ...outside, height: 0.03 }; // under its roll axis: leaning holds it up, far out
    expect(() => restOf({ ...alone, body: below })).toThrow(/^The car cannot stand/);
  });
});

describe("putting a car back", () => {
  it("restores heights and cross weight exactly after any change", () => {
    const before = restOf(demoCar);
    fc.assert(
      fc.property(changedCars, ([car, measured]) => {
        fc.pre(list(restOf(car, measured).load).every((load) => load > 200));
        const { exact } = putBack(car, measured);
        list(exact.rideHeight).forEach((height, i) => {
          expect(height).toBeCloseTo(list(before.rideHeight)[i] ?? Number.NaN, 9);
        });
        expect(exact.crossShare).toBeCloseTo(before.crossShare, 9);
      }),
    );
  });

  it("turns least when only the heights are asked for", () => {
    fc.assert(
      fc.property(changedCars, ([car, measured]) => {
        fc.pre(list(restOf(car, measured).load).every((load) => load > 400));
        const size = (turns: Wheels<number>) => Math.hypot(...list(turns));
        const all = putBack(car, measured);
        const heights = putBack(car, measured, undefined, false);
        expect(size(heights.turns)).toBeLessThanOrEqual(size(all.turns) + 1e-9);
        expect(heights.exact.roll).toBeCloseTo(0, 9);
        expect(heights.exact.heave).toBeCloseTo(0, 9);
      }),
    );
  });

  it("undoes seat turns by the opposite turns", () => {
    const seats = { ...demoCar.front.spring, seatTurns: { left: 2, right: -1 } };
    const { turns } = putBack(withFront({ spring: seats }), demoCar);
    expect(turns.front.left).toBeCloseTo(-2, 8);
    expect(turns.front.right).toBeCloseTo(1, 8);
    expect(turns.rear.left).toBeCloseTo(0, 8);
  });

  it("says what whole steps of the adjuster leave", () => {
    const seats = { ...demoCar.front.spring, rate: 80e3 };
    const { roundedTurns, rounded } = putBack(withFront({ spring: seats }), demoCar);
    expect(roundedTurns.front.left * 2).toBeCloseTo(Math.round(roundedTurns.front.left * 2), 12);
    expect(Math.abs(rounded.rideHeight.front.left - 0.13)).toBeLessThan(0.001);
  });

  it("sets any cross weight without moving the body", () => {
    const goal = { ...restOf(demoCar), crossShare: 0.5 };
    const { exact } = putBack(demoCar, demoCar, goal);
    expect(exact.crossShare).toBeCloseTo(0.5, 9);
    expect(exact.heave).toBeCloseTo(0, 9);
    expect(exact.roll).toBeCloseTo(0, 9);
  });

  it("gives back the camber that a change of height took", () => {
    const lower = withFront({
      spring: { ...demoCar.front.spring, seatTurns: { left: -6, right: -6 } },
    });
    const changed = restOf(lower, demoCar);
    expect(changed.camber.front.left).toBeLessThan(demoCar.front.camber.left); // bump: top in
    const { camber } = putBack(lower, demoCar, changed);
    expect(changed.camber.front.left + camber.front.left).toBeCloseTo(demoCar.front.camber.left, 9);
  });
});
