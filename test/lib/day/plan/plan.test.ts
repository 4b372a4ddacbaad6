import { describe, expect, test, vi } from "vitest";
import { phaseNames } from "../../../../lib/balance/phases.js";
import { standingCar } from "../../../../lib/balance/standing-car.js";
import type { Car } from "../../../../lib/car/car.js";
import { demoCar } from "../../../../lib/car/demo-car.js";
import { applyChange } from "../../../../lib/change/apply.js";
import { behaviourOf } from "../../../../lib/change/behaviour.js";
import type { Change } from "../../../../lib/change/change.js";
import { LEAST_FELT_SHIFT } from "../../../../lib/day/debrief/feel.js";
import { exampleVenue } from "../../../../lib/day/example/example-venue.js";
import { cycleMinutes, usualMinutes } from "../../../../lib/day/plan/minutes.js";
import {
  type Plan,
  type PlanStep,
  withoutStep,
  withStepBefore,
  withStepMoved,
} from "../../../../lib/day/plan/plan.js";
import { candidatesFor, proposePlan } from "../../../../lib/day/plan/propose.js";
import { sheetOf } from "../../../../lib/day/plan/sheet.js";
import type { SheetRow } from "../../../../lib/day/plan/sheet-row.js";
import { testedChanges } from "../../../../lib/day/plan/single.js";
import { restOf } from "../../../../lib/statics/rest.js";

vi.setConfig({ testTimeout: 60_000 }); // many cars, or many files, in each test

const day = { car: demoCar, venue: exampleVenue, minutes: 360 };
const stiffer: Change = { lever: "barPosition", end: "front", by: 1 };
const softer: Change = { lever: "springRate", end: "front", by: -10e3 };
const change = (what: Change): PlanStep => ({ kind: "change", change: what });
const planOf = (...steps: PlanStep[]): Plan => ({ ...day, steps });
const kindsOf = (row: SheetRow | undefined) => row?.warnings.map(({ code }) => code);

test("a cycle takes 29 minutes with all cars out once, and 8 more for each further round", () => {
  expect(cycleMinutes(usualMinutes)).toBe(29); // by hand: 4 + 5 + 4 + 8 + 2 + 5 + 1
  expect(cycleMinutes(usualMinutes, 3)).toBe(45);
});

describe("a proposed plan", () => {
  const plan = proposePlan(day);
  const rows = sheetOf(plan);

  test("starts with the baseline, returns to it once, and has one run without a change", () => {
    const kinds = plan.steps.map(({ kind }) => kind);
    expect(kinds[0]).toBe("baseline");
    expect(kinds.filter((kind) => kind === "return")).toHaveLength(1);
    expect(kinds.filter((kind) => kind === "no change")).toHaveLength(1);
  });

  test("tests one change at most from each run to the next", () => {
    rows.slice(1).forEach((row, i) => {
      const before = rows[i]?.car ?? demoCar;
      expect(
        testedChanges(standingCar(before, demoCar), standingCar(row.car, demoCar)).length,
      ).toBeLessThanOrEqual(1);
    });
  });

  test("has only changes that are felt somewhere and break no limit", () => {
    for (const row of rows.filter(({ step }) => step.kind === "change")) {
      const shifts = phaseNames.map((name) => Math.abs(row.phases?.[name] ?? 0));
      expect(Math.max(...shifts)).toBeGreaterThanOrEqual(LEAST_FELT_SHIFT);
      expect(row.margins.every(({ margin }) => margin >= 0)).toBe(true);
    }
  });

  test("ends within the time there is, each run starting when the last is over", () => {
    rows.forEach((row, i) => {
      const { startsAt = 0, lasts = 0 } = rows[i - 1] ?? {};
      expect(row.startsAt).toBe(startsAt + lasts);
      expect(row.startsAt + row.lasts).toBeLessThanOrEqual(day.minutes);
    });
  });

  test("comes back to the baseline exactly", () => {
    const back = rows.find(({ step }) => step.kind === "return");
    expect(back?.car).toBe(demoCar);
  });

  test("is shorter when there is less time, and still starts with the baseline", () => {
    const short = proposePlan({ ...day, minutes: 100 });
    expect(short.steps.map(({ kind }) => kind)).toEqual(["baseline", "change", "return"]);
    expect(proposePlan({ ...day, minutes: 10 }).steps).toEqual([]);
  });

  test("tries each lever of an end only once", () => {
    const places = plan.steps.flatMap((step) =>
      step.kind === "change"
        ? [`${step.change.lever} ${"end" in step.change && step.change.end}`]
        : [],
    );
    expect(new Set(places).size).toBe(places.length);
  });
});

