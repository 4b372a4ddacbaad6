import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import { exactMap, exactRow } from "../../../lib/map/exact-map.js";
import { type MapAxis, mapAxesOf } from "../../../lib/map/map-axis.js";
import { gridOf } from "../../../lib/map/map-grid.js";
import type { MapOf } from "../../../lib/map/map-of.js";
import { readMap } from "../../../lib/map/map-reading.js";
import type { SetUpMap } from "../../../lib/map/set-up-map.js";
import { contourLines } from "../../../site/pages/map/contours.js";
import { drawnOf, undrawnIn } from "../../../site/pages/map/drawn.js";
import { levelsBetween, rangeOf, roundStep } from "../../../site/pages/map/levels.js";
import { linkToMap, mapFromLink } from "../../../site/pages/map/link.js";
import { mapOf } from "../../../site/pages/map/map-of.js";
import { scalesOf } from "../../../site/pages/map/scales.js";
import { jobFor } from "../../../site/pages/map/solve/job.js";
import { workInSlices } from "../../../site/pages/map/solve/slices.js";
import { axesIn, firstState, type MapState, withLever } from "../../../site/pages/map/state.js";
import { markAfter, markAt } from "../../../site/pages/map/steer.js";
import { readingText, resultText } from "../../../site/pages/map/tell.js";
import { ticksOf } from "../../../site/pages/map/ticks.js";
import { decimalsOfStep } from "../../../site/say/shown-range.js";
import { format } from "../../../site/say/units.js";
import { FUZZ_RUNS } from "../../fuzz.js";

vi.setConfig({ testTimeout: 60_000 + 10 * FUZZ_RUNS });

const axes = mapAxesOf(demoCar);
const first = firstState(axes) as MapState;
const named = (key: string) => axes.find((axis) => axis.key === key) as MapAxis;

describe("the state of the map", () => {
  test("starts with the springs of both ends and a third lever that is neither", () => {
    expect(first).toEqual({
      along: "front-springRate",
      up: "rear-springRate",
      third: "front-tyrePressure",
      phase: "middle",
    });
    expect(firstState(axes.slice(0, 1))).toBeUndefined();
    expect(firstState(axes.slice(0, 2))?.third).toBeUndefined();
  });

  test("never has one lever in two parts, whatever is chosen in whatever order", () => {
    const part = fc.constantFrom("along", "up", "third");
    const key = fc.constantFrom(...axes.map((axis) => axis.key));
    fc.assert(
      fc.property(fc.array(fc.tuple(part, key), { maxLength: 6 }), (choices) => {
        const state = choices.reduce<MapState>(
          (now, [which, lever]) => withLever(now, which as "along", lever),
          first,
        );
        expect(new Set([state.along, state.up, state.third]).size).toBe(3);
      }),
    );
  });

  test("keeps what the third lever is set to while it stays the third, and forgets it after", () => {
    const moved = { ...first, value: 210e3 };
    expect(withLever(moved, "along", "fuel").value).toBe(210e3);
    expect(withLever(moved, "third", "fuel").value).toBeUndefined();
    expect(withLever(moved, "up", "front-tyrePressure").value).toBeUndefined();
  });
});

describe("what a map is drawn over", () => {
  test("has the third lever where the reader put it, and a bar on a position it has", () => {
    const state = { ...first, third: "front-barPosition", value: 3.6 };
    expect(mapOf(state, demoCar, axes).car.front.bar?.position).toBe(4);
    const fuel = mapOf({ ...first, third: "fuel", value: 12 }, demoCar, axes);
    expect([fuel.car.fuel?.mass, fuel.measured.fuel?.mass]).toEqual([12, 30]);
  });

  test("is driven as in the part of the corner that was chosen", () => {
    expect(mapOf({ ...first, phase: "power on" }, demoCar, axes).driving).toMatchObject({
      longitudinalAcceleration: 2,
    });
  });
});

