import { describe, expect, it } from "vitest";
import { lapsText, readLaps } from "../../../../lib/day/log/lap-times.js";

describe("lap times", () => {
  it("come in seconds or in minutes and seconds, with point or comma", () => {
    expect(readLaps("81.4 1:21,9  79;80.25")).toEqual({ laps: [81.4, 81.9, 79, 80.25] });
    expect(readLaps("")).toEqual({ laps: [] });
    expect(lapsText([81.4, 79])).toBe("81.4 79.0");
  });

  it("name the part that is none", () => {
    expect(readLaps("81.4 fast")).toEqual({ fault: "fast" });
    expect(readLaps("0.2")).toEqual({ fault: "0.2" });
  });
});
