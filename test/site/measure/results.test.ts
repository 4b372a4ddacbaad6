import { describe, expect, test } from "vitest";
import {
  applyChange,
  type Car,
  carFromJson,
  demoCar,
  handlingCarOf,
  mirrorCar,
  predictedCircle,
  tyreStiffnessOf,
  uncertainNumbersOf,
  valueAtPlace,
  wheelRateOf,
} from "../../../lib/index.js";
import { drawingOf } from "../../../site/pages/measure/drawings.js";
import { circleChanges, predictedShift } from "../../../site/pages/measure/model/circle-change.js";
import { boxesFor, type Sheet } from "../../../site/pages/measure/model/input.js";
import { resultOf } from "../../../site/pages/measure/model/results.js";
import {
  joints,
  type MeasurementId,
  specOf,
  specs,
  withoutForm,
} from "../../../site/pages/measure/model/spec.js";
import { togetherOf } from "../../../site/pages/measure/model/together.js";
import { putBack, withMeasured, written } from "../../../site/pages/measure/model/write.js";
import { measurePage } from "../../../site/pages/measure/page.js";
import { measurementWords } from "../../../site/say/measure/measurements.js";
import { plusMinus } from "../../../site/say/measure/plus-minus.js";
import { remarkInWords } from "../../../site/say/measure/remarks.js";
import { choiceWords, fieldWords, foundWords } from "../../../site/say/measure/words.js";
import { readerWith } from "../../../site/say/reader.js";
import {
  asMeasurements,
  nothingMeasured,
  withReading,
} from "../../../site/store/measured-sheets.js";
import { ballastTexts } from "./ballast-texts.js";

const typed = (texts: Readonly<Record<string, string>>, units: "metric" | "us" = "metric"): Sheet =>
  Object.fromEntries(Object.entries(texts).map(([place, text]) => [place, { text, units }]));

const result = (
  id: MeasurementId,
  sheet: Sheet,
  car: Car = demoCar,
  end: "front" | "rear" = "front",
) => resultOf({ car, sheet, form: { spec: specOf(id), end } });

const foundIn = (told: ReturnType<typeof result>, key: string) => {
  const one = told.found?.find((found) => found.key === key);
  if (one === undefined) throw new Error(`no ${key}: ${JSON.stringify(told)}`);
  return one;
};

const scales = {
  "four-scales.frontLeft.0": "290",
  "four-scales.frontRight.0": "271.375",
  "four-scales.rearLeft.0": "262",
  "four-scales.rearRight.0": "256.625",
};

/** Loads and falls of the front axle, by its rates in series. */
function ballast(): Record<string, string> {
  const rate = 1 / (1 / wheelRateOf(demoCar.front) + 1 / tyreStiffnessOf(demoCar.front, 2752.6));
  return Object.fromEntries(ballastTexts(rate, [40, 80, 120]));
}

const hubSteps = (ratio: number) =>
  Object.fromEntries(
    [0, 20, 40, -20, -40].flatMap((rise, i) => [
      [`motion-ratio.front.hub.${i}`, String(290 + rise)],
      [`motion-ratio.front.spring.${i}`, String(300 - ratio * rise)],
    ]),
  );

