import { expect, test } from "vitest";
import { standingCar } from "../../../../lib/balance/standing-car.js";
import { demoCar } from "../../../../lib/car/demo-car.js";
import { applyChanges } from "../../../../lib/change/apply.js";
import type { Change } from "../../../../lib/change/change.js";
import { pointsFelt } from "../../../../lib/day/debrief/feel.js";
import {
  type FeltCell,
  feltAgainstPredicted,
  type TwoRuns,
} from "../../../../lib/day/debrief/felt.js";
import { exampleVenue } from "../../../../lib/day/example/example-venue.js";
import type { Report } from "../../../../lib/day/log/report.js";
import { feltReasonInWords } from "../../../../site/say/felt.js";
import { readerWith } from "../../../../site/say/reader.js";

const saidOf = (reasons: FeltCell["reasons"]): string =>
  reasons.map((reason) => feltReasonInWords(reason, readerWith("metric"))).join(" ");
const middle: Report = { corner: "Long Left", phase: "middle", input: "steady", balance: 0 };
const said = (balance: number, rest: Report = {}): Report => ({ ...middle, ...rest, balance });
const stifferFront: Change = { lever: "barPosition", end: "front", by: 1 };
const moreFrontBrake: Change = { lever: "brakeFrontShare", by: 0.02 };

function felt(
  changes: readonly Change[],
  before: readonly Report[],
  after: readonly Report[],
  leastFelt?: number,
) {
  const runs: TwoRuns = {
    before: standingCar(demoCar),
    after: standingCar(applyChanges(demoCar, changes), demoCar),
    venue: exampleVenue,
    reportsBefore: before,
    reportsAfter: after,
    ...(leastFelt !== undefined && { leastFelt }),
  };
  return feltAgainstPredicted(runs);
}

test("a stiffer front bar that is felt to push is a match", () => {
  const [cell] = felt([stifferFront], [said(0)], [said(1)]);
  expect(cell).toMatchObject({ verdict: "match", felt: 1, corner: "Long Left", phase: "middle" });
  expect(cell?.predicted).toBeGreaterThan(0);
});

test("felt the other way it is opposite", () => {
  expect(felt([stifferFront], [said(0)], [said(-1)])[0]?.verdict).toBe("opposite");
});

test("felt nowhere it is nothing felt", () => {
  expect(felt([stifferFront], [said(1)], [said(1)])[0]?.verdict).toBe("nothing felt");
});

test("the same as in the last run is nothing felt, whatever the number before", () => {
  const same = said(1, { againstLastRun: "same" });
  expect(felt([stifferFront], [], [same])[0]).toMatchObject({ verdict: "nothing felt", felt: 0 });
});

test("felt in another part of the same corner it is another phase", () => {
  const turnIn: Report = { ...middle, phase: "turn-in" };
  const cells = felt(
    [stifferFront],
    [said(0), { ...turnIn, balance: 0 }],
    [said(0), { ...turnIn, balance: 1 }],
  );
  expect(cells.map(({ phase, verdict }) => [phase, verdict])).toEqual([
    ["turn-in", "match"],
    ["middle", "other phase"],
  ]);
});

test("felt where nothing should be, it was felt and not predicted", () => {
  const [cell] = felt([moreFrontBrake], [said(0)], [said(1)]);
  expect(cell?.verdict).toBe("felt, not predicted");
});

test("nothing felt where nothing should be is a match", () => {
  expect(felt([moreFrontBrake], [said(0)], [said(0)])[0]?.verdict).toBe("match");
});

test("two changes at once are confounded in every cell", () => {
  const [cell] = felt([stifferFront, moreFrontBrake], [said(0)], [said(-1)]);
  expect(cell?.verdict).toBe("confounded");
  expect(cell?.reasons[0]).toEqual({ code: "several-changes", count: 2 });
});

test("a first report cannot be compared", () => {
  expect(felt([stifferFront], [], [said(-1)])[0]?.verdict).toBe("no comparison");
});

test("a run without a change measures how much feeling moves by itself", () => {
  const [cell] = felt([], [said(0)], [said(1)]);
  expect(cell?.verdict).toBe("felt, not predicted");
  expect(cell?.reasons).toContainEqual({ code: "nothing-changed" });
});

test("another input, a guess and a rough road are given as reasons", () => {
  const barn: Report = { ...middle, corner: "Barn" };
  const [cell] = felt(
    [stifferFront],
    [{ ...barn, balance: 0 }],
    [{ ...barn, balance: -1, input: "lifting off", confidence: "a guess" }],
  );
  const other = { code: "other-input", before: "steady", now: "lifting off" };
  expect(cell?.reasons).toContainEqual(other);
  expect(cell?.reasons).toContainEqual({ code: "rough-road" });
  expect(cell?.reasons).toContainEqual({ code: "a-guess" });
});

test("a small shift is measured against what can just be felt, and no larger change is urged", () => {
  const [cell] = felt([stifferFront], [said(1)], [said(1)], 0.15);
  expect(cell?.predicted).toBeGreaterThan(0.15);
  expect(cell?.predicted).toBeLessThan(0.3);
  expect(cell?.reasons).toContainEqual({ code: "near-threshold" });
  expect(saidOf(cell?.reasons ?? [])).toContain(
    "The predicted shift is less than twice what can just be felt: some drivers feel it, some do not.",
  );
  expect(saidOf(cell?.reasons ?? [])).not.toContain("larger change");
});

test("no reason says that a driver was wrong", () => {
  const after = said(2, { confidence: "a guess", howOften: "once", input: "throttle" });
  const all = [[stifferFront], [moreFrontBrake], [stifferFront, moreFrontBrake], []].flatMap((c) =>
    [-2, 0, 2].flatMap((was) => felt(c, [said(was)], [after])),
  );
  for (const { reasons } of all) expect(saidOf(reasons)).not.toMatch(/wrong|mistake|error|failed/i);
});

test("a point on the scale is two tenths of a metre per second squared, cut off at three", () => {
  expect([0, 0.09, 0.11, 0.2, 0.5, 5, -5].map((shift) => pointsFelt(shift))).toEqual([
    0, 0, 1, 1, 3, 3, -3,
  ]); // by hand: round(x / 0.2); 0.5/0.2 = 2.5 rounds up
});
