import { describe, expect, it } from "vitest";
import { fold } from "../../../site/pages/search/fold.js";

describe("folding words for the search", () => {
  it("reads American and British spelling alike", () => {
    for (const [american, british] of [
      ["tire pressure", "tyre pressure"],
      ["roll center", "roll centre"],
      ["stabilizer", "stabiliser"],
      ["optimized", "optimised"],
      ["curb", "kerb"],
      ["caster", "castor"],
      ["meters", "metres"],
    ]) {
      expect(fold(american ?? "")).toEqual(fold(british ?? ""));
    }
  });

  it("takes one and many for one word, but leaves words that end in s by nature", () => {
    expect(fold("Tyres, tyre’s, TYRE")).toEqual(["tyre", "tyre", "tyre"]);
    expect(fold("mass gas bus stiffness radius")).toEqual([
      "mass",
      "gas",
      "bus",
      "stiffness",
      "radius",
    ]);
  });

  it("drops accents and marks, keeps numbers", () => {
    expect(fold("Émile’s 12 °, anti-roll")).toEqual(["emile", "12", "anti", "roll"]);
    expect(fold("  …  ")).toEqual([]);
  });
});
