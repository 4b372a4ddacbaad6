import { describe, expect, it } from "vitest";
import { words } from "../../../site/pages/workshop/words.js";

describe("a length of time in hours", () => {
  it("never goes without its units", () => {
    const said = [0, 45, 60, 262, 300, 119.7].map((minutes) =>
      words.hours(minutes).replaceAll("\u00a0", " "),
    );
    // by hand: 262 = 4·60 + 22
    expect(said).toEqual(["0 min", "45 min", "1 h", "4 h 22 min", "5 h", "2 h"]);
  });
});
