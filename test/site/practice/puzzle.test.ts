import {
  causesFor,
  demoCar,
  freshSeed,
  type HelpLevel,
  LARGEST_PUZZLE,
  nextChoices,
  type Puzzle,
  practiceCornerName,
  practiceCorners,
  practiceFrom,
  sameWay,
} from "@rollbook/lib";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { markOf } from "../../../site/pages/practice/car-mark.js";
import { linkTo, puzzleFrom } from "../../../site/pages/practice/puzzle-link.js";
import { cornerOf } from "../../../site/say/practice/puzzle.js";

const anyPuzzle: fc.Arbitrary<Puzzle> = fc.record(
  {
    seed: fc.nat(LARGEST_PUZZLE),
    level: fc.constantFrom(1, 2, 3, 4),
    worked: fc.constantFrom(1, 2, 3),
    place: fc.record({
      direction: fc.constantFrom("left", "right"),
      radius: fc.integer({ min: 5, max: 500 }),
      speed: fc.integer({ min: 10, max: 300 }).map((speed) => speed / 3.6),
      grade: fc.integer({ min: -25, max: 25 }).map((grade) => grade / 100),
    }),
    car: fc.stringMatching(/^[0-9a-f]{8}$/),
  },
  { requiredKeys: ["seed", "level", "place"] },
);

describe("a link", () => {
  test("brings the same puzzle back", () => {
    fc.assert(
      fc.property(anyPuzzle, (puzzle) => {
        const linked = puzzleFrom(linkTo(puzzle), 1);
        expect(linked?.faults).toEqual([]);
        expect(linked?.puzzle).toMatchObject({ ...puzzle, place: expect.anything() });
        expect(linked?.puzzle.place.speed).toBeCloseTo(puzzle.place.speed, 6);
        expect(linked?.puzzle.place.radius).toBe(puzzle.place.radius);
        expect(linked?.puzzle.place.direction).toBe(puzzle.place.direction);
        expect(linked && linkTo(linked.puzzle)).toBe(linkTo(puzzle));
      }),
    );
  });

  test("that asks for nothing makes no puzzle", () => {
    expect(puzzleFrom("", 1)).toBeUndefined();
    expect(puzzleFrom("#rounds", 1)).toBeUndefined();
  });

  test("with a number alone takes the practice corner with most help", () => {
    expect(puzzleFrom("#?seed=12", 1)?.puzzle).toEqual({
      seed: 12,
      level: 1,
      place: practiceCorners.practice,
    });
  });

  test.each([
    ["seed=1.5", "seed in the link takes a whole number from 0 to 999999, not “1.5”."],
    ["seed=-1", "seed in the link takes a whole number from 0 to 999999, not “-1”."],
    ["seed=", "seed in the link takes a whole number from 0 to 999999, not “”."],
    ["level=5", "level in the link takes a whole number from 1 to 4, not “5”."],
    ["worked=4", "worked in the link takes a whole number from 0 to 3, not “4”."],
    ["radius=4", "radius in the link takes a number from 5 to 500 m, not “4”."],
    ["speed=fast", "speed in the link takes a number from 10 to 300 km/h, not “fast”."],
    ["grade=Infinity", "grade in the link takes a number from -25 to 25 %, not “Infinity”."],
    ["turn=up", "turn in the link is left or right, not “up”."],
    ["car=mine", "car in the link takes eight letters or digits, not “mine”."],
    ["constructor=1", "The link sets “constructor”, which practice does not have."],
  ])("with %s is refused there with a sentence", (query, sentence) => {
    const linked = puzzleFrom(`#?${query}`, 77);
    expect(linked?.faults).toEqual([sentence]);
    expect(linked?.puzzle).toEqual({ seed: 77, level: 1, place: practiceCorners.practice });
  });

  test("of any text never throws, shows little of it, and leaves a puzzle that can be linked to", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300, unit: "binary" }), (text) => {
        const linked = puzzleFrom(`#?${text}`, 5);
        for (const fault of linked?.faults ?? []) expect(fault.length).toBeLessThan(140);
        expect(linked && puzzleFrom(linkTo(linked.puzzle), 6)?.faults).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });
});

describe("corners", () => {
  test("to choose from are known again by their numbers, and any other is one's own", () => {
    expect(practiceCornerName(practiceCorners.tight)).toBe("tight");
    expect(cornerOf(practiceCorners.sweep).name).toBe("Fast sweep");
    expect(cornerOf({ ...practiceCorners.sweep, radius: 141 }).name).toBe("Your own");
  });

  test("a fresh number is one that a link can carry", () => {
    expect(freshSeed(() => 0)).toBe(1);
    expect(freshSeed(() => 1 - 2 ** -53)).toBe(LARGEST_PUZZLE);
  });
});

test("the mark of a car stays with it and changes with anything in its file", () => {
  expect(markOf(demoCar)).toMatch(/^[0-9a-f]{8}$/);
  expect(markOf(structuredClone(demoCar))).toBe(markOf(demoCar));
  expect(markOf({ ...demoCar, steeringRatio: demoCar.steeringRatio + 0.1 })).not.toBe(
    markOf(demoCar),
  );
});

describe("answers to choose from", () => {
  const practicesOf = (level: HelpLevel) =>
    [1, 2, 3].map((seed) => practiceFrom(seed, cornerOf(practiceCorners.practice), demoCar, level));

  test("always hold what was hidden: among four with most help, else among all", () => {
    for (const practice of practicesOf(1)) {
      const few = causesFor(practice);
      expect(few).toHaveLength(4);
      expect(few).toEqual(expect.arrayContaining([...practice.hidden]));
      expect(causesFor(practice)).toEqual(few);
    }
    for (const practice of [...practicesOf(2), ...practicesOf(4)]) {
      const all = causesFor(practice);
      expect(all.length).toBeGreaterThan(10);
      for (const hidden of practice.hidden)
        expect(all.filter((change) => sameWay(change, hidden))).toEqual([hidden]);
    }
  });

  test("for the next change hold the one that takes back exactly what was hidden", () => {
    for (const { changed, hidden } of [...practicesOf(1), ...practicesOf(3), ...practicesOf(4)])
      for (const change of hidden) {
        const undo = { ...change, by: expect.closeTo(-change.by, 9) };
        expect(nextChoices(changed).flatMap(({ changes }) => changes)).toContainEqual(undo);
      }
  });
});