describe("what is typed on the page becomes numbers of the car", () => {
  test("four scales give mass and body of the workbook's own car", () => {
    const told = result("four-scales", typed(scales));
    expect(foundIn(told, "mass").value).toBeCloseTo(1080, 9);
    expect(foundIn(told, "bodyMass")).toMatchObject({ path: "body.mass" });
    expect(foundIn(told, "bodyMass").value).toBeCloseTo(810, 6);
  });

  test("the same in pounds, typed with or without the unit, and with a comma", () => {
    const pounds = Object.fromEntries(
      Object.entries(scales).map(([place, kg]) => [place, String(Number(kg) / 0.45359237)]),
    );
    const told = result("four-scales", typed(pounds, "us"));
    expect(foundIn(told, "mass").value).toBeCloseTo(1080, 6);
    const mixed = { ...scales, "four-scales.frontRight.0": "271,375 kg" };
    expect(foundIn(result("four-scales", typed(mixed, "us")), "mass").quantity).toBe("mass");
    expect(foundIn(result("four-scales", typed(mixed)), "mass").value).toBeCloseTo(1080, 9);
  });

  test("repeats count as their mean, and what is no number or out of range as not read", () => {
    const again = { ...scales, "four-scales.frontLeft.1": "292", "four-scales.frontLeft.2": "abc" };
    expect(foundIn(result("four-scales", typed(again)), "mass").value).toBeCloseTo(1081, 9);
    const wrong = { ...scales, "four-scales.rearLeft.0": "99999" };
    expect(result("four-scales", typed(wrong))).toEqual({ missing: ["rearLeft"] });
  });

  test("ballast gives the rates back; a motion ratio that is wrong in the file is told", () => {
    const told = result("ride-rate", typed(ballast()));
    expect(foundIn(told, "wheelRate").value / 25_350).toBeCloseTo(1, 3);
    expect(told.found && told.remarks.map(({ code }) => code)).toContain("fits");
    const spring = { ...demoCar.front.spring, motionRatio: 0.8 };
    const wrong = { ...demoCar, front: { ...demoCar.front, spring } };
    const other = result("ride-rate", typed(ballast()), wrong);
    expect(other.found && other.remarks.map(({ code }) => code)).toContain("misfit");
  });

  test("a weight on a sill: lean by both falls over the distance of the marks", () => {
    const sheet = typed({
      "sill-weight.arm.0": "700",
      "sill-weight.apart.0": "1500",
      "sill-weight.added.0": "60",
      "sill-weight.nearFall.0": "9",
      "sill-weight.farRise.0": "3",
    });
    const byHand = (60 * 9.80665 * 0.7) / Math.atan(0.012 / 1.5);
    expect(foundIn(result("sill-weight", sheet), "apparent").value / byHand).toBeCloseTo(1, 6);
    const loaded = {
      frontLeft: "281",
      frontRight: "310.375",
      rearLeft: "265",
      rearRight: "283.625",
    };
    const both = Object.fromEntries(
      Object.entries(loaded).map(([key, kg]) => [`sill-weight.loaded.${key}.0`, kg]),
    );
    const split = result("sill-weight", { ...sheet, ...typed({ ...scales, ...both }) });
    const [front, rear] = [(39 + 9) * 1.44, (27 - 3) * 1.45]; // kg across, times track
    expect(foundIn(split, "rollSplit").value).toBeCloseTo(front / (front + rear), 9);
  });

  test("joints by tape: level arms have their roll centre on the ground; joints in the file stay in charge", () => {
    const level: Record<string, readonly [number, number]> = {
      lowerInner: [350, 200],
      lowerOuter: [680, 200],
      upperInner: [350, 420],
      upperOuter: [680, 420],
      wheelCentre: [720, 290],
    };
    const sheet = typed(
      Object.fromEntries(
        Object.entries(level).flatMap(([name, [y, z]]) => [
          [`linkage.front.${name}Y.0`, String(y)],
          [`linkage.front.${name}Z.0`, String(z)],
        ]),
      ),
    );
    const told = result("linkage", sheet);
    expect(foundIn(told, "rollCentre").value).toBeCloseTo(0, 9);
    expect(foundIn(told, "rollCentre").path).toBe("front.geometry.rollCentreHeight");
    const strut = { ...sheet, ...typed({ "linkage.front.choice.kind": "strut" }) };
    expect(result("linkage", strut)).toEqual({
      missing: ["strutTopY", "strutTopZ", "strutFootY", "strutFootZ"],
    });
  });

  test("laps of a circle: limit, and no difference that is not there", () => {
    const laps = (side: string, times: readonly number[]) =>
      Object.fromEntries(times.map((time, i) => [`circle.${side}.0.${i}`, String(time)]));
    const sheet = typed({
      "circle.radius.0": "20",
      ...laps("before", [10, 10, 10, 10]),
      ...laps("after", [9.98, 9.98, 9.98, 9.98]),
    });
    const told = result("circle", sheet);
    expect(foundIn(told, "limit").value).toBeCloseTo((4 * Math.PI ** 2 * 20) / 100, 9);
    expect(foundIn(told, "difference").value).toBeCloseTo(0.0317, 3); // 2·a·0.02/10
    expect(told.found && told.remarks.map(({ code }) => code)).toContain("notMeasured");
  });

  test("steady laps: the rim's mark over half its size is the angle", () => {
    const [radius, ratio, gradient] = [20, 15, 0.004];
    const steady = [0.5, 1.5, 2.5, 3.5].flatMap((turn, i) => {
      const angle = ratio * (2.4 / radius + gradient * turn);
      return [
        [`circle.steadyTime.${i}`, String(2 * Math.PI * Math.sqrt(radius / turn))],
        [`circle.rimMark.${i}`, String((1000 * angle * 0.35) / 2)],
      ];
    });
    const sheet = typed({
      "circle.radius.0": "20",
      "circle.rimDiameter.0": "350",
      ...Object.fromEntries(steady),
    });
    const told = result("circle", sheet);
    expect(foundIn(told, "gradient").value).toBeCloseTo(gradient, 8);
    expect(foundIn(told, "steeringRatio").value).toBeCloseTo(ratio, 6);
  });

  test("an empty form says what it lacks and gives no number, whichever it is", () => {
    for (const { id } of specs) expect(result(id, {}).found).toBeUndefined();
  });
});

