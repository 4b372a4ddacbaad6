import { describe, expect, test } from "vitest";
import { cornersOfLap } from "../../../../lib/measure/ride/laps.js";
import type { RideCorner } from "../../../../lib/measure/ride/ride-facts.js";
import { sameDriving } from "../../../../lib/measure/ride/same-driving.js";
import { normalFrom, randomFrom } from "../../../../lib/random.js";

/** Five corners of a lap: angle turned to the left above 0, rad, and speed, m/s. */
const lap = [
  [1.6, 15],
  [0.9, 22],
  [-2.4, 12],
  [1.5, 18],
  [4.2, 14],
] as const;

/** Laps of a driver who varies by 2 % of speed, faster by a share in some corners. */
function driven(seed: number, laps: number, faster: (corner: number) => number): RideCorner[] {
  const random = randomFrom(seed);
  const varied = (value: number, by: number) => value * (1 + by * normalFrom(random));
  return Array.from({ length: laps }, () => lap)
    .flat()
    .map(([angle, speed], i) => {
      const entrySpeed = varied(speed * (1 + faster(i % lap.length)), 0.02);
      const peak = varied(6, 0.03);
      return {
        ...{ entrySpeed, peak, begins: 10 * i, ends: 10 * i + varied(3, 0.02) },
        way: angle > 0 ? "left" : "right",
        turned: varied(Math.abs(angle), 0.02),
        hardestAt: 0.5 + 0.05 * normalFrom(random),
        radius: varied(30, 0.04),
        rollRate: 0.1,
        roll: {},
      };
    });
}

const asEver = () => 0;

describe("whether it was driven the same way", () => {
  test("a lap has as many corners as come before the first comes again", () => {
    expect(cornersOfLap(driven(1, 4, asEver))).toBe(5);
    expect(cornersOfLap(driven(1, 1, asEver))).toBe(5);
  });

  test("of 400 pairs of runs driven alike, no more than 7 in 100 are told to differ", () => {
    const differ = Array.from({ length: 400 }, (_, k) => {
      const { same, variation } = sameDriving(
        driven(2 * k, 4, asEver),
        driven(2 * k + 1, 4, asEver),
      );
      expect(variation).toBe("laps");
      return same ? 0 : 1;
    });
    const count = differ.reduce<number>((sum, one) => sum + one, 0);
    expect(count).toBeLessThan(28); // 20 meant, 28 being two deviations more
  });

  test("4 % more entry speed everywhere is told nine times in ten, with its size", () => {
    const told = Array.from({ length: 100 }, (_, k) =>
      sameDriving(
        driven(2 * k, 4, asEver),
        driven(2 * k + 1, 4, () => 0.04),
      ),
    );
    expect(told.filter(({ same }) => !same).length).toBeGreaterThan(90);
    const by = told.map(
      ({ habits }) => habits.find(({ habit }) => habit === "entrySpeed")?.by ?? 0,
    );
    expect(by.reduce((sum, one) => sum + one, 0) / 100).toBeCloseTo(Math.log(1.04), 2);
  });

  test("10 % more in one corner is told, and which corner it was", () => {
    const { same, corners } = sameDriving(
      driven(1, 4, asEver),
      driven(2, 4, (corner) => (corner === 2 ? 0.1 : 0)),
    );
    expect(same).toBe(false);
    expect(corners[2]?.differs).toContain("entrySpeed");
    expect(corners[2]?.first.way).toBe("right");
  });

  test("a second run that begins at another corner is laid on the first", () => {
    const { same, corners } = sameDriving(driven(1, 4, asEver), driven(2, 4, asEver).slice(2));
    expect(same).toBe(true);
    for (const { first, second } of corners) expect(second.way).toBe(first.way);
  });

  test("without laps it is held against what drivers usually do", () => {
    const { variation } = sameDriving(driven(1, 1, asEver), driven(2, 1, asEver));
    expect(variation).toBe("usual");
  });

  test("another place is refused, and so is a ride without corners", () => {
    const elsewhere = driven(2, 3, asEver).map((corner) => ({
      ...corner,
      way: "left" as const,
      turned: 0.5,
    }));
    expect(() => sameDriving(driven(1, 3, asEver), elsewhere)).toThrow(/not the same corners/);
    expect(() => sameDriving([], driven(1, 3, asEver))).toThrow(/not the same corners/);
  });
});
