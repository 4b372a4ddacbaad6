import { describe, expect, test, vi } from "vitest";
import { standingCar } from "../../../../lib/balance/standing-car.js";
import type { Car } from "../../../../lib/car/car.js";
import { demoCar } from "../../../../lib/car/demo-car.js";
import { applyChange, canApply } from "../../../../lib/change/apply.js";
import { behaviourOf } from "../../../../lib/change/behaviour.js";
import { LEAST_FELT_SHIFT } from "../../../../lib/day/debrief/feel.js";
import { type Complaint, diagnose } from "../../../../lib/day/diagnosis/diagnose.js";
import { exampleVenue } from "../../../../lib/day/example/example-venue.js";
import type { Report } from "../../../../lib/day/log/report.js";

vi.setConfig({ testTimeout: 60_000 }); // many cars, or many files, in each test

const pushesInTheMiddle: Report = {
  corner: "Long Left",
  phase: "middle",
  input: "steady",
  balance: 2,
  howOften: "every lap",
  confidence: "certain",
};
const looseOnBrakes: Report = {
  corner: "Dip",
  phase: "braking in",
  input: "braking",
  balance: -2,
  howOften: "every lap",
  confidence: "certain",
};

const turningIn: Report = {
  ...pushesInTheMiddle,
  phase: "turn-in",
  input: "releasing the brake",
};

/** The same car on tyres of which somebody has found out at which pressure they grip best. */
const tyresKnown: Car = {
  ...demoCar,
  front: { ...demoCar.front, tyre: { ...demoCar.front.tyre, bestPressure: 180e3 } },
  rear: { ...demoCar.rear, tyre: { ...demoCar.rear.tyre, bestPressure: 180e3 } },
};

const ask = (complaint: Partial<Complaint>) =>
  diagnose({ car: demoCar, venue: exampleVenue, reports: [pushesInTheMiddle], ...complaint });

describe("questions come first", () => {
  test("it understeers is asked about, and nothing is proposed", () => {
    const { asks, proposals, targets } = ask({ reports: [{ balance: 2 }] });
    expect(asks.map(({ field }) => field)).toEqual(["corner", "phase", "input"]);
    expect(targets).toEqual([]);
    expect(proposals).toEqual([]);
  });

  test("a report with a gap does not hold up one without", () => {
    const { asks, targets } = ask({ reports: [{ balance: 2 }, pushesInTheMiddle] });
    expect(asks.filter(({ needed }) => needed).every(({ reports }) => reports[0] === 0)).toBe(true);
    expect(targets.map(({ report }) => report)).toEqual([1]);
  });

  test("a corner that the venue does not have needs a speed", () => {
    const elsewhere = { ...pushesInTheMiddle, corner: "Behind the hill" };
    expect(ask({ reports: [elsewhere] }).asks[0]?.field).toBe("speedClass");
    expect(ask({ reports: [{ ...elsewhere, speedClass: "fast" }] }).proposals).not.toEqual([]);
  });

  test("power on while braking is asked about", () => {
    const odd: Report = { ...pushesInTheMiddle, phase: "power on", input: "braking" };
    expect(ask({ reports: [odd] }).asks[0]?.ask).toBe(
      "It was said of power on, while braking: which of the two was it?",
    );
  });

  test("two reports that say opposite things of one place are driven again, not averaged", () => {
    const { asks, targets } = ask({
      reports: [pushesInTheMiddle, { ...pushesInTheMiddle, balance: -1 }],
    });
    expect(asks[0]?.ask).toMatch(/^Reports 1 and 2 say opposite things of Long Left, middle/);
    expect(targets).toEqual([]);
  });

  test("when all is well nothing is changed", () => {
    const { proposals, summary } = ask({ reports: [{ ...pushesInTheMiddle, balance: 0 }] });
    expect(proposals).toEqual([]);
    expect(summary).toBe("Nobody asks for a change: leave the car as it is.");
  });
});

test("proposes nothing for a place where the car tips over before it slides, and says so", () => {
  const car = { ...demoCar, body: { ...demoCar.body, height: 1.1 } };
  const { proposals, summary, nearTipping } = ask({ car, reports: [turningIn] });
  expect(proposals).toEqual([]);
  expect(summary).toContain("tips over");
  expect(nearTipping.map(({ phase }) => phase)).toEqual(["turn-in"]);
});