const togetherIn = (sheet: Sheet) => togetherOf((form) => resultOf({ car: demoCar, sheet, form }));

test("pressures around the run: how far they rose, and that the model is of the file's", () => {
  const remarks = (more: Readonly<Record<string, string>>) => {
    const told = result("circle", typed({ "circle.radius.0": "20", ...more }));
    const all = "remarks" in told ? (told.remarks ?? []) : [];
    return all.map(({ code, value = 0 }) => [code, Math.round(value)] as const);
  };
  const own = demoCar.front.tyre.pressure.left / 1000;
  const read = {
    "circle.frontBefore.0": String(own - 20),
    "circle.frontAfter.0": String(own + 12),
  };
  expect(remarks(read)).toEqual(
    expect.arrayContaining([
      ["frontRose", 32_000],
      ["frontNotAsInFile", 12_000],
    ]),
  );
  const codes = remarks({ "circle.rearAfter.0": String(demoCar.rear.tyre.pressure.left / 1000) });
  expect(codes.map(([code]) => code)).not.toContain("rearNotAsInFile");
});

test("beside a change on the circle stands what the model says of it", () => {
  const [{ key = "" } = {}] = circleChanges(demoCar);
  const laps = ["before", "after"].flatMap((side) =>
    [10, 10.1].map((time, i) => [`circle.${side}.0.${i}`, String(time)]),
  );
  const sheet = typed({
    "circle.radius.0": "20",
    "circle.choice.change": key,
    ...Object.fromEntries(laps),
  });
  const { predicted = 0 } = foundIn(result("circle", sheet), "difference");
  const changed = applyChange(demoCar, { lever: "springRate", end: "front", by: 5e3 });
  const limit = (car: Car) => predictedCircle(handlingCarOf(car, demoCar), 20).limit;
  const right = foundIn(
    result("circle", { ...sheet, ...typed({ "circle.choice.direction": "right" }) }),
    "difference",
  );
  const limitRight = (car: Car) =>
    predictedCircle(mirrorCar(handlingCarOf(car, demoCar)), 20).limit;
  expect(right.predicted).toBeCloseTo(limitRight(changed) - limitRight(demoCar), 6);
  expect(key).toBe("springRate front 5000");
  expect(predicted).toBeCloseTo(limit(changed) - limit(demoCar), 6);
  expect(predictedShift(demoCar, 20, {})).toBeUndefined();
});

describe("two ways to one number", () => {
  test("that agree are one, surer than each", () => {
    const [one] = togetherIn(typed({ ...ballast(), ...hubSteps(0.65) }));
    expect(one?.path).toBe("front.spring.motionRatio");
    expect(one?.value ?? 0).toBeCloseTo(0.65, 2);
    expect(one?.spread ?? 1).toBeLessThan(
      Math.min(...(one?.ways ?? []).map(({ found }) => found.spread)),
    );
    expect(one?.byChance ?? 0).toBeGreaterThan(0.5);
  });

  test("that do not are told so", () => {
    const [one] = togetherIn(typed({ ...ballast(), ...hubSteps(0.9) }));
    expect(one?.byChance ?? 1).toBeLessThan(0.01);
  });
});

describe("a number is written into the car", () => {
  const own: Car = { ...demoCar, name: "Rook" };
  const by = { when: "2026-05-02", by: "Ada" };
  const write = { path: "body.height", value: 0.512345678, spread: 0.01432 };

  test("with its spread, day and name, which bands then use; the rest stays, unknown fields too", () => {
    const strange = { ...own, colour: "green" } as Car;
    const told = written(strange, [write], by);
    if ("faults" in told) throw new Error(told.faults.join());
    expect(told.car.body.height).toBeCloseTo(0.512346, 9);
    expect(told.car.known?.["body.height"]).toEqual({
      how: "measured",
      spread: 0.0143,
      ...by,
    });
    expect(told.car).toMatchObject({ colour: "green", wheelbase: demoCar.wheelbase });
    expect(carFromJson(JSON.parse(JSON.stringify(told.car))).faults).toBeUndefined();
    const number = uncertainNumbersOf(told.car).find(({ path }) => path === "body.height");
    expect(number?.spread).toBe(0.0143);
    expect(number?.how).toBe("measured");
  });

  test("and taken back: the car is letter by letter what it was, with what it knew before", () => {
    const known = {
      "body.height": { how: "copied" as const },
      wheelbase: { how: "measured" as const },
    };
    for (const car of [own, { ...own, known }]) {
      const writes = [write, { path: "front.tyre.stiffness", value: 1.2, spread: 0.05 }];
      const told = written(car, writes, by);
      if ("faults" in told) throw new Error(told.faults.join());
      expect(valueAtPlace(told.car, "front.tyre.stiffness")).toBe(1.2);
      expect(putBack(told.car as never, told.before)).toEqual(car);
    }
  });

  test("unless the car cannot have it: one sentence, and nothing is written", () => {
    const told = written(own, [{ ...write, value: 9 }], by);
    expect("faults" in told && told.faults[0]).toMatch(/body\.height/);
    expect(withMeasured({ name: "x" }, write, { when: "2026-05-02", by: "" })).toMatchObject({
      known: { "body.height": { how: "measured", when: "2026-05-02" } },
    });
  });
});

