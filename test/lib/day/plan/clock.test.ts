import { describe, expect, it } from "vitest";
import {
  asClock,
  atRun,
  demoCar,
  moved,
  paused,
  readClock,
  sheetOf,
  shifted,
  stages,
  started,
  stoppedClock,
} from "../../../../lib/index.js";
import { clockText } from "../../../../site/say/clock.js";

const MINUTE = 60e3;
const plan = {
  car: demoCar,
  venue: {
    name: "A field",
    corners: [{ name: "One", direction: "left", radius: 50, speed: 20 }],
  },
  minutes: 120,
  drivers: ["Ada", "Bela", "Chidi"],
  cars: 1,
  steps: [{ kind: "baseline" }, { kind: "no change" }],
} as const;
const [first, second] = sheetOf(plan);
if (first === undefined || second === undefined) throw new Error("the plan has two runs");

describe("the clock of a day", () => {
  it("counts the minutes of a stage down, and below nothing", () => {
    const running = started(stoppedClock, 1000);
    expect(readClock(running, first, 1000).left).toBe(4);
    expect(readClock(running, first, 1000 + 5 * MINUTE).left).toBe(-1);
  });

  it("gives a drive its minutes for each round", () => {
    const drive = { ...stoppedClock, stage: stages.indexOf("drive") };
    expect(readClock(drive, first, 0).planned).toBe(24);
  });

  it("counts a drive round by round, and the last one below nothing", () => {
    const drive = started({ ...stoppedClock, stage: stages.indexOf("drive") }, 0);
    const at = (minutes: number) => readClock(drive, first, minutes * MINUTE).round;
    // by hand: three rounds of 8 minutes
    expect(at(0)).toEqual({ round: 1, of: 3, left: 8 });
    expect(at(7.5)).toEqual({ round: 1, of: 3, left: 0.5 });
    expect(at(8)).toEqual({ round: 2, of: 3, left: 8 });
    expect(at(23)).toEqual({ round: 3, of: 3, left: 1 });
    expect(at(25)).toEqual({ round: 3, of: 3, left: -1 });
    expect(readClock(drive, { ...first, rounds: 1 }, 0).round).toBeUndefined();
    expect(readClock(started(stoppedClock, 0), first, 0).round).toBeUndefined();
    const none = { ...first, minutes: { ...first.minutes, drive: 0 } };
    expect(readClock(drive, none, MINUTE).round).toEqual({ round: 3, of: 3, left: -1 });
  });

  it("counts on where the device's clock was set by an hour, forward or back", () => {
    const running = started(stoppedClock, 1000);
    for (const by of [60 * MINUTE, -60 * MINUTE]) {
      const now = 1000 + MINUTE + by;
      const { left, behind } = readClock(shifted(running, by), first, now);
      expect([left, behind]).toEqual([3, 0]);
    }
    expect(shifted(stoppedClock, 5)).toEqual(stoppedClock);
  });

  it("stands still while it is held, and goes on from there", () => {
    const held = paused(started(stoppedClock, 0), MINUTE);
    expect(readClock(held, first, 9 * MINUTE).left).toBe(3);
    expect(readClock(started(held, 9 * MINUTE), first, 10 * MINUTE).left).toBe(2);
  });

  it("is on plan as long as every stage takes its minutes, and behind by what it takes longer", () => {
    const running = started(stoppedClock, 0);
    expect(readClock(running, first, 3 * MINUTE).behind).toBeCloseTo(0, 12);
    const late = moved(running, 1, 2, 6 * MINUTE);
    expect(readClock(late, first, 6 * MINUTE).behind).toBeCloseTo(2, 12);
    const early = moved(running, 1, 2, MINUTE);
    expect(readClock(early, first, MINUTE).behind).toBeCloseTo(-3, 12);
  });

  it("begins on plan wherever in the plan a day begins", () => {
    const clock = started(atRun(stoppedClock, 2), 0, second.startsAt);
    expect(readClock(clock, second, 0).behind).toBeCloseTo(0, 12);
  });

  it("goes from the last stage of a run to the first of the next, and nowhere beyond the day", () => {
    const last = { ...stoppedClock, stage: stages.length - 1 };
    expect(moved(last, 1, 2, 0)).toMatchObject({ run: 2, stage: 0 });
    expect(moved(stoppedClock, -1, 2, 0)).toBe(stoppedClock);
    const end = { run: 2, stage: stages.length - 1, spent: 0 };
    expect(moved(end, 1, 2, 0)).toBe(end);
  });

  it("shows minutes and seconds", () => {
    expect([4, 3.5, 0.051, 0, -0.5].map(clockText)).toEqual([
      "4:00",
      "3:30",
      "0:04",
      "0:00",
      "−0:30",
    ]);
  });

  it("reads back what was kept, and nothing else", () => {
    const running = started(stoppedClock, 5);
    expect(asClock(JSON.parse(JSON.stringify(running)))).toEqual(running);
    for (const wrong of [
      {},
      { run: 0, stage: 0, spent: 0 },
      { run: 1, stage: 9, spent: 0 },
      { run: 1, stage: 0, spent: -1 },
    ])
      expect(asClock(wrong)).toBeUndefined();
  });
});