test("brakes are never proposed rearwards", () => {
  const { adjusters: _a, ...front } = demoCar.front;
  const { bar: _bar, adjusters: _b, ...rear } = demoCar.rear;
  const adjusters = { brakeFrontShare: { min: 0.5, max: 0.66, step: 0.02 } }; // 0.66 as it came
  const bar = front.bar && { ...front.bar, position: 1 };
  const car: Car = { ...demoCar, front: { ...front, ...(bar && { bar }) }, rear, adjusters };
  const levers = candidatesFor(standingCar(car)).map(({ change }) => [
    change.lever,
    Math.sign(change.by),
  ]);
  expect(levers).toContainEqual(["barPosition", 1]);
  expect(levers).not.toContainEqual(["brakeFrontShare", 1]); // in front there is no more
  const proposed = proposePlan({ ...day, car }).steps.filter(({ kind }) => kind === "change");
  expect(proposed).toEqual([change({ lever: "barPosition", end: "front", by: 1 })]);
});

test("a car without adjusters gets a plan without changes", () => {
  const { bar: _front, adjusters: _a, ...front } = demoCar.front;
  const { bar: _rear, adjusters: _b, ...rear } = demoCar.rear;
  const { adjusters: _c, ...rest } = demoCar;
  const fixed: Car = { ...rest, front, rear };
  expect(candidatesFor(standingCar(fixed))).toEqual([]);
  const kinds = proposePlan({ ...day, car: fixed }).steps.map(({ kind }) => kind);
  expect(kinds).toEqual(["baseline", "return", "no change"]);
});

test("a candidate is the fewest steps that are felt, or the round count above", () => {
  const putBack = ["springRate", "tyrePressure", "ballast"]; // the seats are turned as well
  for (const { change, steps } of candidatesFor(standingCar(demoCar))) {
    if (steps === 1 || putBack.includes(change.lever)) continue;
    const fewer = { ...change, by: (change.by / steps) * Math.floor(0.75 * steps) };
    const before = behaviourOf(standingCar(demoCar));
    const after = behaviourOf(standingCar(applyChange(demoCar, fewer), demoCar));
    for (const name of phaseNames) {
      const shift = after.phases[name].understeerMargin - before.phases[name].understeerMargin;
      expect(Math.abs(shift)).toBeLessThan(LEAST_FELT_SHIFT);
    }
  }
});

test("a car with fine steps gets as large a change as one with coarse steps", () => {
  const step = 1e3;
  const { springRate: _, ...others } = demoCar.front.adjusters ?? {};
  const adjusters = { ...others, springRate: { min: 40e3, max: 90e3, step } };
  const fine: Car = { ...demoCar, front: { ...demoCar.front, adjusters } };
  const softer = candidatesFor(standingCar(fine)).find(
    ({ change }) =>
      change.lever === "springRate" && "end" in change && change.end === "front" && change.by < 0,
  );
  expect(softer?.change.by).toBeLessThanOrEqual(-6e3);
});

/** So tall and narrow that its wheels lift before its tyres slide: half the track over the height < 1. */
const narrow = { ...demoCar.front, track: 1.1 };
const tall: Car = {
  ...demoCar,
  body: { ...demoCar.body, height: 0.8 },
  front: narrow,
  rear: { ...demoCar.rear, track: 1.1 },
};

describe("the sheet", () => {
  test("says of a car that tips over before it slides that nobody drives it there, and asks for no larger change", () => {
    const rows = sheetOf({ ...planOf({ kind: "baseline" }, change(stiffer)), car: tall });
    for (const row of rows) {
      expect(row.tips).toContain("turn-in");
      expect(kindsOf(row)).toContain("tips-over");
      expect(kindsOf(row)).not.toContain("too-small");
    }
    expect(kindsOf(sheetOf(planOf({ kind: "baseline" }))[0])).toEqual([]);
  });

  const rows = sheetOf(planOf({ kind: "baseline" }, change(softer), { kind: "return" }));

  test("shows balance against the run before", () => {
    const moved = rows[1]?.phases?.middle ?? 0;
    expect(moved).toBeLessThan(0); // common practice: a softer front lets the rear slide sooner
    expect(rows[2]?.phases?.middle).toBeCloseTo(-moved, 9);
  });

  test("puts the seats of a softer spring back, and says so among what is to be done", () => {
    const softened = rows[1];
    expect(softened?.putBackTurns?.front.left).toBeGreaterThan(0);
    expect(softened?.toDo).toContainEqual(softer);
    expect(softened?.toDo.some((one) => one.lever === "seatTurns" && one.end === "front")).toBe(
      true,
    );
    const step = (1.5e-3 * 0.5) / 0.65; // half a turn of the seat, at the wheel
    const { rideHeight } = restOf(softened?.car ?? demoCar, demoCar);
    expect(Math.abs(rideHeight.front.left - 0.13)).toBeLessThan(step);
  });

  test("leaves the seats alone when the plan says so", () => {
    const [, left] = sheetOf(
      planOf({ kind: "baseline" }, { ...change(softer), putBack: "nothing" } as PlanStep),
    );
    expect(left?.putBackTurns).toBeUndefined();
    expect(left?.toDo).toHaveLength(1);
  });

  test("takes no minutes for a change where none is made, and longer for springs", () => {
    const turned = Math.abs(rows[1]?.putBackTurns?.front.left ?? 0);
    const making = 25 + 8 + 2 * (turned - 2); // the springs, two turns of their seats, and each beyond
    expect(rows.map(({ minutes }) => minutes.change)).toEqual([0, making, making]);
  });

  test("a run that changes nothing is predicted to feel like the one before", () => {
    const [, same] = sheetOf(planOf({ kind: "baseline" }, { kind: "no change" }));
    expect(same?.phases).toEqual({ "braking in": 0, "turn-in": 0, middle: 0, "power on": 0 });
    expect(same?.cells.every(({ shift }) => shift === 0)).toBe(true);
  });
});

