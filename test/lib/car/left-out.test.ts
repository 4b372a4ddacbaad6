import { describe, expect, test } from "vitest";
import { limitBalanceOf } from "../../../lib/balance/limit-balance.js";
import { tyreStiffnessOf } from "../../../lib/car/axle.js";
import type { Axle, AxleTyre } from "../../../lib/car/car.js";
import { complianceSteerOf } from "../../../lib/car/compliance-steer.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { differentialOf } from "../../../lib/car/differential.js";
import { stopsOf } from "../../../lib/car/stops.js";
import { tyreCoefficientsOf, tyreNamed, tyreOf } from "../../../lib/car/tyres.js";

const { front } = demoCar;
const guided = (geometry: object): Axle => ({
  ...front,
  geometry: { rollCentreHeight: 0.05, ...geometry },
});

test("a differential that is left out is taken as open; a limited-slip one has both locks", () => {
  expect(differentialOf(front)).toEqual({ kind: "open" });
  expect(differentialOf({ ...front, differential: { kind: "locked" } })).toEqual({
    kind: "locked",
  });
  const differential = { kind: "limited-slip", power: 0.4, overrun: 0 } as const;
  expect(differentialOf({ ...front, differential })).toEqual(differential);
});

test("stops that are left out are usual ones; a travel that is left out does not end", () => {
  const usual = { bumpStop: 5e6, droopStop: 5e6 }; // 5 N/mm per mm – common practice, no source
  const free = { bumpTravel: Infinity, droopTravel: Infinity };
  expect(stopsOf(guided({}))).toEqual({ ...free, ...usual });
  const own = { bumpTravel: 0.04, droopTravel: 0.05, bumpStop: 2e6, droopStop: 3e7 };
  expect(stopsOf(guided(own))).toEqual(own);
});

test("compliance steer that is left out is what is usual at that end", () => {
  const degree = Math.PI / 180;
  // 0.2 and 0.02 °/kN – common practice, no source
  expect(complianceSteerOf(guided({}), "front")).toBeCloseTo((0.2 * degree) / 1000, 12);
  expect(complianceSteerOf(guided({}), "rear")).toBeCloseTo((0.02 * degree) / 1000, 12);
  expect(complianceSteerOf(guided({ complianceSteer: 0 }), "front")).toBe(0);
});

describe("the tyre of an axle", () => {
  const wearing = (own: Partial<AxleTyre>): Axle => ({ ...front, tyre: { ...front.tyre, ...own } });
  const state = { load: 3000, pressure: 200e3 };

  test("is its data's own where the file corrects nothing", () => {
    expect(tyreOf(front)).toBe(tyreNamed("club"));
    expect(tyreCoefficientsOf(wearing({ grip: 1, stiffness: 1, loadSensitivity: 1 }))).toBe(
      tyreNamed("club").coefficients,
    );
  });

  test("grips in proportion to its friction, side force and push alike", () => {
    const [own, better] = [tyreOf(front), tyreOf(wearing({ grip: 1.2 }))];
    expect(better.peakSideForce(state) / own.peakSideForce(state)).toBeCloseTo(1.2, 6);
    const [t, b] = [own.coefficients, better.coefficients];
    expect(b.PDX1 / t.PDX1).toBeCloseTo(1.2, 12);
    expect(b.PDX2 / t.PDX2).toBeCloseTo(1.2, 12);
  });

  test("loses no grip with load where its loss is set to none, and none is changed at its nominal load", () => {
    const flat = tyreOf(wearing({ loadSensitivity: 0 }));
    const friction = (load: number) => flat.peakSideForce({ ...state, load }) / load;
    expect(friction(5000)).toBeCloseTo(friction(2000), 6);
    expect(flat.peakSideForce(state)).toBeCloseTo(tyreOf(front).peakSideForce(state), 6); // 3000 N
  });

  test("is stiffer by its factor, in the springs of its axle too", () => {
    const stiff = wearing({ stiffness: 1.25 });
    expect(tyreStiffnessOf(stiff) / tyreStiffnessOf(front)).toBeCloseTo(1.25, 12);
  });

  test("decides which end gives up first", () => {
    const at = (grip: number) => limitBalanceOf({ ...demoCar, front: wearing({ grip }) }).first;
    expect([at(0.8), at(1.2)]).toEqual(["front", "rear"]);
  });
});
