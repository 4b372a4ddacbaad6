import { describe, expect, test } from "vitest";
import { type CarBalance, carBalance } from "../../../lib/balance/car-balance.js";
import { differentialDoubts } from "../../../lib/balance/differential-doubts.js";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { type PhaseName, phaseBalances, phaseNames, phases } from "../../../lib/balance/phases.js";
import { tipsOverAt } from "../../../lib/balance/stance-in-turn.js";
import { standingCar } from "../../../lib/balance/standing-car.js";
import { trim } from "../../../lib/balance/trim.js";
import type { Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { type Behaviour, cornersOf } from "../../../lib/change/behaviour.js";
import { easedIn } from "../../../lib/change/eased.js";
import { baselineOf, effectOf } from "../../../lib/change/effect.js";
import { endsWithoutLeanCost } from "../../../lib/change/lean-costs.js";
import { nearTippingIn } from "../../../lib/change/near-tipping.js";
import { onStops } from "../../../lib/change/on-stops.js";
import { whyNotRanked } from "../../../lib/change/ranked.js";
import { tradesOf } from "../../../lib/change/trade.js";

const speed = 25;

describe("better balanced and slower", () => {
  const figures = baselineOf(standingCar(demoCar)).behaviour.figures;
  const behaviour = (margin: number, turn: number): Behaviour => {
    const one = { understeerMargin: margin, lateralAcceleration: turn };
    return {
      figures,
      phases: { "braking in": one, "turn-in": one, middle: one, "power on": one },
    };
  };
  const trades = (before: [number, number], after: [number, number], tips: PhaseName[] = []) =>
    tradesOf(behaviour(...before), behaviour(...after), tips);

  test("is told from 0.05 m/s² nearer to neutral and 0.02 m/s² slower on, from either side", () => {
    const found = trades([0.3, 9], [0.2, 8.94]);
    expect(found.map(({ phase }) => phase)).toEqual(phaseNames);
    expect(found[0]?.better).toBeCloseTo(0.1, 9);
    expect(found[0]?.slower).toBeCloseTo(0.06, 9);
    expect(trades([-0.3, 9], [0.2, 8.94])).toHaveLength(4);
  });

  test("is not told below that, nor where the car is faster, or tips over", () => {
    expect(trades([0.3, 9], [0.26, 8.9])).toEqual([]);
    expect(trades([0.3, 9], [0.2, 8.99])).toEqual([]);
    expect(trades([0.3, 9], [0.2, 9.1])).toEqual([]);
    expect(trades([0.3, 9], [-0.4, 8.9])).toEqual([]);
    expect(trades([0.3, 9], [0.2, 8.9], ["middle"]).map(({ phase }) => phase)).toEqual([
      "braking in",
      "turn-in",
      "power on",
    ]);
  });
});

test("a part in which the car cannot brake so hard is told with what the worse corner can", () => {
  const balance = (ax: number, given: boolean) =>
    ({ longitudinalAcceleration: ax, given }) as CarBalance;
  const side = (braking: CarBalance) => ({
    "braking in": braking,
    "turn-in": balance(-1, true),
    middle: balance(0, true),
    "power on": balance(2, true),
  });
  const corners = { left: side(balance(-3.1, false)), right: side(balance(-2.9, false)) };
  expect(easedIn(corners)).toEqual([{ phase: "braking in", asked: -4, given: -2.9 }]);
  expect(easedIn({ left: side(balance(-4, true)), right: side(balance(-4, true)) })).toEqual([]);
});

describe("travel", () => {
  const at = (bumpTravel: number): Car => ({
    ...demoCar,
    front: { ...demoCar.front, geometry: { ...demoCar.front.geometry, bumpTravel } },
  });

  test("of a balance is what the trim of the same turn has", () => {
    const handling = handlingCarOf(demoCar);
    const { wheels, lateralAcceleration } = carBalance(handling, { speed });
    const near = trim(handling, { speed }, lateralAcceleration - 1e-3);
    for (const end of ["front", "rear"] as const)
      for (const side of ["left", "right"] as const) {
        expect(wheels[end][side].travel).toBeCloseTo(near?.wheels[end][side].travel ?? 9, 4);
        expect(wheels[end][side].load / (near?.wheels[end][side].load ?? 9)).toBeCloseTo(1, 2);
      }
  });

  test("that is used up is told, outer wheel and bump stop, once for both corners", () => {
    const stopsWith = (car: Car) => {
      const handling = handlingCarOf(car);
      return onStops(handling, cornersOf(handling, speed));
    };
    expect(stopsWith(demoCar)).toEqual([]);
    const short = stopsWith(at(0.05)); // it uses 55 mm on the brakes, and less elsewhere
    expect(short).toEqual([{ phase: "braking in", end: "front", wheel: "outer", stop: "bump" }]);
  });

  test("is told of a change that uses it up, and not of one that leaves it", () => {
    const before = baselineOf(standingCar(demoCar));
    const softer = effectOf({ lever: "springRate", end: "front", by: -5e3 }, before);
    expect(softer.onStops).toContainEqual({
      phase: "braking in",
      end: "front",
      wheel: "outer",
      stop: "bump",
    });
    const stiffer = effectOf({ lever: "springRate", end: "front", by: 5e3 }, before);
    expect(stiffer.onStops.filter(({ stop }) => stop === "bump")).toEqual([]);
    const again = effectOf(
      { lever: "springRate", end: "front", by: -5e3 },
      baselineOf(standingCar(at(0.05))),
    );
    expect(
      again.onStops.filter(({ phase, end }) => phase === "braking in" && end === "front"),
    ).toEqual([]); // it was on it before
  });
});

describe("tipping", () => {
  const tall = (height: number): Car => ({ ...demoCar, body: { ...demoCar.body, height } });

  test("is near where the hardest turn is nine tenths of it or more, phase by phase", () => {
    for (const height of [0.54, 0.66, 0.7, 0.74]) {
      const handling = handlingCarOf(tall(height));
      const corners = cornersOf(handling, speed);
      const near = nearTippingIn(handling, speed, corners).map(({ phase }) => phase);
      const expected = phaseNames.filter((name) => {
        const at = tipsOverAt(handling, { speed, ...phases[name] });
        return corners.left[name].lateralAcceleration >= 0.9 * at; // the demo car is nearly even
      });
      expect(near).toEqual(expect.arrayContaining(expected));
      expect(near.length - expected.length).toBeLessThanOrEqual(1);
    }
    const demo = handlingCarOf(demoCar);
    expect(nearTippingIn(demo, speed, cornersOf(demo, speed))).toEqual([]);
  });
});

describe("a differential of which nobody knows the kind", () => {
  const { differential: _, ...unknown } = demoCar.rear;
  const car: Car = { ...demoCar, rear: unknown };
  const handling = handlingCarOf(car);
  const open = phaseBalances(handling, speed);

  test("is told with what the others would move, as those cars do", () => {
    const [rear, ...more] = differentialDoubts(car, handling, speed, open);
    expect([rear?.end, more]).toEqual(["rear", []]); // the front is not driven
    const locked = handlingCarOf({
      ...demoCar,
      rear: { ...demoCar.rear, differential: { kind: "locked" } },
    });
    const after = carBalance(locked, { speed, ...phases["power on"] });
    const shift = rear?.shifts.find(
      ({ instead, phase }) => instead.kind === "locked" && phase === "power on",
    );
    const expected = after.understeerMargin - open["power on"].understeerMargin;
    expect(shift?.shift).toBeCloseTo(expected, 3);
    for (const one of rear?.shifts ?? []) expect(Math.abs(one.shift)).toBeGreaterThanOrEqual(0.05);
  });

  test("is not doubted where the file names it", () => {
    expect(differentialDoubts(demoCar, handlingCarOf(demoCar), speed, open)).toEqual([]);
  });
});

test("pressure is ranked where the best one is known, dampers never, springs always", () => {
  const place = { lever: "tyrePressure", end: "front" } as const;
  const known = { ...demoCar.front.tyre, bestPressure: 190e3 };
  expect(whyNotRanked(demoCar, place)).toBe("best-pressure-not-known");
  expect(
    whyNotRanked({ ...demoCar, front: { ...demoCar.front, tyre: known } }, place),
  ).toBeUndefined();
  expect(whyNotRanked(demoCar, { lever: "damperRebound", end: "rear" })).toBe("dampers");
  expect(whyNotRanked(demoCar, { lever: "springRate", end: "rear" })).toBeUndefined();
});

test("the published road tyre says nothing of lean in braking, the club tyre does", () => {
  const tyre = { ...demoCar.front.tyre, name: "published road" };
  expect(endsWithoutLeanCost(demoCar)).toEqual([]);
  expect(endsWithoutLeanCost({ ...demoCar, front: { ...demoCar.front, tyre } })).toEqual(["front"]);
});