describe("a link to the map", () => {
  test("opens the same map again, whatever it is", () => {
    const keys = fc.shuffledSubarray(
      axes.map(({ key }) => key),
      { minLength: 3, maxLength: 3 },
    );
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(keys, part, part, part, ([along = "", up = "", third = ""], u, v, w) => {
        const at = (key: string, place: number) => {
          const { min, max } = named(key);
          return min + place * (max - min);
        };
        const state: MapState = {
          along,
          up,
          third,
          value: at(third, w),
          phase: "turn-in",
          mark: { x: at(along, u), y: at(up, v) },
        };
        const read = mapFromLink(linkToMap(state, axes), axes);
        expect(read?.faults).toEqual([]);
        expect(read?.state).toMatchObject({ along, up, third, phase: "turn-in" });
        expect((read?.state.value ?? 0) - at(third, w)).toBeCloseTo(0, 3);
        expect((read?.state.mark?.x ?? 0) - at(along, u)).toBeCloseTo(0, 3);
      }),
    );
  });

  test("that asks for what the car does not have gets the nearest map and a sentence for each", () => {
    const read = mapFromLink(
      "#map?along=wings&up=rear-springRate&third=rear-springRate&phase=lunch&value=900&x=soft&y=999",
      axes,
    );
    expect(read?.state).toMatchObject({ along: "front-springRate", up: "rear-springRate" });
    expect(read?.state.mark).toBeUndefined();
    expect(read?.faults).toEqual([
      "The link asks for Across “wings”, which this car does not have.",
      "The link asks for Third lever “rear-springRate”, which this car does not have.",
      "The link asks for Part of the corner “lunch”, which this car does not have.",
      "Front tyre pressure takes 150\u00a0kPa to 250\u00a0kPa, not 900\u00a0kPa.",
      "Front spring rate takes a number, not “soft”.",
      "Rear spring rate takes 35\u00a0N/mm to 80\u00a0N/mm, not 999\u00a0N/mm.",
    ]);
  });

  test("with any words in it gives a map of this car, and its words are cut short", () => {
    const word = fc.oneof(fc.string(), fc.constantFrom("__proto__", "constructor", "1e999", "-0"));
    const names = fc.constantFrom("along", "up", "third", "phase", "value", "x", "y", "z");
    fc.assert(
      fc.property(fc.array(fc.tuple(names, word), { minLength: 1 }), (parts) => {
        const read = mapFromLink(`#map?${new URLSearchParams(parts)}`, axes);
        if (read === undefined) return;
        const { along, up, third } = axesIn(read.state, axes);
        expect(new Set([along, up, third]).size).toBe(3);
        for (const fault of read.faults) expect(fault.length).toBeLessThan(160);
        const { value } = read.state;
        if (value !== undefined && third)
          expect(value >= third.min && value <= third.max).toBe(true);
      }),
      { numRuns: FUZZ_RUNS },
    );
  });
});

describe("levels", () => {
  test("have round steps that cut a span into no more than so many parts", () => {
    expect(roundStep(1.5, 8)).toBe(0.2);
    expect(roundStep(0.43, 8)).toBe(0.1);
    expect(roundStep(8, 8)).toBe(1);
  });

  test("are the multiples inside a range, without dust", () => {
    expect(levelsBetween(-0.35, 0.62, 0.2)).toEqual([-0.2, 0, 0.2, 0.4, 0.6].map((x) => x + 0));
    expect(levelsBetween(0, 1000, 0.01).length).toBeLessThanOrEqual(26);
    expect(levelsBetween(0.01, 0.02, 1)).toEqual([]);
  });

  test("have as many decimals as tell them apart", () => {
    expect([0.05, 0.2, 1, 20].map(decimalsOfStep)).toEqual([2, 1, 0, 0]);
  });
});

