import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { demoCar } from "../../../../lib/car/demo-car.js";
import { formatCar, parseCar } from "../../../../lib/car/file/parse.js";
import { FUZZ_RUNS } from "../../../fuzz.js";
import { beam, wishbones } from "../../linkage/reference-corners.js";

vi.setConfig({ testTimeout: 60_000 + 10 * FUZZ_RUNS });

const file = () => JSON.parse(formatCar(demoCar));
const faultsOf = (content: unknown) => [...(parseCar(JSON.stringify(content)).faults ?? [])];

test("the demo car survives being written and read", () => {
  const read = parseCar(formatCar(demoCar));
  expect(read.faults).toBeUndefined();
  expect(read.car).toEqual(demoCar);
});

test("writing what was read gives the same text again", () => {
  const text = formatCar(demoCar);
  const { car } = parseCar(text);
  expect(car && formatCar(car)).toBe(text);
});

test("fields that are not known are reported, and kept when the car is written again", () => {
  const content = file();
  content.colour = "green";
  content.front.spring.maker = { name: "ours" };
  content.rear.bar.positions[1].note = "as bought";
  const { car, notes } = parseCar(JSON.stringify(content)) as { car: never; notes: string[] };
  expect(notes).toEqual([
    "front.spring.maker is not a field this workbook knows: it is kept as it is.",
    "rear.bar.positions.1.note is not a field this workbook knows: it is kept as it is.",
    "colour is not a field this workbook knows: it is kept as it is.",
  ]);
  expect(JSON.parse(formatCar(car))).toEqual(content);
});

test("every fault is reported at once, with field, value and range in SI and in known units", () => {
  const content = file();
  content.front.spring.rate = 900e3;
  content.front.camber.left = 0.3;
  content.rear.tyre.name = "soft";
  content.rear.bar.position = 1.5;
  content.driver = null;
  content.adjusters = [[]];
  content.wheelbase = "2.4";
  delete content.rear.track;
  expect(faultsOf(content).sort()).toEqual(
    [
      "front.spring.rate is 900000 N/m but must be from 5000 to 400000 N/m (5 to 400 N/mm).",
      "front.camber.left is 0.3 rad but must be from -0.10472 to 0.0523599 rad (-6 to 3°).",
      'rear.tyre.name is "soft" but must be one of: club, published road, own.',
      "rear.bar.position is 1.5 but must be a whole number from 1 to 12.",
      "driver is null but must be a group of fields.",
      "adjusters is [[]] but must be a group of fields.",
      'wheelbase is "2.4" but must be from 1.2 to 4 m.',
      "rear.track is missing.",
    ].sort(),
  );
});

