import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { phaseNames, phases } from "../../../lib/balance/phases.js";
import type { Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { exactMap } from "../../../lib/map/exact-map.js";
import { hardestOn } from "../../../lib/map/hardest.js";
import { type MapAxis, mapAxesOf, settable, settingsOf } from "../../../lib/map/map-axis.js";
import { gridOf } from "../../../lib/map/map-grid.js";
import type { MapOf } from "../../../lib/map/map-of.js";
import { readMap } from "../../../lib/map/map-reading.js";

vi.setConfig({ testTimeout: 120_000 }); // every setting of a map, worked out in full

const axes = mapAxesOf(demoCar);
const named = (key: string) => axes.find((axis) => axis.key === key) as MapAxis;
const mapOf = (along: string, up: string, rest: Partial<MapOf> = {}): MapOf => ({
  car: demoCar,
  measured: demoCar,
  along: named(along),
  up: named(up),
  driving: { speed: 25 },
  ...rest,
});
const drawn = (of: MapOf) => exactMap(of, gridOf(of, 16));
const { limits: _, ...free } = demoCar;

/** By trying every setting in full. */
function hardestByHand(of: MapOf): number | undefined {
  const turns = settingsOf(of.up)
    .flatMap((y) => settingsOf(of.along).map((x) => readMap(of, x, y)))
    .filter(({ broken }) => broken.length === 0)
    .map(({ balance }) => balance.lateralAcceleration);
  return turns.length === 0 ? undefined : Math.max(...turns);
}

describe("where a map's car turns hardest", () => {
  test("is inside the limits where the nearest step to the edge of the map's picture is not", () => {
    const of = mapOf("rear-springRate", "rear-barPosition");
    expect(readMap(of, 35e3, 4).broken.map(({ parameter }) => parameter)).toContain("rideHeight");
    const at = hardestOn(of, drawn(of));
    expect(readMap(of, at?.x ?? 0, at?.y ?? 0).broken).toEqual([]);
    expect(at?.x).toBeGreaterThan(35e3);
  });

  test("can be set, holds every limit and has none harder, for pairs of levers in any phase", () => {
    const pair = fc.shuffledSubarray(
      axes.filter((axis) => settingsOf(axis).length < 14).map(({ key }) => key),
      { minLength: 2, maxLength: 2 },
    );
    fc.assert(
      fc.property(pair, fc.constantFrom(...phaseNames), ([along = "", up = ""], phase) => {
        const of = mapOf(along, up, { driving: { speed: 25, ...phases[phase] } });
        const at = hardestOn(of, drawn(of));
        const best = hardestByHand(of);
        expect(at === undefined).toBe(best === undefined);
        if (at === undefined || best === undefined) return;
        expect(settable(of.along, at.x)).toBe(at.x);
        expect(settable(of.up, at.y)).toBe(at.y);
        const { broken, balance } = readMap(of, at.x, at.y);
        expect(broken).toEqual([]);
        expect(best - balance.lateralAcceleration).toBeLessThan(0.01); // between the places of the map
      }),
      { numRuns: 6 },
    );
  });

  test("is nowhere where no setting holds the limits", () => {
    const car: Car = { ...demoCar, limits: { leastMass: 5000 } };
    const of = mapOf("front-springRate", "rear-springRate", { car, measured: car });
    expect(hardestOn(of, drawn(of))).toBeUndefined();
  });

  test("is anywhere on the map where the class has no limits", () => {
    const of = mapOf("rear-springRate", "rear-barPosition", { car: free, measured: free });
    const { x = 0, y = 0 } = hardestOn(of, drawn(of)) ?? {};
    expect(readMap(of, x, y).balance.lateralAcceleration).toBeCloseTo(hardestByHand(of) ?? 0, 2);
  });
});

test("settings run from the least to the greatest that can be set, a step apart, the present one among them", () => {
  for (const axis of axes) {
    const all = settingsOf(axis);
    expect(all.every((value) => settable(axis, value) === value)).toBe(true);
    expect(all).toContain(axis.present);
    expect([all[0], all.at(-1)]).toEqual([settable(axis, axis.min), settable(axis, axis.max)]);
    for (const [i, value] of all.slice(1).entries())
      expect(value - (all[i] ?? 0)).toBeCloseTo(axis.step, 9);
  }
});