describe("contour lines", () => {
  const frame = { left: 10, top: 20, width: 300, height: 200 };
  const plane = new Float64Array(256).map((_, i) => (i % 16) / 15);

  test("of a plane are straight and stand where the plane has their level", () => {
    const [half] = contourLines({ columns: 16, rows: 16, values: plane }, [0.5], frame);
    const xs = [...(half?.path ?? "").matchAll(/([\d.-]+),([\d.-]+)/g)]
      .map(([, x, y]) => ({ x: Number(x), y: Number(y) }))
      .filter(({ x, y }) => x < 300 && y > 25 && y < 215);
    expect(xs.length).toBeGreaterThan(10);
    for (const { x } of xs) expect(x).toBeCloseTo(160, 0);
  });

  test("carry their labels inside the frame, on the line", () => {
    const [line] = contourLines({ columns: 16, rows: 16, values: plane }, [0.25], frame);
    expect(line?.label?.x).toBeCloseTo(85, 0);
    expect(line?.label?.y).toBeGreaterThan(20);
  });

  test("carry no label so near an edge that it would run into the ticks", () => {
    const levels = Array.from({ length: 99 }, (_, i) => (i + 1) / 100);
    const lines = contourLines({ columns: 16, rows: 16, values: plane }, levels, frame);
    const labels = lines.flatMap(({ label }) => label ?? []);
    expect(labels.length).toBeGreaterThan(80);
    for (const { x, y } of labels) {
      expect(x >= 34 && x <= 286).toBe(true); // half a label of some 40 px, and a gap
      expect(y >= 34 && y <= 206).toBe(true);
    }
  });

  test("of a level that is nowhere are empty", () => {
    const [none] = contourLines({ columns: 16, rows: 16, values: plane }, [7], frame);
    expect(none).toEqual({ level: 7, path: "" });
  });
});

describe("steering the mark", () => {
  const [along, up] = [named("front-springRate"), named("rear-barPosition")];

  test("goes by steps of the adjusters and stops at their ends", () => {
    const at = { x: 60e3, y: 2 };
    expect(markAfter("ArrowRight", at, along, up)).toEqual({ x: 65e3, y: 2 });
    expect(markAfter("ArrowDown", at, along, up)).toEqual({ x: 60e3, y: 1 });
    expect(markAfter("PageUp", at, along, up)).toEqual({ x: 60e3, y: 4 });
    expect(markAfter("ArrowLeft", { x: 40e3, y: 1 }, along, up)).toEqual({ x: 40e3, y: 1 });
    expect(markAfter("Home", { x: 90e3, y: 1 }, along, up)).toEqual({ x: 60e3, y: 2 });
    expect(markAfter("Tab", at, along, up)).toBeUndefined();
    expect(markAfter("constructor", at, along, up)).toBeUndefined();
  });

  test("takes a touch to the nearest settings", () => {
    expect(markAt({ x: 0.47, y: 0.9 }, along, up)).toEqual({ x: 65e3, y: 4 });
  });
});

test("ticks are settings, few enough, the first of the range among them", () => {
  for (const axis of axes) {
    const ticks = ticksOf(axis, 6);
    expect(ticks.length).toBeGreaterThan(1);
    expect(ticks.length).toBeLessThanOrEqual(6);
    for (const tick of ticks) expect(tick >= axis.min && tick <= axis.max).toBe(true);
  }
  expect(ticksOf(named("rear-barPosition"), 6)).toEqual([1, 2, 3, 4]);
});

