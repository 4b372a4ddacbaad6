import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  applyChange,
  carPlansOf,
  comparedIn,
  crewInRun,
  type DayPlan,
  demoCar,
  differenceOfSetUps,
  driverRuns,
  endOfRows,
  exampleVenue,
  type HappeningEntry,
  inOtherCar,
  isEnough,
  type LogEntry,
  mergeLogs,
  onOtherRoad,
  type PlanStep,
  proposeDay,
  remediesFor,
  reportsOf,
  roadInRun,
  rotation,
  roundsInRun,
  shareStillAs,
  sheetOf,
  sheetsOf,
  standing,
  stepsAsMade,
  triedFrom,
} from "../../../../lib/index.js";

const stiffer = { lever: "barPosition", end: "front", by: 1 } as const;
const softer = { lever: "barPosition", end: "front", by: -1 } as const;
const rear = { lever: "barPosition", end: "rear", by: 1 } as const;
const steps: readonly PlanStep[] = [
  { kind: "baseline" },
  { kind: "change", change: stiffer },
  { kind: "return" },
  { kind: "change", change: rear },
];
const [corner] = exampleVenue.corners;
if (corner === undefined) throw new Error("the example has a corner");
const cornerName = corner.name;
const venue = { ...exampleVenue, corners: [corner] };
const plan = { car: demoCar, venue, minutes: 240, steps };

const at = (minute: number) =>
  `2031-05-10T${10 + Math.floor(minute / 60)}:${String(minute % 60).padStart(2, "0")}:00.000Z`;
let number = 0;
const head = (minute = 0) => ({ id: `desk-${++number}`, at: at(minute), author: "desk" });
const happened = (
  told: Pick<HappeningEntry, "what" | "runNumber"> & Partial<HappeningEntry>,
): HappeningEntry => ({ kind: "happening", day: "desk-2", ...head(), ...told });

describe("cards by the car as it stands", () => {
  it("after a change that was skipped there is nothing to take back", () => {
    const skipped = stepsAsMade(steps, [happened({ what: "change skipped", runNumber: 2 })], 1);
    const toDo = sheetOf({ ...plan, steps: skipped }).map((row) => row.toDo);
    expect(toDo).toEqual([[], [], [], [rear]]);
  });

  it("after another change than the planned one that one is taken back", () => {
    const other = happened({ what: "other change", runNumber: 2, change: softer });
    const rows = sheetOf({ ...plan, steps: stepsAsMade(steps, [other], 1) });
    expect(rows.map(({ toDo }) => toDo)).toEqual([[], [softer], [stiffer], [rear]]);
  });

  it("what happened to another car, or in another run, changes nothing", () => {
    const elsewhere = [
      happened({ what: "change skipped", runNumber: 2, carNumber: 2 }),
      happened({ what: "change skipped", runNumber: 9 }),
    ];
    expect(stepsAsMade(steps, elsewhere, 1)).toEqual(steps);
  });

  it("start from what was filed last, whatever the plan says of it", () => {
    const rows = sheetOf({ ...plan, filed: [demoCar, applyChange(demoCar, softer)] });
    expect(rows[2]?.stood).toEqual(applyChange(demoCar, softer));
    expect(rows[2]?.toDo).toEqual([stiffer]); // back from there
  });

  it("hands always do what differs from the car as it stands (8 days)", () => {
    const filed = fc.array(fc.constantFrom(undefined, stiffer, softer, rear), { maxLength: 4 });
    fc.assert(
      fc.property(filed, (changes) => {
        const cars = changes.map((one) => one && applyChange(demoCar, one));
        const rows = sheetOf({ ...plan, filed: cars });
        rows.forEach((row, i) => {
          const stood = cars[i - 1] ?? rows[i - 1]?.car ?? demoCar;
          expect(row.toDo).toEqual(differenceOfSetUps(stood, row.car).changes);
        });
      }),
      { numRuns: 8 },
    );
  });
});

describe("weather", () => {
  const rain = (runNumber: number, stage: HappeningEntry["stage"]) =>
    happened({ what: "weather", runNumber, stage: stage ?? "teach", conditions: { road: "wet" } });

  it("before a drive is of that run, after it of the next, and in the drive of both", () => {
    const roads = (stage: HappeningEntry["stage"]) =>
      [1, 2, 3].map((run) => roadInRun([rain(2, stage)], run));
    expect(roads("change")).toEqual(["dry", "wet", "wet"]);
    expect(roads("debrief")).toEqual(["dry", "dry", "wet"]);
    expect(roads("drive")).toEqual(["dry", "both", "wet"]);
  });

  it("is over where it is dry again", () => {
    const dry = happened({ what: "weather", runNumber: 3, conditions: { road: "dry" } });
    expect([1, 2, 3].map((run) => roadInRun([rain(1, "teach"), dry], run))).toEqual([
      "wet",
      "wet",
      "dry",
    ]);
  });
});