describe("faults that only show when fields are seen together", () => {
  test("a bar set to a position it does not have", () => {
    const content = file();
    content.rear.bar.position = 9;
    expect(faultsOf(content)).toEqual([
      "rear.bar: bar position is 9 but must be a whole number from 1 to 4.",
    ]);
  });

  test("a bar position with neither rate nor arm", () => {
    const content = file();
    content.rear.bar.positions[2] = {};
    expect(faultsOf(content)).toEqual([
      "rear.bar: bar position 3 must give a rate, or an arm length and a tube.",
    ]);
  });

  test("an adjuster that ends before it begins", () => {
    const content = file();
    content.rear.adjusters.toe.min = content.rear.adjusters.toe.max + 0.001;
    expect(faultsOf(content)).toEqual(["rear.adjusters.toe.min must not be greater than its max."]);
  });

  test("springs and joints that make two kinds of axle", () => {
    const content = file();
    content.rear.linkage = beam;
    const spacingFor = (kind: string) => `with a linkage of kind "${kind}".`;
    expect(faultsOf(content)).toEqual([
      `rear.spring.spacing is missing but must be from 0.3 to 2 m ${spacingFor("beam axle")}`,
    ]);
    content.rear.spring.spacing = 1;
    expect(faultsOf(content)).toEqual([]);
    content.rear.linkage = { kind: "independent", left: wishbones };
    expect(faultsOf(content)).toEqual([
      `rear.spring.spacing is 1 m but must be left out ${spacingFor("independent")}`,
    ]);
  });

  test("joints that make of the axle what no file can say", () => {
    const content = file();
    const { upperFront, upperRear } = wishbones;
    const inwards = (point: typeof upperFront) => ({ ...point, z: point.z - 0.25 });
    content.front.linkage = {
      kind: "independent",
      left: { ...wishbones, upperFront: inwards(upperFront), upperRear: inwards(upperRear) },
    };
    expect(faultsOf(content)[0]).toMatch(
      /^front\.linkage: camberGain is -[\d.]+ rad\/m but must be from -1\.74533 to 1\.74533 rad\/m/,
    );
  });

  test("a car whose joints were read is read again when it was written", () => {
    const content = file();
    content.rear.spring.spacing = 1;
    content.rear.linkage = beam;
    content.front.linkage = { kind: "independent", left: wishbones };
    const { car } = parseCar(JSON.stringify(content));
    expect(car && parseCar(formatCar(car)).car).toEqual(car);
    expect(car?.rear.geometry.rollSteer).toBeLessThan(0);
  });

  test("roll steer of an axle that is no beam", () => {
    const content = file();
    content.rear.geometry.rollSteer = -0.05;
    expect(faultsOf(content)).toEqual([
      "rear.geometry.rollSteer is -0.05 but must be left out without spring.spacing: " +
        "only a beam axle has one.",
    ]);
    content.rear.spring.spacing = 1;
    expect(faultsOf(content)).toEqual([]);
    content.rear.geometry.rollSteer = -1.5;
    expect(faultsOf(content)).toEqual([
      "rear.geometry.rollSteer is -1.5 but must be from -1 to 1.",
    ]);
  });

  test("a centre of gravity in front of the front axle", () => {
    const content = file();
    content.body.behindFrontAxle = -1.4;
    expect(faultsOf(content)).toEqual([
      "The centre of gravity of all on the springs is -1.043 m behind the front axle but must be from 0 to " +
        "2.4 m: see behindFrontAxle of body, driver, passenger, fuel and ballast.",
    ]);
  });

  test("a body too high for its springs", () => {
    const content = file();
    content.body.height = 2;
    for (const end of [content.front, content.rear]) {
      end.spring.rate = 5e3;
      delete end.bar;
    }
    expect(faultsOf(content)[0]).toMatch(/^The car as a whole: roll stiffness of the two axles/);
  });
});

test("a linkage sets the geometry, and says so when the file said otherwise", () => {
  const content = file();
  const at = (x: number, y: number, z: number) => ({ x, y, z });
  content.front.linkage = {
    kind: "independent",
    left: {
      kind: "double wishbone",
      wheelCentre: at(0, 0.72, 0.29),
      camber: 0,
      toe: 0,
      lowerFront: at(0.15, 0.35, 0.18),
      lowerRear: at(-0.15, 0.35, 0.18),
      lowerOuter: at(0, 0.68, 0.16),
      toeInner: at(0.1, 0.36, 0.2),
      toeOuter: at(0.1, 0.68, 0.19),
      upperFront: at(0.12, 0.4, 0.4),
      upperRear: at(-0.12, 0.4, 0.4),
      upperOuter: at(0, 0.65, 0.42),
    },
  };
  const read = parseCar(JSON.stringify(content));
  expect(read.faults).toBeUndefined();
  expect(read.car?.front.geometry.rollCentreHeight).not.toBe(0.05);
  expect(read.car && "notes" in read && read.notes[0]).toMatch(
    /^front.geometry.rollCentreHeight follows from the linkage: 0\.\d+ m instead of 0.05 m\.$/,
  );
  content.front.linkage.left.lowerOuter = at(0, 9, 0);
  expect(faultsOf(content)[0]).toMatch(/^front.linkage.left.lowerOuter.y is 9 m but must be/);
});