describe("what the map says", () => {
  const of = {
    car: demoCar,
    measured: demoCar,
    along: named("front-springRate"),
    up: named("rear-springRate"),
    driving: { speed: 25 },
  };
  const drawn = (over: MapOf) => exactMap(over, gridOf(over, 12));
  const show: typeof format = (quantity, value, decimals) => format(quantity, value, decimals);

  test("of one place names settings, balance, hardest turn and the limits it breaks", () => {
    const read = readMap(of, 60e3, 50e3);
    expect(readingText(of, read, show)).toMatch(
      /^Front spring rate 60\u00a0N\/mm, rear spring rate 50\u00a0N\/mm \(as the car is set\): the front gives up first, 0\.\d\d\u00a0m\/s² before the rear, hardest turn \d+\.\d\d\u00a0m\/s²\.$/,
    );
    expect(readingText(of, readMap(of, 40e3, 50e3), show)).toMatch(
      /; outside the class limits: ride height at least 110\u00a0mm by \d+\.\d\u00a0mm \(front left\), ride height at least 110\u00a0mm by \d+\.\d\u00a0mm \(front right\)\.$/,
    );
  });

  test("of the whole is how far balance and grip go", () => {
    expect(resultText(of, drawn(of), show)).toMatch(
      /^Over this map the balance runs from .* of oversteer to .* of understeer and the hardest turn from .* to .*; the hardest within the limits is near front spring rate /,
    );
  });

  test("of a place where the car tips over is no margin, only where that is", () => {
    const read = readMap(of, 60e3, 50e3);
    const tipped = { ...read, balance: { ...read.balance, tips: true } };
    expect(readingText(of, tipped, show)).toMatch(
      /: the car tips over at \d+\.\d\d\u00a0m\/s², before its tyres let go, so there is no balance to read\.$/,
    );
  });

  test("of a place where it cannot brake so hard is what it is for instead", () => {
    const hard = { ...of, driving: { speed: 25, longitudinalAcceleration: -15 } };
    const read = readMap(hard, 60e3, 50e3);
    expect(readingText(hard, read, show)).toMatch(
      /; it cannot brake as hard as is usual there, and this is for \d+\.\d\u00a0m\/s², nearly the most that it can\.$/,
    );
  });

  test("of the whole leaves out where there is no balance, and says so where there is none", () => {
    const map = drawn(of);
    const hidden = { ...map, state: map.state.map((_, at) => (at % map.columns < 6 ? 1 : 0)) };
    const { least } = rangeOf(drawnOf(hidden, hidden.understeerMargin));
    const { least: whole } = rangeOf(map.understeerMargin);
    expect(least).toBeGreaterThan(whole);
    expect(resultText(of, hidden, show)).not.toBe(resultText(of, map, show));
    expect(undrawnIn(hidden)).toEqual(["tips"]);
    const none = { ...map, state: map.state.map(() => 2) };
    expect(resultText(of, none, show)).toBe("Nowhere on this map is there a balance to draw.");
    expect(Number.isFinite(scalesOf(none, "metric").balance)).toBe(true);
  });

  test("never names a setting outside the limits as the hardest within them", () => {
    const up = named("rear-barPosition");
    const rear = { ...of, along: named("rear-springRate"), up };
    const said = resultText(rear, drawn(rear), show);
    const found = /rear spring rate (\d+).*rear bar position (\d)\.$/.exec(said);
    expect(found).not.toBeNull();
    const [, rate, position] = found ?? [];
    expect(readMap(rear, 1000 * Number(rate), Number(position)).broken).toEqual([]);
  });

  test("scales are round in the reader's unit", () => {
    const map = drawn(of);
    expect(scalesOf(map, "metric").balance).toBeCloseTo(0.5, 9);
    expect(scalesOf(map, "us").balance / 9.80665).toBeCloseTo(0.05, 9);
    const { deepest, balance } = scalesOf(map, "metric");
    expect(deepest / balance).toBeCloseTo(Math.round(deepest / balance), 9);
  });
});

describe("a map that is worked out row by row", () => {
  const over = mapOf(first, demoCar, axes);
  const grid = gridOf(over, 4);

  test("is the same to the last bit, whoever works out which row and in whatever order", () => {
    let got: SetUpMap | undefined;
    const parts: number[] = [];
    const job = jobFor(
      { of: over, grid, onPart: (part) => parts.push(part), onDone: (map) => (got = map) },
      1,
    );
    const rows = Array.from({ length: 5 }, () => job.take());
    expect(rows).toEqual([0, 1, 2, 3, undefined]);
    for (const row of [2, 0, 3, 1]) {
      expect(got).toBeUndefined();
      job.put(row, exactRow(over, grid, row));
    }
    expect(got).toEqual(exactMap(over, grid));
    expect(parts).toEqual([0.25, 0.5, 0.75, 1]);
  });

  test("comes out the same in slices, and stops when it is no longer wanted", async () => {
    const inSlices = await new Promise<SetUpMap>((onDone) =>
      workInSlices(jobFor({ of: over, grid, onDone }, 1), () => true),
    );
    expect(inSlices).toEqual(exactMap(over, grid));
    const parts: number[] = [];
    let wanted = true;
    const onPart = (part: number) => {
      parts.push(part);
      wanted = false;
    };
    vi.useFakeTimers({ toFake: ["setTimeout"] });
    workInSlices(jobFor({ of: over, grid, onPart, onDone: () => parts.push(9) }, 2), () => wanted);
    vi.runAllTimers(); // all that it has put off until later
    vi.useRealTimers();
    expect(parts).toEqual([0.25]);
  });
});