test("without a script the page is a sheet to print: drawings, cautions, and boxes to write in", () => {
  const main = String(measurePage.main);
  const count = (text: string) => main.split(text).length - 1;
  expect(count('<svg class="drawing"')).toBe(specs.length + withoutForm.length);
  expect(count('class="caution"')).toBeGreaterThan(specs.length);
  expect(count('<table class="paper">')).toBeGreaterThanOrEqual(specs.length);
  for (const { id } of specs) expect(main).toContain(`<a href="#${id}">`);
});

describe("what the page keeps and says", () => {
  test("readings are read back as they were kept, and nonsense is left out", () => {
    const all = withReading(nothingMeasured, "Rook", "four-scales.frontLeft.0", {
      text: "290",
      units: "metric",
    });
    expect(asMeasurements(JSON.parse(JSON.stringify(all)))).toEqual(all);
    const broken = {
      ...all,
      sheets: { Rook: { a: 3, b: { text: "1", units: "metric" } }, Crow: 7 },
    };
    expect(asMeasurements(broken)?.sheets).toEqual({
      Rook: { b: { text: "1", units: "metric" } },
      Crow: {},
    });
    for (const kept of [null, 3, [], "x"]) expect(asMeasurements(kept)).toBeUndefined();
  });

  test("a box more than are in use, as far as there is room", () => {
    const sheet = typed({ "a.0": "1", "a.2": "3" });
    expect(boxesFor({}, (i) => `a.${i}`, 6)).toBe(1);
    expect(boxesFor(sheet, (i) => `a.${i}`, 6)).toBe(4);
    expect(boxesFor(sheet, (i) => `a.${i}`, 3)).toBe(3);
  });

  test("every form, field, choice and result has its words and its drawing", () => {
    for (const { id, fields, columns, tools, choices } of specs) {
      expect(measurementWords[id]?.steps.length, id).toBeGreaterThan(1);
      expect(measurementWords[id]?.cautions.length, id).toBeGreaterThan(0);
      expect(drawingOf(id)).toMatch(/^<svg [^>]*role="img" aria-label="[^"]{20,}"/);
      for (const { key } of [...fields, ...columns, ...tools])
        expect(fieldWords, key).toHaveProperty([key]);
      for (const { key, values } of choices)
        for (const value of values) expect(choiceWords).toHaveProperty([`${key}.${value}`]);
    }
    expect(joints.length).toBe(7);
    for (const key of ["mass", "limit", "gradient", "together"])
      expect(foundWords).toHaveProperty(key);
  });

  test("a doubt is told with as many digits as it has", () => {
    const metric = readerWith("metric");
    expect(plusMinus({ value: 0.5123, spread: 0.00852 }, "lengthSmall", 0, metric)).toBe(
      "512 ± 14\u00a0mm",
    );
    expect(plusMinus({ value: 0.651234, spread: 0.0158 }, "ratio", 3, metric)).toBe(
      "0.651 ± 0.026",
    );
    expect(plusMinus({ value: 0.5123, spread: 0 }, "length", 3, metric)).toBe(
      "0.512 ± 0.000\u00a0m",
    );
  });

  test("remarks are sentences, and tell no number that is none", () => {
    for (const code of ["notMeasured", "misfit", "springsTaken", "isMeasured", "weightDiffers"])
      expect(remarkInWords(code, Number.POSITIVE_INFINITY, readerWith("metric"))).toMatch(/\.$/);
    expect(
      remarkInWords("notMeasured", Number.POSITIVE_INFINITY, readerWith("metric")),
    ).not.toMatch(/Infinity/);
  });
});
