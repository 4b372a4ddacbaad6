import {
  adjusterStepsIn,
  applyChange,
  asStepOfKind,
  baselineOf,
  type Car,
  carLenses,
  demoCar,
  effectOf,
  exampleLog,
  freeName,
  isTakenName,
  leversToChoose,
  type PlanStep,
  placeKey,
  possibleChanges,
  readEntry,
  seatsMatter,
  standing,
  withCornerMoved,
  withMinutes,
  withMoreSteps,
  withNote,
  withPlace,
} from "@rollbook/lib";
import { describe, expect, it, test } from "vitest";
import { standingCar } from "../../../../lib/balance/standing-car.js";

const bar = { lever: "barPosition", end: "front", by: 1 } as const;
const spring = { lever: "springRate", end: "front", by: 10e3 } as const;

describe("a step of the plan", () => {
  it("counts its change in steps of the adjuster", () => {
    expect(adjusterStepsIn(spring, demoCar)).toBe(2); // the demo car's springs come in steps of 5 N/mm
    expect(withMoreSteps({ kind: "change", change: spring }, 1, demoCar).change.by).toBe(15e3);
  });

  it("passes over no change at all on the way to the other direction", () => {
    const less = withMoreSteps({ kind: "change", change: bar }, -1, demoCar);
    expect(less.change.by).toBe(-1);
    expect(withMoreSteps(less, 1, demoCar).change.by).toBe(1);
  });

  it("keeps note and minutes when it becomes another kind of step", () => {
    const step: PlanStep = { kind: "baseline", note: "cold tyres", minutes: { drive: 12 } };
    const change = asStepOfKind(step, "change", demoCar);
    expect(change).toMatchObject({ kind: "change", note: "cold tyres", minutes: { drive: 12 } });
    expect(asStepOfKind(change, "return", demoCar)).toEqual({ ...step, kind: "return" });
  });

  it("loses an empty note, and changes one stage's minutes alone", () => {
    expect(withNote({ kind: "return", note: "x" }, "")).toEqual({ kind: "return" });
    expect(withMinutes({ kind: "return", minutes: { teach: 1 } }, "drive", 9)).toEqual({
      kind: "return",
      minutes: { teach: 1, drive: 9 },
    });
  });

  it("offers each lever of the car once, and the chosen one though the car has it not", () => {
    const keys = leversToChoose(demoCar, bar).map(placeKey);
    expect(new Set(keys).size).toBe(keys.length);
    const { adjusters: _, ...bare } = demoCar;
    expect(leversToChoose(bare, { lever: "ballast", by: 5 }).map(placeKey)).toContain("ballast");
  });
});

test("a run goes to the circle and back to the corners, whatever else becomes of it", () => {
  const there = withPlace({ kind: "baseline", note: "cool tyres" }, "circle");
  expect(there).toEqual({ kind: "baseline", note: "cool tyres", on: "circle" });
  expect(asStepOfKind(there, "return", demoCar)).toEqual({ ...there, kind: "return" });
  expect(withPlace(there, undefined)).toEqual({ kind: "baseline", note: "cool tyres" });
  const [event] = standing(exampleLog, "event");
  const planned = { ...event, steps: [there] };
  expect(readEntry(planned).entry).toEqual(planned);
  expect(readEntry({ ...event, steps: [{ ...there, on: "moon" }] }).faults).toEqual([
    'steps.0.on is "moon" but must be one of: circle.',
  ]);
});

describe("turning the seats back", () => {
  const mass = { mass: 60, behindFrontAxle: 1.2, leftOfCentre: 0, height: 0.5 };
  const range = { min: 0, max: 200, step: 20 };
  const laden: Car = { ...demoCar, passenger: mass, fuel: mass, ballast: { ...mass, mass: 40 } };
  const car: Car = {
    ...laden,
    adjusters: {
      ...demoCar.adjusters,
      driver: range,
      passenger: range,
      fuel: range,
      ballast: range,
    },
  };

  it("is offered for exactly those levers that move how the car stands", () => {
    const stands = baselineOf(standingCar(car));
    const moves = new Map<string, boolean>();
    for (const one of possibleChanges(car)) {
      if (one.lever === "seatTurns") continue;
      const moved = [1, 4].flatMap((count) => {
        try {
          const effect = effectOf({ ...one, by: one.by * count }, stands);
          return [Math.max(...Object.values(effect.moved.figures.rideHeight).map(Math.abs))];
        } catch {
          return []; // beyond the adjuster
        }
      });
      const is = moves.get(one.lever) ?? false;
      moves.set(one.lever, is || moved.some((height) => height > 0.5e-3)); // m
    }
    expect([...moves.keys()]).toEqual(expect.arrayContaining(Object.keys(carLenses)));
    for (const [lever, moved] of moves)
      expect(seatsMatter({ lever } as never, car), lever).toBe(moved);
  });

  it("is not offered on a car whose seats are fixed at one end", () => {
    const { seatTurns: _, ...others } = demoCar.rear.adjusters ?? {};
    const fixed = { ...demoCar, rear: { ...demoCar.rear, adjusters: others } };
    expect(seatsMatter(spring, demoCar)).toBe(true);
    expect(seatsMatter(spring, fixed)).toBe(false);
    expect(seatsMatter(bar, demoCar)).toBe(false);
    expect(applyChange(fixed, spring).front.spring.rate).toBe(70e3);
  });
});

describe("the list of corners", () => {
  const corner = (name: string) => ({ name, direction: "left", radius: 30, speed: 15 }) as const;
  const venue = { name: "A field", corners: [corner("Corner 1"), corner("Corner 3")] };
  const three = { ...venue, corners: [...venue.corners, corner("Corner 4")] };

  it("finds a name that is free", () => {
    expect(freeName(venue, (number) => `Corner ${number}`)).toBe("Corner 4");
    expect(isTakenName(venue, 0, "Corner 3")).toBe(true);
    expect(isTakenName(venue, 1, "Corner 3")).toBe(false);
  });

  it("moves a corner by one place, and leaves it at the ends", () => {
    const names = (from: number, by: -1 | 1) =>
      withCornerMoved(three, from, by).corners.map(({ name }) => name);
    expect(names(0, 1)).toEqual(["Corner 3", "Corner 1", "Corner 4"]);
    expect(names(2, -1)).toEqual(["Corner 1", "Corner 4", "Corner 3"]);
    expect(names(2, 1)).toEqual(["Corner 1", "Corner 3", "Corner 4"]);
    expect(names(0, -1)).toEqual(["Corner 1", "Corner 3", "Corner 4"]);
  });
});
