import { describe, expect, test } from "vitest";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { standingCar } from "../../../lib/balance/standing-car.js";
import { tyreDoubts } from "../../../lib/balance/tyre-doubts.js";
import type { Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { changeTable } from "../../../lib/change/table.js";

const shod = (name: string, left: number, right = left): Car => {
  const tyre = { name, pressure: { left, right } };
  const tyrePressure = { min: 150e3, max: 300e3, step: 5e3 };
  const axle = (end: "front" | "rear") => ({
    ...demoCar[end],
    tyre,
    adjusters: { ...demoCar[end].adjusters, tyrePressure },
  });
  return { ...demoCar, front: axle("front"), rear: axle("rear") };
};
const kinds = (car: Car) =>
  tyreDoubts(standingCar(car), 25).map(({ end, what }) => `${end} ${what}`);

test("the data of its tyres cover the demo car", () => {
  expect(tyreDoubts(standingCar(demoCar), 25)).toEqual([]);
});

describe("a pressure outside the data", () => {
  const over = shod("published road", 270e3); // its data: 186 to 255 kPa – reference-tyre.ts

  test("is told for each axle, with what the data reach", () => {
    const [front, rear] = tyreDoubts(standingCar(over), 25).filter(
      ({ what }) => what === "pressure",
    );
    expect(front).toEqual({
      end: "front",
      tyre: "published road",
      what: "pressure",
      value: 270e3,
      range: { minimum: 186e3, maximum: 255e3 },
    });
    expect(rear?.end).toBe("rear");
  });

  test("is indeed where a step of pressure does nothing to the limit", () => {
    const row = changeTable(standingCar(over)).find(
      ({ change }) => change.lever === "tyrePressure",
    );
    expect(Math.abs(row?.effect?.moved.phases.middle.understeerMargin ?? 1)).toBeLessThan(1e-3);
  });

  test("of one side is that side's, the side farthest outside", () => {
    const pressures = tyreDoubts(standingCar(shod("published road", 200e3, 180e3)), 25);
    expect(pressures[0]).toMatchObject({ what: "pressure", value: 180e3 });
  });

  test("has none at the ends of the data", () => {
    expect(kinds(shod("published road", 255e3))).not.toContain("front pressure");
    expect(kinds(shod("published road", 186e3))).not.toContain("front pressure");
  });
});

test("load and lean at the limit are told where they leave the data, in right corners too", () => {
  const heavy = { ...demoCar, body: { ...demoCar.body, mass: 2400 } };
  expect(kinds(heavy)).toContain("front load");
  const axle = (leaning: Car["front"]) => ({ ...leaning, camber: { left: -0.1, right: 0 } });
  const leaning = { ...demoCar, front: axle(demoCar.front) };
  expect(kinds(leaning)).toContain("front inclination");
});

test("a car that tips over is asked up to where it does", () => {
  const handling = { ...handlingCarOf(demoCar), sprungHeight: 1.2 };
  expect(() => tyreDoubts({ ...standingCar(demoCar), handling }, 25)).not.toThrow();
});
