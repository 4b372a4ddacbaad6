import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import { type MapAxis, mapAxesOf } from "../../../lib/map/map-axis.js";
import { readMap } from "../../../lib/map/map-reading.js";
import { setUpMap } from "../../../lib/map/set-up-map.js";
import { decimalsOfStep } from "../../../lib/shown-range.js";
import { format } from "../../../lib/units.js";
import { contourLines } from "../../../site/pages/map/contours.js";
import { details, pace } from "../../../site/pages/map/detail.js";
import { levelsBetween, roundStep } from "../../../site/pages/map/levels.js";
import { linkToMap, mapFromLink } from "../../../site/pages/map/link.js";
import { mapOf } from "../../../site/pages/map/map-of.js";
import { scalesOf } from "../../../site/pages/map/scales.js";
import { axesIn, firstState, type MapState, withLever } from "../../../site/pages/map/state.js";
import { markAfter, markAt } from "../../../site/pages/map/steer.js";
import { readingText, resultText } from "../../../site/pages/map/tell.js";
import { ticksOf } from "../../../site/pages/map/ticks.js";
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

describe("how fine the map is while something moves", () => {
  test("falls on a slow device until a frame fits, and never below the coarsest", () => {
    const speed = pace();
    for (let i = 0; i < 20; i++) speed.took(400);
    expect(speed.detail()).toBe(details.at(-1));
  });

  test("settles where frames fit, and does not swing", () => {
    const speed = pace();
    const cost = (cells: number) => (40 * cells ** 2) / 64 ** 2;
    const seen = Array.from({ length: 40 }, () => {
      speed.took(cost(speed.detail()));
      return speed.detail();
    });
    expect(new Set(seen.slice(20)).size).toBe(1);
    expect(cost(speed.detail())).toBeLessThan(16);
  });

  test("is full again on a fast device, and one slow frame changes nothing", () => {
    const speed = pace();
    speed.took(30);
    expect(speed.detail()).toBe(64);
    for (let i = 0; i < 20; i++) speed.took(40);
    for (let i = 0; i < 20; i++) speed.took(1);
    expect(speed.detail()).toBe(64);
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
  const show: typeof format = (quantity, value, decimals) => format(quantity, value, decimals);

  test("of one place names settings, balance, hardest turn and the limits it breaks", () => {
    const read = readMap(of, 60e3, 50e3);
    expect(readingText(of, read, show)).toMatch(
      /^Front spring rate 60\u00a0N\/mm, rear spring rate 50\u00a0N\/mm \(as the car is set\): the front gives up first, 0\.\d\d\u00a0m\/s² before the rear, hardest turn \d+\.\d\d\u00a0m\/s²\.$/,
    );
    expect(readingText(of, readMap(of, 40e3, 50e3), show)).toMatch(
      /; outside the class limits: ride height front left, ride height front right\.$/,
    );
  });

  test("of the whole is how far balance and grip go", () => {
    expect(resultText(of, setUpMap(of, 16), show)).toMatch(
      /^Over this map the balance runs from .* of oversteer to .* of understeer and the hardest turn from .* to .*; the hardest within the limits is near front spring rate /,
    );
  });

  test("never names a setting outside the limits as the hardest within them", () => {
    const up = named("rear-barPosition");
    const rear = { ...of, along: named("rear-springRate"), up };
    const said = resultText(rear, setUpMap(rear), show);
    const found = /rear spring rate (\d+).*rear bar position (\d)\.$/.exec(said);
    expect(found).not.toBeNull();
    const [, rate, position] = found ?? [];
    expect(readMap(rear, 1000 * Number(rate), Number(position)).broken).toEqual([]);
  });

  test("scales are round in the reader's unit", () => {
    const map = setUpMap(of, 16);
    expect(scalesOf(map, "metric").balance).toBeCloseTo(0.2, 9);
    expect(scalesOf(map, "us").balance / 9.80665).toBeCloseTo(0.02, 9);
    const { deepest, balance } = scalesOf(map, "metric");
    expect(deepest / balance).toBeCloseTo(Math.round(deepest / balance), 9);
  });
});
