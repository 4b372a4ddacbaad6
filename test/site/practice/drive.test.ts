import {
  channelReach,
  cornerMomentAt,
  cornerParts,
  distanceAfter,
  driveKnown,
  drivenLength,
  driveOther,
  practiceCorners,
  practiceFrom,
} from "@rollbook/lib";
import { describe, expect, test } from "vitest";
import { cornerOf } from "../../../site/say/practice/puzzle.js";

const practice = practiceFrom(3, cornerOf(practiceCorners.practice));
const known = driveKnown(practice);

describe("a place along a driven corner", () => {
  test("at a station is that station, and between two half of both", () => {
    const [a, b] = [known.moments[30], known.moments[31]];
    if (!a || !b) throw new Error("too short");
    expect(cornerMomentAt(known, a.distance)).toEqual(a);
    const half = cornerMomentAt(known, (a.distance + b.distance) / 2);
    expect(half.speed).toBeCloseTo((a.speed + b.speed) / 2, 9);
    expect(half.load.rear.left).toBeCloseTo((a.load.rear.left + b.load.rear.left) / 2, 6);
  });

  test("before the start and after the end is the start and the end", () => {
    expect(cornerMomentAt(known, 0)).toEqual(known.moments[0]);
    expect(cornerMomentAt(known, 1e6).distance).toBeCloseTo(drivenLength(known), 6);
  });

  test("is reached at its own time", () => {
    const { time, distance } = cornerMomentAt(known, 80);
    expect(distanceAfter(known, time)).toBeCloseTo(distance, 6);
    expect(distanceAfter(known, 0)).toBe(0);
    expect(distanceAfter(known, 999)).toBeCloseTo(drivenLength(known), 9);
  });

  test("belongs to one of four parts that follow each other without a gap", () => {
    const parts = cornerParts(known);
    expect(parts.map(({ phase }) => phase)).toEqual([
      "braking in",
      "turn-in",
      "middle",
      "power on",
    ]);
    parts.slice(1).forEach(({ from }, i) => {
      expect(from).toBe(parts[i]?.to);
    });
    expect(parts.at(-1)?.to).toBe(drivenLength(known));
  });
});

test("the known car goes no faster than asked, and the changed one no faster than it", () => {
  const slow = { ...practice, corner: { ...practice.corner, speed: 15 } };
  expect(driveKnown(slow).speed).toBe(15);
  expect(known.speed).toBeLessThanOrEqual(practice.corner.speed);
  expect(driveOther(practice.changed, practice, known).speed).toBeLessThanOrEqual(known.speed);
});

test("an axis made for the known car has room for the changed one", () => {
  const changed = driveOther(practice.changed, practice, known);
  for (const channel of ["speed", "steeringWheel", "sideSlip", "balance"] as const) {
    const [least, most] = channelReach(known, channel);
    for (const moment of changed.moments) {
      expect(moment[channel]).toBeGreaterThan(least);
      expect(moment[channel]).toBeLessThan(most);
    }
  }
});