describe("warnings", () => {
  test("a change too small to feel is called so, with both numbers", () => {
    const tiny = change({ lever: "toe", end: "front", by: (0.05 * Math.PI) / 180 });
    const [, row] = sheetOf(planOf({ kind: "baseline" }, tiny));
    expect(kindsOf(row)).toEqual(["too-small"]);
    expect(row?.warnings[0]).toMatchObject({ least: LEAST_FELT_SHIFT });
    const most = Math.max(...phaseNames.map((name) => Math.abs(row?.phases?.[name] ?? 0)));
    expect(row?.warnings[0]).toMatchObject({ most });
  });

  test("an event may set its own threshold", () => {
    const steps: PlanStep[] = [{ kind: "baseline" }, change(stiffer)];
    const rough = sheetOf({ ...day, leastFelt: 0.5, steps });
    expect(kindsOf(rough[1])).toContain("too-small");
  });

  test("a change that breaks a class limit says which", () => {
    const low = change({ lever: "seatTurns", end: "front", by: -10 });
    const [, row] = sheetOf(planOf({ kind: "baseline" }, low));
    expect(row?.warnings).toContainEqual(
      expect.objectContaining({
        ...{ code: "limit", parameter: "rideHeight", where: "front left", kind: "least" },
        limit: demoCar.limits?.leastRideHeight,
      }),
    );
    const kept = { ...low, outsideClass: "kept" } as const;
    const [, knowingly] = sheetOf(planOf({ kind: "baseline" }, kept));
    const limits = knowingly?.warnings.filter(({ code }) => code === "limit") ?? [];
    expect(limits.length).toBeGreaterThan(0);
    for (const warning of limits) expect(warning).toMatchObject({ kept: true });
  });

  test("a change that the car does not have is refused, and the car stays as it was", () => {
    const [, row] = sheetOf(planOf({ kind: "baseline" }, change({ ...stiffer, by: 9 })));
    expect(row?.car).toBe(demoCar);
    expect(kindsOf(row)).toEqual(["refused"]);
  });

  test("a return after two changes says that the run before cannot be compared", () => {
    const rear: Change = { lever: "barPosition", end: "rear", by: 1 };
    const rows = sheetOf(
      planOf({ kind: "baseline" }, change(stiffer), change(rear), { kind: "return" }),
    );
    expect(kindsOf(rows[3])).toContain("several-changes");
    expect(kindsOf(rows[2])).not.toContain("several-changes");
  });

  test("a rear that comes earlier is worth a slow first lap", () => {
    const rear: Change = { lever: "barPosition", end: "rear", by: 1 };
    const [, row] = sheetOf(planOf({ kind: "baseline" }, change(rear)));
    expect(kindsOf(row)).toEqual(["towards-the-rear"]);
  });

  test("brakes moved rearwards are always warned of", () => {
    const brakes = (by: number) => change({ lever: "brakeFrontShare", by });
    const rows = sheetOf(
      planOf({ kind: "baseline" }, brakes(0.02), { kind: "return" }, brakes(-0.04), brakes(0.02)),
    );
    const warned = rows.map((row) => kindsOf(row)?.includes("brakes-rearwards"));
    expect(warned).toEqual([false, false, false, true, false]); // back to where it was is no move rearwards
  });

  test("a day without a baseline, or too short, says so", () => {
    const [row] = sheetOf({ ...day, minutes: 20, steps: [change(stiffer)] });
    expect(kindsOf(row)).toContain("no-baseline");
    expect(kindsOf(row)).toContain("too-late");
  });
});

test("steps can be added, moved and taken out; the plan before stays as it was", () => {
  const plan = planOf({ kind: "baseline" }, change(stiffer), { kind: "return" });
  const kinds = (p: Plan) => p.steps.map(({ kind }) => kind);
  expect(kinds(withStepBefore(plan, 3, { kind: "no change" }))[3]).toBe("no change");
  expect(kinds(withoutStep(plan, 2))).toEqual(["baseline", "change"]);
  expect(kinds(withStepMoved(plan, 2, 1))).toEqual(["baseline", "return", "change"]);
  expect(kinds(withStepMoved(plan, 7, 0))).toEqual(kinds(plan));
  expect(kinds(plan)).toEqual(["baseline", "change", "return"]);
});
