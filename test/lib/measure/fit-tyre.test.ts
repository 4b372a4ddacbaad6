import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { fitTyre, type TyreReading } from "../../../lib/measure/fit-tyre.js";
import { forFew } from "../../../lib/measure/repeats.js";
import { readTyreReadings } from "../../../lib/measure/tyre-readings.js";
import { randomFrom } from "../../../lib/random.js";
import { clubTyreCoefficients as club } from "../../../lib/tyre/club-tyre.js";
import { sideForce61 } from "../../../lib/tyre/magic-formula-61-side.js";
import { tyreOfData } from "../../../lib/tyre/tyre-data.js";

const degree = Math.PI / 180;
const truth = { ...club, PDY1: 1.32, PDY2: -0.21, PKY1: -27 };
const bend = Math.sin(club.PKY4 * Math.atan(1 / club.PKY2)); // Pacejka 2012, eq. 4.E25

/** Twelve numbers from 0 to 1 less 6: nearly normal, spread 1. – Knuth, TAOCP 2, 3.4.1, from memory */
const normalFrom = (random: () => number) => () =>
  Array.from({ length: 12 }, random).reduce((sum, one) => sum + one, -6);

function readingsOf(noise: number, seed: number): TyreReading[] {
  const normal = normalFrom(randomFrom(seed));
  return [1500, 3000, 4500].flatMap((load) =>
    [-8, -4, -2, 1, 3, 5, 7, 10].map((angle) => {
      const slipAngle = angle * degree;
      const force = sideForce61(truth, slipAngle, load, club.NOMPRES, 0);
      return { load, slipAngle, sideForce: force + noise * normal() };
    }),
  );
}

describe("a tyre fitted to a table", () => {
  it("is the known tyre to rounding, where nothing is off", () => {
    const { peak, fallWithLoad, stiffness, scatter, data } = fitTyre(readingsOf(0, 1));
    expect(peak.value).toBeCloseTo(1.32, 7);
    expect(fallWithLoad.value * 3000).toBeCloseTo(0.21, 7);
    expect(stiffness.value / (27 * 3000 * bend)).toBeCloseTo(1, 7);
    expect(scatter).toBeLessThan(1e-3);
    expect([data.FZMIN, data.FZMAX]).toEqual([1500, 4500]);
    const known = sideForce61(truth, 0.06, 2500, club.NOMPRES, 0);
    expect(tyreOfData(data).sideForce({ load: 2500, slipAngle: 0.06 })).toBeCloseTo(known, 3);
  });

  it("keeps the known tyre within its spreads about as often as they say, however the noise falls", () => {
    const misses = Array.from({ length: 40 }, (_, seed) => {
      const { peak, fallWithLoad, stiffness } = fitTyre(readingsOf(60, seed + 1));
      return [
        (peak.value - 1.32) / peak.spread,
        (fallWithLoad.value - 0.21 / 3000) / fallWithLoad.spread,
        (stiffness.value - 27 * 3000 * bend) / stiffness.spread,
      ];
    }).flat();
    const outside = misses.filter((off) => Math.abs(off) > 1.645).length / misses.length;
    // One in ten is expected; of 120, three numbers of a fit going together, 0.10 ± 3·0.03
    expect(outside).toBeGreaterThan(0.01);
    expect(outside).toBeLessThan(0.2);
    expect(Math.max(...misses.map(Math.abs))).toBeLessThan(4.5);
  });

  it("is what SciPy's trust-region optimiser finds from equations written anew, spreads too", () => {
    const readings = readingsOf(60, 7);
    const asked = {
      club,
      load: readings.map(({ load }) => load),
      slip: readings.map(({ slipAngle }) => slipAngle),
      force: readings.map(({ sideForce }) => sideForce),
    };
    const { stdout, stderr } = spawnSync("/usr/bin/python3", ["test/outside/fit_tyre.py"], {
      input: JSON.stringify(asked),
      encoding: "utf8",
    });
    expect(stderr).toBe("");
    const { found, spread } = JSON.parse(stdout) as { found: number[]; spread: number[] };
    const { peak, fallWithLoad, stiffness } = fitTyre(readings);
    const mine = [peak.value, -fallWithLoad.value * 3000, -stiffness.value / (3000 * bend)];
    const few = forFew(readings.length - 3); // SciPy does not widen for few readings
    const spreads = [peak.spread, fallWithLoad.spread * 3000, stiffness.spread / (3000 * bend)];
    for (const i of [0, 1, 2]) {
      expect((mine[i] ?? 0) / (found[i] ?? 1)).toBeCloseTo(1, 6);
      expect((spreads[i] ?? 0) / few / (spread[i] ?? 1)).toBeCloseTo(1, 3);
    }
  });

  it("is refused where readings do not fix it, or are none of a tyre", () => {
    const few = readingsOf(0, 1).slice(0, 5);
    expect(() => fitTyre(few)).toThrow("There are 5 readings but must be from 6 to 2000.");
    const oneLoad = readingsOf(20, 1).filter(({ load }) => load === 3000);
    expect(() => fitTyre(oneLoad)).toThrow(/do not fix/);
    const alike = Array.from({ length: 9 }, () => ({ load: 3000, slipAngle: 0, sideForce: 0 }));
    expect(() => fitTyre(alike)).toThrow(/do not fix/);
    expect(() => fitTyre([...few, { load: 3000, slipAngle: 3, sideForce: 100 }])).toThrow(
      /slip angle is 3 rad/,
    );
  });
});

describe("a table of side forces", () => {
  it("is read with or without names, parted by tabs, semicolons, commas or spaces", () => {
    const wanted = [{ load: 3000, slipAngle: 2.5 * degree, sideForce: 1850.5 }];
    for (const text of [
      "load\tslip\tforce\n3000\t2.5\t1850.5\n",
      "3000;2,5;1850,5",
      "Load N, Slip °, Fy N\r\n3000,2.5,1850.5",
      "  3000  2.5  1850.5  \n\n",
    ])
      expect(readTyreReadings(text).readings, text).toEqual(wanted);
  });

  it("names the line that is none, and what is out of range", () => {
    expect(readTyreReadings("3000 2\n3000 2 x\n9 2 100\n3000 80 100").faults).toEqual([
      'Line 1 is "3000 2" but must be three numbers: load, slip angle, side force.',
      'Line 2 is "3000 2 x" but must be three numbers: load, slip angle, side force.',
      "Line 3: load is 9 N but must be from 50 to 20000 N.",
      "Line 4: slip angle is 80 ° but must be from -55 to 55 °.",
    ]);
    expect(readTyreReadings(" \n").faults).toEqual(["The table is empty."]);
  });
});
