import { describe, expect, test } from "vitest";
import { carShape } from "../../../lib/car/file/car-shape.js";
import { generalPlace } from "../../../lib/car/file/place.js";
import type { Shape } from "../../../lib/car/file/shape.js";
import { sharedSpreads, spreadOf, spreads } from "../../../lib/certainty/spreads.js";

/** Every number of the car file, by its place in general. */
function numbers(shape: Shape, path: string): string[] {
  if (shape.type === "list") return numbers(shape.item, `${path}.0`);
  if (shape.type === "number") return [generalPlace(path)];
  if (shape.type !== "group") return [];
  return Object.entries(shape.fields).flatMap(([name, field]) =>
    numbers(field, path === "" ? name : `${path}.${name}`),
  );
}

/** Counted, chosen or said by rules, or part of a bar's rate, which has a row of its own. */
const exact =
  /^(limits|(\{end\}\.)?adjusters)\.|seatTurns|seatTravelPerTurn|\.bar\.(position|tube)/;

const rows = [...Object.entries(spreads), ...Object.entries(sharedSpreads)];

test("every number of the car file has a usual spread, or is exact", () => {
  const uncertain = [...new Set(numbers(carShape, ""))].filter((key) => !exact.test(key));
  const own = Object.keys(spreads).filter((key) => key !== "{end}.bar.rate");
  expect(own.toSorted()).toEqual(uncertain.toSorted());
});

test.each(rows)("%s is best known when measured or from its maker, worst when copied", (_, row) => {
  expect(row.measured).toBeGreaterThan(0);
  expect(row.estimated).toBeGreaterThanOrEqual(row.measured);
  expect(row.estimated).toBeGreaterThanOrEqual(row.maker);
  expect(row.copied).toBeGreaterThanOrEqual(row.estimated);
  expect(row.from).not.toBe("");
});

describe("a spread", () => {
  const row = spreads["{end}.spring.rate"];
  if (row === undefined) throw new Error("springs have a spread");

  test("in proportion is a share of the number, whatever its sign", () => {
    expect(spreadOf(row, "maker", 60e3)).toBeCloseTo(3000, 9); // 5 % – common practice, no source
    expect(spreadOf(row, "maker", -60e3)).toBeCloseTo(3000, 9);
  });

  test("of a share is none where all or nothing is at one end", () => {
    const drive = spreads.driveFrontShare;
    if (drive === undefined) throw new Error("the drive has a spread");
    expect(spreadOf(drive, "estimated", 0)).toBe(0);
    expect(spreadOf(drive, "estimated", 1)).toBe(0);
    expect(spreadOf(drive, "estimated", 0.5)).toBeCloseTo(drive.estimated, 12);
  });

  test("in the number's own unit is the same for every value", () => {
    expect(spreadOf({ ...row, scale: "own unit", maker: 7 }, "maker", 60e3)).toBe(7);
  });
});