test.each([
  ["", /^The file is not JSON: /],
  ["{", /^The file is not JSON: /],
  ['{"shade": 1e999}', /^shade is larger than any number that can be kept\.$/],
  ["[1, 2]", /^The file must be one JSON object/],
  ["null", /^The file must be one JSON object/],
  ["7", /^The file must be one JSON object/],
  ['{"version": 99}', /^version is 99 but must be a whole number from 1 to 2\.$/],
  ['{"version": "1"}', /^version is "1" but/],
])("%j is refused with a sentence", (text, sentence) => {
  expect(parseCar(text).faults?.[0]).toMatch(sentence);
});

test("a file without a version is read as one of today", () => {
  const { version, ...content } = file();
  expect(version).toBe(2);
  expect(faultsOf(content)).toEqual([]);
});

test("whatever is put in place of any field, the answer is a car or sentences, never an error", () => {
  const paths = pathsOf(file());
  const junk = fc.oneof(
    fc.jsonValue(),
    fc.double(),
    fc.constantFrom<unknown>(null, -1, 0, 1e300, "", "1", [], {}, { __proto__: null }),
  );
  fc.assert(
    fc.property(fc.constantFrom(...paths), junk, (path, value) => {
      const content = file();
      put(content, path, value);
      const read = parseCar(JSON.stringify(content));
      if (read.faults) for (const fault of read.faults) expect(fault).toMatch(/\.$/);
      else expect(parseCar(formatCar(read.car)).car).toEqual(read.car);
    }),
    { numRuns: FUZZ_RUNS },
  );
});

test("a text with bytes changed, cut or doubled is a car or sentences, never an error", () => {
  const text = formatCar(demoCar);
  const place = fc.integer({ min: 0, max: text.length });
  const hurt = fc.record({ at: place, until: place, put: fc.string({ maxLength: 4 }) });
  fc.assert(
    fc.property(fc.array(hurt, { minLength: 1, maxLength: 3 }), (hurts) => {
      const broken = hurts.reduce(
        (t, { at, until, put }) => t.slice(0, at) + put + t.slice(until),
        text,
      );
      const read = parseCar(broken);
      for (const fault of read.faults ?? []) expect(fault).toMatch(/\.$/);
      if (read.car) expect(parseCar(formatCar(read.car)).car).toEqual(read.car);
    }),
    { numRuns: FUZZ_RUNS },
  );
});

test("a file nested without end is refused, as a whole and inside a field that is not known", () => {
  const deep = "[".repeat(9e4) + "]".repeat(9e4);
  const sentence = "The file is nested deeper than 40.";
  expect(parseCar(`{"name": ${deep}}`).faults).toEqual([sentence]);
  expect(parseCar(formatCar(demoCar).replace("{", `{"mine": ${deep},`)).faults).toEqual([sentence]);
});

test("names that JavaScript knows are fields like any other", () => {
  for (const name of ["__proto__", "constructor", "toString"]) {
    const text = formatCar(demoCar).replace("{", `{"${name}": {"kind": "${name}"},`);
    expect(parseCar(text)).toHaveProperty("notes.length", 1);
    const content = file();
    content.front.linkage = { kind: name };
    expect(faultsOf(content)).toEqual([
      `front.linkage.kind is "${name}" but must be one of: independent, beam axle.`,
    ]);
  }
});

function pathsOf(value: unknown, path: string[] = []): string[][] {
  if (typeof value !== "object" || value === null) return [path];
  const inside = Object.entries(value).flatMap(([name, part]) => pathsOf(part, [...path, name]));
  return path.length === 0 ? inside : [path, ...inside];
}

function put(content: Record<string, unknown>, [first = "", ...rest]: string[], value: unknown) {
  if (rest.length === 0) content[first] = value;
  else put(content[first] as Record<string, unknown>, rest, value);
}
