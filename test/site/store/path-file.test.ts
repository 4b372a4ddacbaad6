import { describe, expect, it } from "vitest";
import {
  mergedPlace,
  type PlaceDone,
  pathFromFile,
  pathToFile,
} from "../../../site/store/path-file.js";

const [monday, tuesday] = [
  { day: 20000, isRight: false },
  { day: 20001, isRight: true },
];
const place: PlaceDone = {
  ...{ chapter: "01-load-transfer", id: "stiffer-bars" },
  filed: { choice: 1, confidence: "a guess", reason: "it leans less" },
  seen: { looked: [0, 2], saw: "The sum stays.", times: [tuesday] },
};
const exercise: PlaceDone = {
  ...{ chapter: "01-load-transfer", id: "ex-harder" },
  answered: { ask: "And harder?", times: [monday] },
};

describe("a path as a file", () => {
  it("comes back as it went", () => {
    expect(pathFromFile(pathToFile([place, exercise]))).toEqual({ places: [place, exercise] });
  });

  it("leaves out what is not sound, and says why a file holds none", () => {
    const broken = { chapter: "01-load-transfer", id: "x", filed: { choice: "B" }, seen: 3 };
    expect(pathFromFile(pathToFile([broken as unknown as PlaceDone]))).toEqual({
      places: [{ chapter: "01-load-transfer", id: "x" }],
    });
    expect(pathFromFile("{")).toEqual({ fault: "not-a-path" });
    expect(pathFromFile(pathToFile([]).replace('"version": 1', '"version": 9'))).toEqual({
      fault: "other-version",
    });
  });

  it("adds to what was done here and takes nothing of it away", () => {
    const here: PlaceDone = { ...place, seen: { looked: [1], saw: "", times: [monday] } };
    const both = mergedPlace(here, { ...place, filed: { ...place.filed, choice: 3 } as never });
    expect(both.filed?.choice).toBe(1);
    expect(both.seen).toEqual({
      looked: [0, 1, 2],
      saw: "The sum stays.",
      times: [monday, tuesday],
    });
    expect(mergedPlace({ chapter: exercise.chapter, id: exercise.id }, exercise)).toEqual(exercise);
    expect(mergedPlace(exercise, exercise)).toEqual(exercise);
  });
});
