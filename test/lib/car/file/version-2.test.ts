import { describe, expect, test } from "vitest";
import { demoCar } from "../../../../lib/car/demo-car.js";
import { withSoundKnown } from "../../../../lib/car/file/known.js";
import { formatCar, parseCar } from "../../../../lib/car/file/parse.js";
import { numberAt } from "../../../../lib/car/file/place.js";
import { wishbones } from "../../linkage/reference-corners.js";

const file = () => JSON.parse(formatCar(demoCar));
const read = (content: unknown) => parseCar(JSON.stringify(content));
const faultsOf = (content: unknown) => read(content).faults;

/** The demo car as version 1 wrote it. */
function ofVersion1() {
  const { rear, ...content } = file();
  const { differential: _, ...axle } = rear;
  return { ...content, version: 1, rear: axle };
}

describe("a file of version 1", () => {
  test("is read as it was, and written as one of version 2", () => {
    const { car, notes } = read(ofVersion1()) as { car: typeof demoCar; notes: string[] };
    expect(notes).toEqual(["The file was brought from version 1 to version 2."]);
    const { differential: _, ...rear } = demoCar.rear;
    expect(car).toEqual({ ...demoCar, rear });
    expect(JSON.parse(formatCar(car))).toEqual({ ...ofVersion1(), version: 2 });
  });

  test("keeps what it had for itself under a name that means something now", () => {
    const content = ofVersion1();
    content.known = ["Jo measured it"];
    content.rear.differential = "from the breaker's yard";
    content.front.tyre.grip = "lots";
    const { car, faults } = read(content);
    expect(faults).toBeUndefined();
    expect(car).toMatchObject({
      knownOfVersion1: ["Jo measured it"],
      rear: { differentialOfVersion1: "from the breaker's yard" },
      front: { tyre: { gripOfVersion1: "lots" } },
    });
    expect(car).not.toHaveProperty("known");
  });
});

test("a file of version 2 keeps every new field when it is written again", () => {
  const content = file();
  content.front.differential = { kind: "limited-slip", power: 0.4, overrun: 0.2, plates: 6 };
  content.rear.differential = { kind: "locked" };
  Object.assign(content.front.geometry, { bumpStop: 4e6, droopStop: 2e7, complianceSteer: 3e-6 });
  Object.assign(content.rear.tyre, { grip: 1.1, loadSensitivity: 0.8, stiffness: 1.2 });
  content.rear.tyre.bestPressure = 180e3;
  content.known = {
    "front.spring.rate": { how: "maker", spread: 1500, when: "2026-02-28", by: "Jo", page: 3 },
    "rear.bar.positions.2.rate": { how: "estimated" },
  };
  const { car, notes } = read(content) as { car: typeof demoCar; notes: string[] };
  expect(JSON.parse(formatCar(car))).toEqual(content);
  expect(notes).toEqual([
    "front.differential.plates is not a field this workbook knows: it is kept as it is.",
    "known.front.spring.rate.page is not a field this workbook knows: it is kept as it is.",
  ]);
});

describe("a differential", () => {
  test("that is limited-slip needs both its locks", () => {
    const content = file();
    content.rear.differential = { kind: "limited-slip", power: 0.3 };
    expect(faultsOf(content)).toEqual([
      'rear.differential.overrun is missing but must be from 0 to 1 with kind "limited-slip".',
    ]);
    content.rear.differential = { kind: "limited-slip", power: 1.3, overrun: 0 };
    expect(faultsOf(content)).toEqual([
      "rear.differential.power is 1.3 but must be from 0 to 1 (0 to 100 %).",
    ]);
  });

  test("of another kind has none", () => {
    const content = file();
    content.rear.differential = { kind: "open", power: 0.3 };
    expect(faultsOf(content)).toEqual([
      'rear.differential.power is 0.3 but must be left out with kind "open".',
    ]);
    content.rear.differential = { kind: "viscous" };
    expect(faultsOf(content)).toEqual([
      'rear.differential.kind is "viscous" but must be one of: open, limited-slip, locked.',
    ]);
  });
});

