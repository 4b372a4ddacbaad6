import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { standingCar } from "../../../lib/balance/standing-car.js";
import type { Car } from "../../../lib/car/car.js";
import type { ClassRule, RangeKind, RangeRule } from "../../../lib/car/class-rules.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { withValueAtPlace } from "../../../lib/car/file/place.js";
import { possibleChanges } from "../../../lib/change/steps.js";
import { mapAxesOf } from "../../../lib/map/map-axis.js";
import { classFactsOf } from "../../../lib/statics/class-check.js";

const factsOf = (car: Car) => classFactsOf(standingCar(car));
const free: Car = (({ limits: _, ...car }) => car)(demoCar);
const under = (rules: readonly ClassRule[], car: Car = free): Car => ({
  ...car,
  classRules: rules,
});
const broken = (car: Car) => factsOf(car).filter(({ held }) => !held);

/** Each number of the demo car as its file has it, and where the file has it; heights and angles at rest are those of the file. */
const numbers: readonly [RangeKind, "front" | "rear" | undefined, value: number, place: string][] =
  [
    ["wheelbase", undefined, 2.4, "wheelbase"],
    ["mass", undefined, 810 + 80 + 0 + 30 + 0 + 75 + 85, "ballast.mass"], // by hand: 1080 kg
    ["track", "front", 1.44, "front.track"],
    ["rideHeight", "rear", 0.14, "rear.rideHeight"],
    ["camber", "front", (-1.5 * Math.PI) / 180, "front.camber.left"],
    ["toe", "rear", (0.1 * Math.PI) / 180, "rear.toe.left"],
    ["tyrePressure", "front", 200e3, "front.tyre.pressure.left"],
    ["springRate", "rear", 50e3, "rear.spring.rate"],
    ["barRate", "front", 22e3, "front.bar.positions.2.rate"],
    ["seatTurns", "rear", 0, "rear.spring.seatTurns.left"],
  ];

describe("the rules of a class", () => {
  it("are told at each place with value, limit and distance", () => {
    const [left, right, ...others] = factsOf(
      under([{ kind: "rideHeight", name: "4.1", end: "front", least: 0.134 }]),
    );
    expect(others).toEqual([]);
    expect(left).toMatchObject({ rule: "4.1", where: "front left", held: false, limit: 0.134 });
    expect(right).toMatchObject({ where: "front right", held: false });
    if (left?.code === "limit") expect(left.margin).toBeCloseTo(-0.004, 9); // by hand: 130 − 134 mm
  });

  it("say which tyre a car is on, and which it should be", () => {
    const mixed = {
      ...free,
      rear: { ...free.rear, tyre: { ...free.rear.tyre, name: "published road" } },
    };
    expect(factsOf(under([{ kind: "tyre", tyre: "club" }], mixed))).toEqual([
      { code: "tyre", where: "front", value: "club", limit: "club", held: true },
      { code: "tyre", where: "rear", value: "published road", limit: "club", held: false },
    ]);
  });

  it("take the place of what a car's own file says of the same number, and leave the rest", () => {
    const facts = factsOf(under([{ kind: "mass", least: 1000 }], demoCar));
    const masses = facts.filter((one) => one.code === "limit" && one.parameter === "mass");
    expect(masses).toMatchObject([{ limit: 1000, margin: 80 }]); // by hand: 1080 − 1000 kg
    expect(facts.filter((one) => one.code === "limit" && one.parameter === "camber")).toHaveLength(
      4,
    );
  });

  it("are all held by a car inside them, and one number past its limit breaks just that rule by that much", () => {
    const room = fc.tuple(...numbers.map(() => fc.double({ min: 1e-4, max: 1e-2, noNaN: true })));
    const which = fc.nat({ max: numbers.length - 1 });
    const past = fc.double({ min: 1e-6, max: 1e-3, noNaN: true });
    fc.assert(
      fc.property(room, which, past, fc.boolean(), (rooms, at, over, above) => {
        const rules: RangeRule[] = numbers.map(([kind, end, value], i) => ({
          ...{
            kind,
            name: `${i}`,
            least: value - (rooms[i] ?? 0),
            greatest: value + (rooms[i] ?? 0),
          },
          ...(end && { end }),
        }));
        expect(broken(under(rules))).toEqual([]);
        const tight = rules.map((rule, i): RangeRule => {
          if (i !== at) return rule;
          const { least: _, greatest: __, ...bare } = rule;
          const value = numbers[i]?.[2] ?? 0;
          return above ? { ...bare, greatest: value - over } : { ...bare, least: value + over };
        });
        const found = broken(under(tight));
        expect(found.length).toBeGreaterThan(0);
        for (const fact of found) {
          expect(fact).toMatchObject({ rule: `${at}`, code: "limit" });
          if (fact.code === "limit") expect(fact.margin).toBeCloseTo(-over, 7);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("see a number of the car that is moved past a limit, at its wheel alone", () => {
    for (const [kind, end, value, place] of numbers) {
      const step = kind === "mass" ? 1 : Math.abs(value) > 1e3 ? 500 : 1e-3;
      const had = place === "ballast.mass" ? 0 : value;
      const moved = withValueAtPlace({ ...free }, place, had + step) as unknown as Car;
      const rule: RangeRule = { kind, ...(end && { end }), greatest: value + step / 4 };
      expect(broken(under([rule])), place).toEqual([]);
      const found = broken(under([rule], moved));
      const most = kind === "rideHeight" ? 2 : 1; // the file's ride height is that of both wheels
      expect(found, place).toHaveLength(most);
      for (const fact of found)
        if (fact.code === "limit") expect(fact.margin, place).toBeCloseTo(-0.75 * step, 5);
    }
  });
});

describe("what a class fixes", () => {
  const car = under([
    { kind: "fixed", levers: ["brakeFrontShare", "camber"] },
    { kind: "fixed", end: "front", levers: ["springRate"] },
  ]);

  it("is no change that can be made, and no axis of a map", () => {
    const all = possibleChanges(free);
    const forbidden = all.filter(
      (change) =>
        ["brakeFrontShare", "camber"].includes(change.lever) ||
        (change.lever === "springRate" && "end" in change && change.end === "front"),
    );
    expect(forbidden.length).toBeGreaterThan(0);
    expect(possibleChanges(car)).toEqual(all.filter((one) => !forbidden.includes(one)));
    const keys = mapAxesOf(car).map(({ key }) => key);
    expect(keys).toContain("rear-springRate");
    for (const key of ["front-springRate", "front-camber", "rear-camber", "brakeFrontShare"])
      expect(keys).not.toContain(key);
  });
});