describe("proposals", () => {
  test("move the reported place the way that was asked, enough to feel", () => {
    for (const { gain, phases } of ask({}).proposals) {
      expect(phases.middle).toBeLessThan(0);
      expect(gain).toBeGreaterThanOrEqual(LEAST_FELT_SHIFT);
    }
  });

  test("are each one change that this car can make inside its limits", () => {
    for (const { change } of ask({}).proposals) expect(canApply(demoCar, change)).toBe(true);
  });

  test("for a front that gives up in the middle begin with the bars: quick, one step, no side to put back", () => {
    const [first] = ask({}).proposals;
    expect(first?.change.lever).toBe("barPosition");
    expect(first?.putBack).toEqual([]);
  });

  test("for a rear that is loose on the brakes begin with the brakes, which move nothing else", () => {
    const [first] = ask({ reports: [looseOnBrakes] }).proposals;
    expect(first?.change.lever).toBe("brakeFrontShare");
    expect(first?.change.by).toBeGreaterThan(0);
    expect(first?.phases.middle).toBeCloseTo(0, 9);
  });

  test("do what the change table says", () => {
    const [first] = ask({}).proposals;
    expect(first).toBeDefined();
    const after = first
      ? behaviourOf(standingCar(applyChange(demoCar, first.change), demoCar), 27)
      : undefined;
    const before = behaviourOf(standingCar(demoCar), 27);
    const shift =
      (after?.phases.middle.understeerMargin ?? 0) - before.phases.middle.understeerMargin;
    expect(first?.phases.middle).toBeCloseTo(shift, 2); // found from a neighbour, and from nothing
  });

  test("say what to put back after a spring, and what else it moves", () => {
    const spring = ask({}).proposals.find(({ change }) => change.lever === "springRate");
    expect(spring?.putBack.every((turn) => /seat [+−]\d+\.\d turns$/.test(turn))).toBe(true);
    expect(spring?.putBack.length).toBeGreaterThan(0);
    expect(spring?.sideEffects.some((words) => words.startsWith("rear bounce"))).toBe(true);
  });

  test("rank neither pressure nor dampers where nobody knows what they do, and say why", () => {
    const { asks, proposals, notProposed } = ask({ pressureOff: ["rear"] });
    const why = (lever: string) => notProposed.find(({ place }) => place.lever === lever)?.why;
    const levers = proposals.map(({ change }) => change.lever);
    expect(levers).not.toContain("tyrePressure");
    expect(why("tyrePressure")).toContain("at which pressure this tyre grips best");
    expect(why("damperBump")).toContain("how the car arrives in a turn");
    expect(asks.map((one) => one.ask)).toEqual([
      expect.stringContaining("Which warm pressure do these tyres grip best at?"),
    ]);
  });

  test("put pressure last, and ask whether it was measured", () => {
    const { asks, proposals } = ask({ car: tyresKnown });
    const levers = proposals.map(({ change }) => change.lever);
    const first = levers.indexOf("tyrePressure");
    expect(first).toBeGreaterThan(0);
    expect(
      levers.slice(first).every((lever) => lever === "tyrePressure" || lever === "ballast"),
    ).toBe(true);
    expect(asks.at(-1)?.ask).toContain("hot pressures measured");
  });

  test("put pressure first at an end where it was measured and is off", () => {
    const { asks, proposals } = ask({ car: tyresKnown, pressureOff: ["rear"] });
    expect(proposals[0]?.change).toMatchObject({ lever: "tyrePressure", end: "rear" });
    expect(asks).toEqual([]);
  });

  test("do not repeat what was tried in vain, and say so", () => {
    const [first] = ask({}).proposals;
    const tried = first ? [{ change: first.change, outcome: "same" as const }] : [];
    const again = ask({ tried });
    expect(again.proposals.map(({ label }) => label)).not.toContain(first?.label);
    expect(again.notProposed.some(({ why }) => why === `${first?.label} was tried: same.`)).toBe(
      true,
    );
  });

  test("remember that the other way was worse", () => {
    const other = {
      change: { lever: "barPosition", end: "rear", by: -1 } as const,
      outcome: "worse" as const,
    };
    const bar = ask({ tried: [other] }).proposals.find(
      ({ change }) => change.lever === "barPosition" && "end" in change && change.end === "rear",
    );
    expect(bar?.reasons).toContain("The other way was tried and was worse.");
  });

  test("ask for less where less is wanted: a change may not go too far", () => {
    const alittle = { ...pushesInTheMiddle, balance: 1 };
    for (const { gain, phases } of ask({ reports: [alittle] }).proposals) {
      expect(gain).toBeGreaterThanOrEqual(LEAST_FELT_SHIFT);
      expect(phases.middle).toBeGreaterThan(-0.3); // by hand: one point, 0.2, and as much too far as is not felt
    }
  });

  test("weigh several reports: brakes help one, and harm the other in nothing", () => {
    const { proposals } = ask({
      reports: [looseOnBrakes, { ...pushesInTheMiddle, corner: "Dip" }],
    });
    expect(proposals[0]?.change.lever).toBe("brakeFrontShare");
  });
});

describe("why not the others", () => {
  test("every lever is either proposed or has a reason", () => {
    const { proposals, notProposed } = ask({});
    const named = new Set([
      ...proposals.map(({ change }) => `${change.lever} ${"end" in change ? change.end : "car"}`),
      ...notProposed.map(({ place }) => `${place.lever} ${place.end ?? "car"}`),
    ]);
    expect(named.size).toBe(9 * 2 + 2); // by hand: nine levers at both ends, brakes and ballast
    for (const { why } of notProposed) expect(why).toMatch(/\.$/);
  });

  test("brakes do nothing in the middle, and it is said where they act", () => {
    const brakes = ask({ leastFelt: 0.05 }).notProposed.find(
      ({ place }) => place.lever === "brakeFrontShare",
    );
    expect(brakes?.why).toContain("too little to feel; it acts in braking in.");
  });

  test("a car without adjusters is told so", () => {
    const { bar: _front, adjusters: _a, ...front } = demoCar.front;
    const { bar: _rear, adjusters: _b, ...rear } = demoCar.rear;
    const { adjusters: _c, ...rest } = demoCar;
    const fixed: Car = { ...rest, front, rear };
    const { proposals, notProposed, summary } = ask({ car: fixed });
    expect(proposals).toEqual([]);
    expect(new Set(notProposed.map(({ why }) => why))).toEqual(
      new Set(["This car cannot be adjusted there."]),
    );
    expect(summary).toMatch(/^No single change within reach/);
  });
});

test("labels follow the reader's units", () => {
  const us = diagnose({ car: tyresKnown, venue: exampleVenue, reports: [pushesInTheMiddle] }, "us");
  expect(us.proposals.some(({ label }) => label.includes("psi"))).toBe(true);
  const said = JSON.stringify(us);
  expect(said).toMatch(/\d\sg nearer to balance/);
  expect(said).not.toMatch(/m\/s²|N\/mm|kPa| mm\b/);
});