test("a best pressure is one that the tyre's data reach, of a tyre that has one", () => {
  const content = file();
  content.front.tyre.bestPressure = 350e3;
  content.rear.tyre = { ...content.rear.tyre, name: "published road", bestPressure: 220e3 };
  expect(faultsOf(content)).toEqual([
    "front.tyre.bestPressure is 350000 Pa but must be from 120000 to 300000 Pa.",
    "rear.tyre.bestPressure is 220000 Pa but must be left out with the published road tyre: its data have none.",
  ]);
});

describe("how sure a number is", () => {
  const withKnown = (known: unknown) => ({ ...file(), known });

  test("is said of numbers that the car has, joints too, and of no other place", () => {
    const content = withKnown({
      wheelbase: { how: "measured" },
      "front.linkage.left.lowerOuter.z": { how: "measured", spread: 0.002 },
    });
    content.front.linkage = { kind: "independent", left: wishbones };
    expect(faultsOf(content)).toBeUndefined();
    for (const path of ["front.spring", "name", "air.drag", "rear.bar.positions.9.rate", "known"])
      expect(faultsOf(withKnown({ [path]: { how: "measured" } }))).toEqual([
        `known has "${path}", but the car has no such number.`,
      ]);
  });

  test("of names that JavaScript knows is refused like any other", () => {
    for (const name of [
      "__proto__",
      "constructor",
      "front.constructor",
      "front.spring.__proto__",
    ]) {
      const text = formatCar(demoCar).replace(
        "{",
        `{"known": {${JSON.stringify(name)}: {"how": "measured"}},`,
      );
      expect(parseCar(text).faults).toEqual([
        `known has "${name}", but the car has no such number.`,
      ]);
    }
  });

  test("has a source, a spread that fits its number, and a day that there is", () => {
    const faulty = withKnown({
      "front.spring.rate": { how: "guessed", spread: -1, when: "2026-02-30", by: 7 },
      "rear.track": {},
      wheelbase: [],
    });
    expect(faultsOf(faulty)).toEqual([
      'known.front.spring.rate.how is "guessed" but must be one of: measured, maker, estimated, copied.',
      "known.front.spring.rate.spread is -1 but must be from 0 to 10000000000.",
      'known.front.spring.rate.when is "2026-02-30" but must be a day, as YYYY-MM-DD.',
      "known.front.spring.rate.by is 7 but must be a text.",
      "known.rear.track.how is missing.",
      "known.wheelbase is [] but must be a group of fields.",
    ]);
    expect(faultsOf(withKnown({ wheelbase: { how: "maker", spread: 3 } }))).toEqual([
      "known.wheelbase.spread is 3 but must be from 0 to 2.8 m.",
    ]);
    expect(faultsOf(withKnown([]))).toEqual(["known is [] but must be a group of fields."]);
    for (const when of ["2026-2-1", "today", "2026-13-01", 20260101])
      expect(faultsOf(withKnown({ wheelbase: { how: "maker", when } }))?.[0]).toMatch(/ a day/);
  });

  test("is said of so many numbers and no more", () => {
    const names = Array.from({ length: 401 }, (_, i) => [`n${i}`, { how: "measured" }]);
    expect(faultsOf(withKnown(Object.fromEntries(names)))).toEqual([
      "known must have at most 400 places.",
    ]);
  });

  test("goes with a number that is taken out, and leaves the others", () => {
    const known = { "driver.mass": { how: "measured" }, wheelbase: { how: "maker" } };
    const { driver: _, ...content } = withKnown(known);
    expect(withSoundKnown(content).known).toEqual({ wheelbase: { how: "maker" } });
    expect(withSoundKnown(withKnown(known)).known).toEqual(known);
    expect(withSoundKnown({ a: 1 })).toEqual({ a: 1 });
    expect(withSoundKnown({ known: "nothing" }).known).toEqual({});
  });
});

test("a number of a car is found with its shape, and nothing else is", () => {
  expect(numberAt(demoCar, "front.bar.positions.2.rate")?.value).toBe(22e3);
  expect(numberAt(demoCar, "front.spring.rate")?.shape).toMatchObject({ min: 5e3, max: 400e3 });
  for (const path of ["", "front", "front.spring.rate.x", "front.bar.positions.length", "version"])
    expect(numberAt(demoCar, path)).toBeUndefined();
  expect(numberAt(undefined, "wheelbase")).toBeUndefined();
});
