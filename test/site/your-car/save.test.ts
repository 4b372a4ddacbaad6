import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import { formatCar } from "../../../lib/car/file/parse.js";
import { otherCars } from "../../../site/chapter/other-cars.js";
import { contentOf, copyOfDemo, withTyped } from "../../../site/pages/your-car/model/draft.js";
import { faultsOf } from "../../../site/pages/your-car/model/faults.js";
import { freeName, readyCar } from "../../../site/pages/your-car/model/save.js";
import { fromScales, readingAt } from "../../../site/pages/your-car/model/scales.js";
import { takeIn } from "../../../site/pages/your-car/model/take-in.js";

const mine = () => copyOfDemo("new-1", "Linnet");

describe("a car that is saved", () => {
  it("is the draft's, and nothing when the draft is not sound", () => {
    const draft = withTyped(mine(), "front.spring.rate", "70", "metric");
    expect(readyCar(draft, "metric")?.car.front.spring.rate).toBe(70e3);
    expect(readyCar(withTyped(draft, "wheelbase", "wide", "metric"), "metric")).toBeUndefined();
  });

  it("can be set to what it is set to: ranges of adjustment grow to hold it, and that is told", () => {
    const draft = withTyped(mine(), "front.spring.rate", "110", "metric");
    const ready = readyCar(draft, "metric");
    expect(ready?.car.front.adjusters?.springRate).toEqual({ min: 40e3, max: 110e3, step: 5e3 });
    expect(ready?.notes).toEqual([
      "Spring rate is set to 110 N/mm, so its range of adjustment now reaches that far.",
    ]);
    expect(readyCar(mine(), "metric")?.notes).toEqual([]);
  });

  it("gets a name that no other has", () => {
    expect(freeName("Wren", [])).toBe("Wren");
    expect(freeName("Wren", ["Wren"])).toBe("Wren 2");
    expect(freeName("Wren 2", ["Wren", "Wren 2", "Wren 3"])).toBe("Wren 4");
  });
});

