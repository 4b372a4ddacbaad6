import { describe, expect, test } from "vitest";
import {
  bandSampler,
  type Car,
  carFromJson,
  demoCar,
  firstCar,
  possibleChanges,
  sharpeningsFor,
  totalMassOf,
} from "../../../lib/index.js";
import type { BandsSoFar } from "../../../site/bands/ask.js";
import { nextTold } from "../../../site/bands/next-told.js";
import { givenFrom, radiusIn } from "../../../site/pages/measure/first/given.js";
import { changesTold, endsTold } from "../../../site/pages/measure/next/tell.js";
import { wayOf } from "../../../site/pages/measure/next/way.js";
import { measurePage } from "../../../site/pages/measure/page.js";
import { firstField } from "../../../site/say/measure/first-car.js";
import { nextAnchor } from "../../../site/say/measure/titles.js";
import { readerWith } from "../../../site/say/reader.js";

const texts: Readonly<Record<string, string>> = {
  name: "Rook",
  mass: "1080",
  frontMass: "562",
  wheelbase: "2400 mm",
  "front.track": "1.44",
  "rear.track": "1.45",
  "front.pressure": "29 psi",
  "rear.pressure": "200",
  "front.rideHeight": "130",
  "rear.rideHeight": "140",
  "front.bar": "18",
  tyre: "195/50 R15 82V",
};
const typed = (more: Readonly<Record<string, string>> = {}) =>
  Object.fromEntries(
    Object.entries({ ...texts, ...more }).map(([key, text]) => [
      key,
      { text, units: "metric" as const },
    ]),
  );

function made(more: Readonly<Record<string, string>> = {}): Car {
  const read = givenFrom(typed(more));
  if ("missing" in read) throw new Error(read.missing.join());
  const { car, faults } = {
    faults: [],
    ...carFromJson(JSON.parse(JSON.stringify(firstCar(read.given)))),
  };
  if (car === undefined) throw new Error(faults.join());
  return car;
}

describe("a first car is typed", () => {
  test("in twelve fields, in any unit; a bar that is left blank is none", () => {
    const car = made();
    expect(Object.keys(texts)).toHaveLength(12);
    expect(totalMassOf(car).mass).toBeCloseTo(1080, 1);
    expect(car.wheelbase).toBeCloseTo(2.4, 9);
    expect(car.front.tyre.pressure.left).toBeCloseTo(29 * 6894.757, -1); // 1 psi is 6894.757 Pa – NIST SP 811
    expect(car.rear.bar).toBeUndefined();
    expect(car.front.bar?.positions).toHaveLength(1);
    expect(car.driveFrontShare).toBe(0);
  });

  test("with its driven wheels, seat and axles by a tap each", () => {
    const car = made({ driven: "front", seat: "right", rearKind: "beam" });
    expect(car.driveFrontShare).toBe(1);
    expect(car.driver?.leftOfCentre ?? 0).toBeLessThan(0);
    expect(car.rear.spring.spacing).toBeGreaterThan(1);
    expect(car.rear.geometry.camberGain).toBeUndefined();
  });

  test("and says what is missing, out of range or not possible, in the names of fields", () => {
    const missing = (more: Readonly<Record<string, string>>) => givenFrom(typed(more));
    expect(missing({ mass: "", tyre: "large" })).toEqual({ missing: ["mass", "tyre"] });
    expect(missing({ name: " ", "rear.track": "9" })).toEqual({ missing: ["name", "rear.track"] });
    expect(missing({ frontMass: "1000" })).toEqual({ missing: ["frontMass"] });
    expect(firstField("rear.track")).toBe("rear track");
  });

  test("a tyre's size is read as it stands on its side", () => {
    for (const text of ["195/50 R 15", "195/50R15", "P195/50 ZR15 82V"])
      expect(radiusIn(text)).toBeCloseTo(0.288, 6);
    for (const text of ["", "195", "999/99 R 99", "15"]) expect(radiusIn(text)).toBeUndefined();
  });
});

describe("what the course can tell of a car", () => {
  test("is told for each part of a corner and each change, with what to measure next", () => {
    const car = made();
    const changes = possibleChanges(car).slice(0, 1);
    const sampler = bandSampler(car, changes);
    sampler.take(8);
    const bands: BandsSoFar = {
      count: 8,
      of: 500,
      margins: sampler.margins(),
      changes: sampler.changes(),
      doubts: sampler.doubts(),
    };
    expect(endsTold(bands)).toHaveLength(4);
    for (const [, told] of endsTold(bands))
      expect(told).toMatch(/^(the (front|rear): likely|it cannot say)$/);
    const [[change] = []] = changesTold(bands, car, readerWith("us"));
    expect(change).toMatch(/^front spring rate \d+\slbf\/in → \d+\slbf\/in$/);
    for (const { id, title, narrows } of nextTold(bands, car, readerWith("metric")))
      expect(`${title} ${wayOf(id, readerWith("us")).how} ${narrows}`).not.toMatch(/undefined|NaN/);
  });

  test("without a script everything that can be measured stands where other pages lead to", () => {
    const { main } = measurePage;
    for (const { id, end } of sharpeningsFor(made()))
      expect(main).toContain(`<li id="${nextAnchor(id, end)}"><a href=`);
  });

  test("every entry of the list leads to a drawing, tools, minutes and steps on the page", () => {
    const main = String(measurePage.main);
    for (const { id } of sharpeningsFor(demoCar)) {
      const { at, how } = wayOf(id, readerWith("metric"));
      const [, part = ""] = main.split(`<section class="measurement" id="${at.slice(1)}"`);
      expect(part, id).toMatch(/^.{0,600}<svg class="drawing"/s);
      expect(how, id).toMatch(/^\w.*; \d+ minutes/);
      expect(part.split("</section>")[0], id).toMatch(/<ol><li>.*<\/li><li>.*class="caution"/s);
    }
  });
});