describe("who drives", () => {
  const day = { drivers: ["Ada", "Bela", "Chidi", "Dana"], cars: 2 };

  it("stays in the cars when somebody leaves or joins, from that run on", () => {
    const all = [
      happened({ what: "driver left", runNumber: 2, driver: "ada" }),
      happened({ what: "driver joined", runNumber: 3, driver: "Emil" }),
    ];
    expect(crewInRun(day, all, 1)).toHaveLength(4);
    expect(crewInRun(day, all, 2)).toEqual([
      { driver: "Bela", car: 2 },
      { driver: "Chidi", car: 1 },
      { driver: "Dana", car: 2 },
    ]);
    expect(crewInRun(day, all, 3)).toContainEqual({ driver: "Emil", car: 1 });
    expect(roundsInRun(day, all, 1)).toEqual(rotation(day.drivers, 2, 1));
  });

  it("two who swap trade their places in that run alone", () => {
    const swap = happened({ what: "drivers swapped", runNumber: 2, driver: "Ada", other: "Bela" });
    const cars = (run: number) =>
      roundsInRun(day, [swap], run)
        .flatMap(({ stints }) => stints)
        .find(({ driver }) => driver === "Ada")?.car;
    expect([1, 2, 3].map(cars)).toEqual([1, 2, 1]);
  });

  it("in a run that was begun it is as filed, whatever comes after", () => {
    const filed = day.drivers.map((driver, i) => ({
      ...{ ...head(), kind: "run" as const, setUp: "desk-1", runNumber: 1 },
      ...{ driver, carNumber: (i % 2) + 1, round: Math.floor(i / 2) + 1 },
    }));
    const later = { ...day, drivers: ["Zoe", ...day.drivers] };
    const names = roundsInRun(later, [], 1, filed).map(({ stints }) => stints[0]?.driver);
    expect(names).toEqual(["Ada", "Chidi"]);
    const joined = happened({ what: "driver joined", runNumber: 1, driver: "Emil" });
    expect(roundsInRun(later, [joined], 1, filed)[2]?.stints).toEqual([{ car: 1, driver: "Emil" }]);
  });
});

/** A day of two different cars on which four drivers reported twice; the second run of car 1 is changed. */
function twoCars(...more: LogEntry[]) {
  const finch = { ...demoCar, name: "Finch" };
  const event = {
    ...{ kind: "event" as const, id: "desk-902", at: at(0), author: "desk", name: "Two cars" },
    ...{ venue, minutes: 240, drivers: ["Ada", "Bela", "Chidi", "Dana"], cars: 2, steps },
    setUp: "desk-901",
    others: [{ carNumber: 2, setUp: "desk-903", steps: [{ kind: "baseline" as const }] }],
  };
  const setUps: LogEntry[] = [
    { kind: "set-up", id: "desk-901", at: at(0), author: "desk", car: demoCar },
    { kind: "set-up", id: "desk-903", at: at(0), author: "desk", car: finch },
    {
      ...{ kind: "set-up", id: "desk-904", at: at(30), author: "desk", follows: "desk-901" },
      car: applyChange(demoCar, stiffer),
    },
  ];
  const runs = event.drivers.flatMap((driver, i) =>
    [1, 2].flatMap((run): LogEntry[] => {
      const car = (i % 2) + 1;
      const setUp = car === 2 ? "desk-903" : run === 1 ? "desk-901" : "desk-904";
      const id = `phone${i}-${run}`;
      const head = { at: at(30 * run), author: driver };
      const report = { corner: cornerName, phase: "middle", balance: run } as const;
      return [
        { ...head, kind: "run", id, setUp, driver, runNumber: run, carNumber: car, round: 1 },
        { ...head, kind: "report", id: `${id}0`, run: id, report },
      ];
    }),
  );
  return { log: mergeLogs({ entries: [event, ...setUps, ...runs, ...more] }), event };
}