describe("a car file that comes in", () => {
  it.each(otherCars.map((car) => [car.name, car] as const))("is the %s that went out", (_, car) => {
    expect(takeIn(formatCar(car), [], "x")).toEqual({ car, notes: [] });
  });

  it("set beyond what it says can be set has its range of adjustment put right, and that is told", () => {
    const front = { ...demoCar.front, spring: { ...demoCar.front.spring, rate: 35e3 } };
    const read = takeIn(formatCar({ ...demoCar, name: "Rook", front }), [], "x");
    expect("car" in read && read.car.front.adjusters?.springRate?.min).toBe(35e3);
    expect("car" in read && read.notes).toEqual([
      "Spring rate is set to 35 N/mm, so its range of adjustment now reaches that far.",
    ]);
  });

  it("gets another name where its own is taken, also the workbook's", () => {
    const read = takeIn(formatCar(demoCar), [demoCar.name], "x");
    expect("car" in read && read.car.name).toBe("Pipit 2");
    expect("car" in read && read.notes).toEqual([
      "There was a Pipit already, so it is called Pipit 2.",
    ]);
  });

  it("that is faulty tells all its faults, and can be mended where there is something to mend", () => {
    const content = JSON.parse(formatCar(demoCar));
    delete content.rear.track;
    content.front.spring.rate = 9e6;
    content.driver = "Jo";
    content.colour = "green";
    const read = takeIn(JSON.stringify(content), [], "x");
    if ("car" in read || !read.mend) throw new Error("it should be faulty, and mendable");
    expect(read.faults).toHaveLength(3);
    const mended = contentOf(read.mend);
    expect(mended).toMatchObject({ colour: "green", driver: demoCar.driver });
    expect(mended).toMatchObject({ rear: { track: demoCar.rear.track } });
    expect(faultsOf(read.mend, [], "metric").map(({ path }) => path)).toEqual([
      "name",
      "front.spring.rate",
    ]);
  });

  it("of an older version can be mended as one of today", () => {
    const { rear: _, ...content } = { ...JSON.parse(formatCar(demoCar)), version: 1 };
    const read = takeIn(JSON.stringify({ ...content, known: "by heart" }), [], "x");
    if ("car" in read || !read.mend) throw new Error("it should be faulty, and mendable");
    expect(contentOf(read.mend)).toMatchObject({ knownOfVersion1: "by heart", rear: demoCar.rear });
  });

  it("with a name of thousands of letters is told in a short sentence, under the name's beginning", () => {
    const read = takeIn(formatCar({ ...demoCar, name: "x".repeat(9000) }), [], "x");
    if (!("car" in read)) throw new Error("it should be sound");
    expect(read.car.name).toBe("x".repeat(60));
    expect(read.notes[0]).toContain(`${"x".repeat(60)}…`);
    expect(read.notes[0]?.length).toBeLessThan(200);
  });

  it("with unsound entries on how sure it is, loses those alone when it is mended", () => {
    const known = { wheelbase: { how: "maker" }, "rear.wing": { how: "maker" }, mass: 3 };
    const read = takeIn(JSON.stringify({ ...JSON.parse(formatCar(demoCar)), known }), [], "x");
    if ("car" in read || !read.mend) throw new Error("it should be faulty, and mendable");
    expect(contentOf(read.mend).known).toEqual({ wheelbase: { how: "maker" } });
  });

  it.each(["", "{", "[]", "null", "3", '{"version":9}', "{}", '"car"'])(
    "that holds no car is refused with a sentence: %s",
    (text) => {
      const read = takeIn(text, [], "x");
      expect("faults" in read && read.faults.length).toBeGreaterThan(0);
      expect("faults" in read && read.mend).toBeUndefined();
    },
  );

  it.each(["constructor", "__proto__", "toString"])(
    "keeps an adjuster that this workbook does not know as it is: %s",
    (name) => {
      const odd = `{"${name}":{"min":0,"max":1,"step":1}}`;
      const content = { ...JSON.parse(formatCar(demoCar)), adjusters: "@" };
      const read = takeIn(JSON.stringify(content).replace('"@"', odd), [], "x");
      expect("car" in read && JSON.stringify(read.car)).toContain(odd);
    },
  );

  it("may begin with a byte order mark", () => {
    expect(takeIn(`\uFEFF${formatCar(demoCar)}`, [], "x")).toEqual({ car: demoCar, notes: [] });
  });

  it("with a list beyond all length tells that once, and is mended with as many entries as there may be", () => {
    const content = JSON.parse(formatCar(demoCar));
    content.front.bar.positions = Array.from({ length: 400_000 }, () => 1);
    const read = takeIn(JSON.stringify(content), [], "x");
    if ("car" in read || !read.mend) throw new Error("it should be faulty, and mendable");
    expect(read.faults).toEqual(["front.bar.positions must have at most 12 entries."]);
    expect(contentOf(read.mend)).toMatchObject({ front: { bar: { positions: { length: 12 } } } });
  });

  it("of whatever content never ends in an error", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const read = takeIn(JSON.stringify({ name: "A", front: value, body: value }), [], "x");
        if ("car" in read || !read.mend) return;
        expect(faultsOf(read.mend, [], "us")).toBeInstanceOf(Array);
      }),
    );
  });
});

describe("four scale readings", () => {
  const read = (texts: readonly string[], units: "metric" | "us" = "metric") => {
    const places = [
      readingAt("front", "left"),
      readingAt("front", "right"),
      readingAt("rear", "left"),
      readingAt("rear", "right"),
    ];
    return places.reduce(
      (draft, path, index) => withTyped(draft, path, texts[index] ?? "", units),
      mine(),
    );
  };

  it("put in the body that stands on them so", () => {
    const { draft, readings } = fromScales(read(["300", "290", "270", "260"]), "metric");
    expect(readings?.front).toEqual({ left: 300, right: 290 });
    const body = draft && contentOf(draft).body;
    expect(body).toMatchObject({ mass: 1120 - 75 - 85 - 80 - 30, height: demoCar.body.height });
    expect(draft && faultsOf(draft, [], "metric")).toEqual([]);
  });

  it("are asked for again where one is missing or cannot be", () => {
    expect(fromScales(read(["300", "290", "270"]), "metric").refused).toBe("incomplete");
    expect(fromScales(read(["300", "290", "270", "x"]), "metric").refused).toBe("incomplete");
    expect(fromScales(read(["30", "29", "27", "26"]), "metric").refused).toBe("off");
  });
});
