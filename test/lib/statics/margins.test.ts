import { describe, expect, it } from "vitest";
import { standingCar } from "../../../lib/balance/standing-car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { marginsOf } from "../../../lib/statics/margins.js";
import { readingAgainst } from "../../../lib/statics/reading.js";

describe("margins to the class limits", () => {
  it("names each limit at each wheel and how far inside it is", () => {
    const margins = marginsOf(standingCar(demoCar));
    const height = margins.find((m) => m.parameter === "rideHeight" && m.where === "front left");
    expect(height?.margin).toBeCloseTo(0.02, 9); // 130 − 110 mm
    expect(margins.filter((m) => m.parameter === "tyrePressure")).toHaveLength(8);
  });

  it("turns negative outside the limit", () => {
    const limits = { greatestPressure: 190e3 };
    const margins = marginsOf(standingCar({ ...demoCar, limits }));
    expect(margins).toHaveLength(4);
    expect(margins[0]?.margin).toBeCloseTo(-10e3, 6);
  });

  it("is zero, not broken, for a car that stands on the limit", () => {
    const limits = { leastCamber: (-1.5 * Math.PI) / 180 }; // the front camber of the demo car
    const front = marginsOf(standingCar({ ...demoCar, limits })).filter(({ where }) =>
      where.startsWith("front"),
    );
    expect(front.map(({ margin }) => margin)).toEqual([0, 0]); // by rounding: −3.5e-18 at the right
    const nearly = { leastCamber: limits.leastCamber + 2e-9 };
    expect(marginsOf(standingCar({ ...demoCar, limits: nearly }))[0]?.margin).toBeLessThan(0);
  });

  it("lists nothing for a car without a class", () => {
    const { limits: _, ...free } = demoCar;
    expect(marginsOf(standingCar(free))).toEqual([]);
  });
});

describe("a rounded display", () => {
  it("hides half a step: 100 mm may be 99.5 mm", () => {
    const reading = readingAgainst(0.1, 0.001, 0.1, "least");
    expect(reading.least).toBeCloseTo(0.0995, 12);
    expect(reading.verdict).toBe("cannot tell");
  });

  it("is sure when the whole interval lies on one side", () => {
    expect(readingAgainst(101, 1, 100, "least").verdict).toBe("inside");
    expect(readingAgainst(99, 1, 100, "least").verdict).toBe("outside");
    expect(readingAgainst(99, 1, 100, "greatest").verdict).toBe("inside");
    expect(readingAgainst(100, 1, 100, "greatest").verdict).toBe("cannot tell");
  });

  it("refuses a display without a step", () => {
    expect(() => readingAgainst(100, 0, 100, "least")).toThrow(/step of the display is 0/);
  });
});