describe("two different cars", () => {
  it("are two sheets; each stage takes as long as the car that needs longest", () => {
    const finch = { carNumber: 2, car: demoCar, steps: [{ kind: "baseline" as const }] };
    const day: DayPlan = {
      ...plan,
      usual: { change: 6 },
      others: [{ ...finch, changeMinutes: 12 }],
    };
    const [one, two] = sheetsOf(carPlansOf(day));
    expect([one?.rows.length, two?.rows.length]).toEqual([4, 4]);
    expect(two?.rows[3]?.toDo).toEqual([]);
    expect(one?.rows.map(({ minutes }) => minutes.change)).toEqual([0, 6, 6, 6]);
    expect(two?.rows.map(({ startsAt }) => startsAt)).toEqual(
      one?.rows.map(({ startsAt }) => startsAt),
    );
  });

  it("are two groups: reports and comparisons are of one car", () => {
    const { log, event } = twoCars();
    expect(reportsOf(log, event, 2, { car: 1 })).toHaveLength(2);
    expect(comparedIn(log, event, 2, 1).map(({ driver }) => driver)).toEqual(["Ada", "Chidi"]);
    expect(comparedIn(log, event, 2, 2).every(({ cells }) => cells[0]?.predicted === 0)).toBe(true);
    expect(triedFrom(log, event, 1, 1)).toEqual([]); // nobody said better or worse
  });

  it("a driver who changes cars is not compared with the other car", () => {
    const { log, event } = twoCars(
      {
        ...{ kind: "run", id: "desk-950", at: at(90), author: "desk", setUp: "desk-903" },
        ...{ driver: "Ada", runNumber: 3, carNumber: 2, round: 1 },
      },
      {
        ...{ kind: "report", id: "desk-951", at: at(95), author: "Ada", run: "desk-950" },
        report: { corner: cornerName, phase: "middle", balance: 3 },
      },
    );
    expect(comparedIn(log, event, 3)).toEqual([]);
    expect(inOtherCar(log, event, 3, 2)).toEqual(["Ada"]);
  });

  it("wet against dry is not compared, and said of whom", () => {
    const rain = happened({ what: "weather", runNumber: 2, conditions: { road: "wet" } });
    const { log, event } = twoCars({ ...rain, day: "desk-902" });
    expect(comparedIn(log, event, 2)).toEqual([]);
    expect(onOtherRoad(log, event, 2, 1)).toEqual(["Ada", "Chidi"]);
  });

  it("a run that does not count is neither compared nor compared with", () => {
    const out = happened({ what: "run does not count", runNumber: 1 });
    const { log, event } = twoCars({ ...out, day: "desk-902" });
    expect(comparedIn(log, event, 2)).toEqual([]);
    expect(driverRuns(log, event).filter(({ leftOut }) => leftOut)).toHaveLength(4);
  });

  it("one driver's report on one place is one: the later stands, both are kept", () => {
    const { log, event } = twoCars({
      ...{ kind: "report", id: "desk-960", at: at(99), author: "Ada", run: "phone0-2" },
      report: { corner: ` ${cornerName.toUpperCase()}`, phase: "middle", balance: -1 },
    });
    expect(reportsOf(log, event, 2, { driver: "Ada" }).map(({ balance }) => balance)).toEqual([-1]);
    expect(standing(log, "report")).toHaveLength(9);
  });
});

describe("a day that is late", () => {
  const day = { ...plan, minutes: 160, drivers: ["Ada", "Bela"], cars: 1 };
  const rows = sheetOf(day);
  // by hand: four runs of 4 + 5 + 2·8 + 2 + 5 + 1 = 33 min, three of them with 4 min of changes
  it("has three whole remedies with their new ends, and the run at hand stays", () => {
    expect(endOfRows(rows)).toBe(144);
    const late = remediesFor(day, rows, { run: 2, behind: 20 });
    expect(late.map(({ remedy, ends }) => [remedy, ends])).toEqual([
      ["drop the last runs", 127],
      ["shorter stints", 160],
      ["reports only", 146],
    ]);
    for (const { day: changed, ends, inTime } of late) {
      expect(inTime).toBe(true);
      expect(changed.steps.slice(0, 2)).toEqual(steps.slice(0, 2));
      const after = sheetOf({ ...day, steps: changed.steps });
      expect(endOfRows(after) + 20).toBe(ends);
    }
  });

  it("in its last run has none", () => {
    expect(remediesFor(day, rows, { run: 4, behind: 60 })).toEqual([]);
  });
});

describe("a proposal in little time", () => {
  const eight = Array.from({ length: 8 }, (_, i) => `Driver ${i + 1}`);

  it("says which assumption forbids three changes and a return, and with what they fit", () => {
    const day = { ...plan, minutes: 180, drivers: eight, cars: 2, steps: [] };
    const { day: found, forbids } = proposeDay(day);
    expect(isEnough(found.steps)).toBe(false);
    expect(forbids.map(({ assumption }) => assumption)).toEqual(["stint and talk"]);
    for (const { usual } of forbids) {
      const again = proposeDay({ ...day, usual });
      expect(isEnough(again.day.steps)).toBe(true);
      expect(again.forbids).toEqual([]);
      expect(endOfRows(sheetOf(again.day))).toBeLessThanOrEqual(180);
    }
  });
});

it("a car says how much of it is still as in the one that it was copied from", () => {
  expect(shareStillAs({ ...demoCar, name: "Mine" }, demoCar)).toBe(1);
  const other = { ...demoCar, wheelbase: demoCar.wheelbase + 0.1 };
  expect(shareStillAs(other, demoCar)).toBeLessThan(1);
  expect(shareStillAs(other, demoCar)).toBeGreaterThan(0.9);
});
