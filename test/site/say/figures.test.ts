import { expect, test } from "vitest";
import { standingCar } from "../../../lib/balance/standing-car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { differenceOf } from "../../../lib/change/behaviour.js";
import type { Change } from "../../../lib/change/change.js";
import { baselineOf, effectOf } from "../../../lib/change/effect.js";
import { figuresOf } from "../../../lib/change/figures.js";
import { figureNames, movedInWords } from "../../../site/say/figures.js";

import { readerWith } from "../../../site/say/reader.js";

const metric = readerWith("metric");
const figures = figuresOf(standingCar(demoCar));
const before = baselineOf(standingCar(demoCar));
const moved = (change: Change) =>
  movedInWords(effectOf(change, before).moved.figures, metric).join("; ");

test("every figure of a car has a name", () => {
  expect(Object.keys(figureNames).sort()).toEqual(Object.keys(figures).sort());
});

test("a car that stays as it is moves nothing", () => {
  expect(movedInWords(differenceOf(figures, figures), metric)).toEqual([]);
});

test("what is without end before or after is not put into words", () => {
  const endless = { ...figures, understeerGradient: Infinity };
  expect(movedInWords(differenceOf(endless, figures), metric)).toEqual([]);
  expect(movedInWords(differenceOf(endless, endless), metric)).toEqual([]);
});

test("toe and pressure are told by what a driver feels of them below the limit", () => {
  // toe-in holds the nose back through the loaded outer wheel; more air, more stiffness at that end
  // – common practice, no source
  expect(moved({ lever: "toe", end: "front", by: 0.002 })).toContain("understeer gradient −0.0");
  expect(moved({ lever: "tyrePressure", end: "front", by: 5e3 })).toMatch(
    /understeer gradient \+0\.03 °\/g.*yaw response −0\.00\d s/,
  );
});
