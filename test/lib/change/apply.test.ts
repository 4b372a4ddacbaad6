import { describe, expect, test } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import { formatCar, parseCar } from "../../../lib/car/file/parse.js";
import { applyChange, applyChanges, canApply } from "../../../lib/change/apply.js";
import { type Change, undoOf } from "../../../lib/change/change.js";
import { possibleChanges } from "../../../lib/change/steps.js";

const all = possibleChanges(demoCar);
const named = all.map((change) => [JSON.stringify(change), change] as const);

test("the demo car allows each of its levers to be moved both ways, but where it is at an end", () => {
  // 9 levers at two ends and 5 of the car, up and down; ballast and passenger are at their least
  expect(all.length).toBe(2 * (9 * 2 + 5) - 2);
  expect(all.filter(({ lever }) => lever === "ballast")).toEqual([{ lever: "ballast", by: 5 }]);
});

describe.each(named)("%s", (_, change) => {
  const before = formatCar(demoCar);
  const changed = applyChange(demoCar, change);

  test("leaves the car it was made on as it was", () => {
    expect(formatCar(demoCar)).toBe(before);
    expect(formatCar(changed)).not.toBe(before);
  });

  test("gives a car that its file can hold", () => {
    expect(parseCar(formatCar(changed)).faults).toBeUndefined();
  });

  test("is taken back by its undo", () => {
    const back = applyChange(changed, undoOf(change));
    expect(rounded(back)).toEqual(rounded(demoCar));
  });
});

test("a change at one side leaves the other side alone", () => {
  const change: Change = { lever: "seatTurns", end: "front", side: "left", by: 2 };
  expect(applyChange(demoCar, change).front.spring.seatTurns).toEqual({ left: 2, right: 0 });
});

test("several changes are made one after the other", () => {
  const step: Change = { lever: "barPosition", end: "front", by: 1 };
  expect(applyChanges(demoCar, [step, step]).front.bar?.position).toBe(5);
});

test("a change beyond the adjuster is refused with field, value and range in SI", () => {
  const tooStiff: Change = { lever: "springRate", end: "front", by: 50e3 };
  expect(canApply(demoCar, tooStiff)).toBe(false);
  expect(() => applyChange(demoCar, tooStiff)).toThrow(
    "front spring rate is 110000 N/m but must be from 40000 to 90000 N/m.",
  );
});

test("a change that the car has no adjuster for is refused", () => {
  const { bar, adjusters, ...rear } = demoCar.rear;
  expect(bar && adjusters).toBeDefined();
  const plain = { ...demoCar, rear };
  expect(() => applyChange(plain, { lever: "barPosition", end: "rear", by: 1 })).toThrow(
    "rear barPosition cannot be set on this car: its file gives no adjuster for it.",
  );
  expect(possibleChanges(plain).some((change) => "end" in change && change.end === "rear")).toBe(
    false,
  );
});

function rounded(car: object): unknown {
  return JSON.parse(
    JSON.stringify(car, (_, value) =>
      typeof value === "number" ? Number(value.toPrecision(12)) + 0 || 0 : value,
    ),
  );
}
