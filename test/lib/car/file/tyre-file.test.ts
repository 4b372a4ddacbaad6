import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { demoCar } from "../../../../lib/car/demo-car.js";
import { formatCar, parseCar } from "../../../../lib/car/file/parse.js";
import { formatTyre, parseTyre } from "../../../../lib/car/file/tyre-file.js";
import { dataTyreOf, tyreOf } from "../../../../lib/car/tyres.js";
import { readTyreReadings } from "../../../../lib/measure/tyre-readings.js";
import { clubTyreCoefficients } from "../../../../lib/tyre/club-tyre.js";
import { referenceTyre } from "../../../../lib/tyre/magic-formula-61.js";
import { referenceTyreCoefficients } from "../../../../lib/tyre/reference-tyre.js";
import { dataOfTyre } from "../../../../lib/tyre/tyre-data.js";
import { FUZZ_RUNS, hurt } from "../../../fuzz.js";

const data = dataOfTyre(referenceTyreCoefficients); // Pacejka 2012, Table A3.1
const table = (change: Record<string, number | undefined> = {}, parted = " = ") =>
  Object.entries({ ...data, ...change })
    .flatMap(([name, value]) => (value === undefined ? [] : [`${name}${parted}${value}`]))
    .join("\n");

describe("a tyre by its coefficients", () => {
  it("from a table, however it is parted, is the published tyre", () => {
    for (const parted of [" = ", "\t", ", ", ";", " "]) {
      const { tyre, notes } = { notes: [], ...parseTyre(table({}, parted), "road") };
      expect(tyre).toEqual({ name: "road", coefficients: data });
      expect(notes).toEqual([]);
    }
    const tyre = { name: "own", data, pressure: { left: 220e3, right: 220e3 } };
    const state = { load: 4000, slipAngle: 0.08 };
    expect(dataTyreOf(tyre).sideForce(state)).toBe(referenceTyre.sideForce(state));
    expect(dataTyreOf(tyre).valid.pressure).toEqual({ minimum: 186e3, maximum: 255e3 });
  });

  it("as a file is read as it was written, with fields of others", () => {
    const own = { name: "Rain", notes: "Drum, 2031", coefficients: data, colour: "green" };
    const note = "colour is not a field this workbook knows: it is kept as it is.";
    expect(parseTyre(formatTyre(own))).toEqual({ tyre: own, notes: [note] });
  });

  it("names what is missing, what is left out, and what it does not use", () => {
    expect(parseTyre(table({ PKY1: undefined, FZMAX: undefined })).faults).toEqual([
      "missing, and a tyre cannot do without: PKY1, FZMAX.",
    ]);
    expect(parseTyre(table({ PKY3: undefined, SSZ2: undefined, LMUY: 1 }))).toMatchObject({
      notes: ["Kept and not used: LMUY.", "Left out, and taken as 0: PKY3, SSZ2."],
    });
  });

  it("says range and unit where a number is in another unit, or has another sign", () => {
    expect(
      parseTyre(table({ NOMPRES: 220, PKY1: 15.3, CAMMAX: 6, PDY1: Number.NaN })).faults,
    ).toEqual([
      expect.stringMatching(/^Line \d+ is "PDY1 = NaN" but must be a name and a number\.$/),
    ]);
    expect(parseTyre(table({ NOMPRES: 220, PKY1: 15.3, CAMMAX: 6 })).faults).toEqual([
      "NOMPRES is 220 Pa but must be from 50000 to 600000 Pa.",
      expect.stringMatching(/^PKY1 is 15\.3 but must be from -100 to -2/),
      "CAMMAX is 6 rad but must be from 0 to 0.5 rad.",
    ]);
    expect(parseTyre(table({ PRESMIN: 300e3 })).faults).toEqual([
      "PRESMIN is 300000 Pa but must be at most PRESMAX, 255000 Pa.",
    ]);
    expect(parseTyre(table({ PDY2: -1, FZMAX: 12e3 })).faults?.[0]).toMatch(
      /^The tyre gives no force against slip at 1\.200e\+4 N/,
    );
  });

  it("stands in a car's file, and the car goes on it", () => {
    const own = { ...demoCar.front.tyre, name: "own", data: dataOfTyre(clubTyreCoefficients) };
    const car = { ...demoCar, front: { ...demoCar.front, tyre: own } };
    const read = parseCar(formatCar(car));
    expect(read).toEqual({ car, notes: [] });
    const state = { load: 3000, pressure: 180e3, slipAngle: 0.05 };
    expect(tyreOf(car.front).sideForce(state)).toBe(tyreOf(demoCar.front).sideForce(state));
    const { data: _, ...bare } = own;
    const without = { ...car, front: { ...car.front, tyre: bare } };
    expect(parseCar(formatCar(without)).faults).toEqual([
      'front.tyre.name is "own" but the file has no data of that tyre.',
    ]);
  });

  it("is taken in or refused in short sentences, whatever the text", () => {
    const file = formatTyre({ name: "Rain", coefficients: data });
    const readings = "3000\t2.5\t1850\n4000;3;2100\n";
    fc.assert(
      fc.property(fc.oneof(hurt(table()), hurt(file), hurt(readings), fc.string()), (text) => {
        const read = parseTyre(text);
        for (const one of read.faults ?? read.notes) expect(one.length).toBeLessThan(1500);
        for (const one of readTyreReadings(text).faults ?? []) expect(one.length).toBeLessThan(300);
        if (read.tyre) expect(parseTyre(formatTyre(read.tyre)).tyre).toEqual(read.tyre);
      }),
      { numRuns: FUZZ_RUNS / 10 },
    );
  });
});
