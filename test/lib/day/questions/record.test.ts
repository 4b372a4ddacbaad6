import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  answersFromFile,
  answersToFile,
  mergedAnswers,
} from "../../../../lib/day/questions/answers-file.js";
import { countsOf, gainsOf, groupGainsOf } from "../../../../lib/day/questions/gain.js";
import { asGiven, type Given } from "../../../../lib/day/questions/given.js";
import { ideaNames } from "../../../../lib/day/questions/ideas.js";
import { misconceptions } from "../../../../lib/day/questions/misconceptions.js";
import {
  checkFor,
  formFor,
  taughtBefore,
  taughtIn,
  warmUpFor,
} from "../../../../lib/day/questions/pick.js";
import { today } from "../../../../lib/day/questions/recall.js";
import { dueOn, reviewsOf } from "../../../../lib/day/questions/review.js";

const asked = "soft-helps-both" as const;
const given = (changes: Partial<Given> = {}): Given => ({
  ...{ asked, form: "first", occasion: "single", day: 100, confidence: 1 },
  ...changes,
});
const wrong = { idea: "soft-helps-both" } as const;
const names = misconceptions.map(({ idea }) => idea);

const anyGiven: fc.Arbitrary<Given> = fc
  .record(
    {
      asked: fc.constantFrom(...names),
      form: fc.constantFrom("first" as const, "twin" as const),
      occasion: fc.constantFrom("before", "after", "single", "review", "warm-up"),
      day: fc.integer({ min: 0, max: 400 }),
      confidence: fc.integer({ min: 0, max: 2 }),
      idea: fc.constantFrom(...ideaNames),
    },
    { requiredKeys: ["asked", "form", "occasion", "day", "confidence"] },
  )
  .map((value) => value as Given);

describe("an answer", () => {
  it("is read back as it was kept", () => {
    fc.assert(
      fc.property(anyGiven, (one) => {
        expect(asGiven(JSON.parse(JSON.stringify(one)))).toEqual(one);
      }),
    );
  });

  it.each([
    null,
    7,
    "x",
    [],
    {},
    { ...given(), asked: "no-such-idea" },
    { ...given(), asked: "rubber-alone" },
    { ...given(), form: "third" },
    { ...given(), occasion: "exam" },
    { ...given(), day: 1.5 },
    { ...given(), day: -1 },
    { ...given(), confidence: 3 },
    { ...given(), idea: "toString" },
  ])("that is none is not taken: %j", (value) => {
    expect(asGiven(value)).toBeUndefined();
  });

  it("belongs to the day of the clock on the wall", () => {
    const evening = new Date(2026, 4, 2, 23, 59);
    const night = new Date(2026, 4, 3, 0, 1);
    expect(today(night) - today(evening)).toBe(1);
  });
});

describe("reviews", () => {
  it("come 1, 3, 7 and 21 days after an answer, each time it is right, and then no more", () => {
    const days = [100, 101, 104, 111, 132];
    const due = days.map(
      (_, i) => reviewsOf(days.slice(0, i + 1).map((day) => given({ day })))[0]?.due,
    );
    expect(due).toEqual([101, 104, 111, 132, undefined]);
  });

  it("start over with a wrong answer, also one before its day", () => {
    const passed = [100, 101, 104].map((day) => given({ day }));
    const [review] = reviewsOf([...passed, given({ day: 106, ...wrong })]);
    expect(review).toEqual({ asked, passed: 0, due: 107 });
  });

  it("are not hurried by a right answer before their day", () => {
    const early = [100, 100, 100].map((day) => given({ day }));
    expect(reviewsOf(early)).toEqual([{ asked, passed: 0, due: 101 }]);
  });

  it("wait, when they are late, from the day they were taken", () => {
    const [review] = reviewsOf([given(), given({ day: 150 })]);
    expect(review?.due).toBe(153);
  });

  it("are not begun by the check before the course, which explains nothing", () => {
    expect(reviewsOf([given({ occasion: "before", ...wrong })])).toEqual([]);
  });

  it("are due from their day on, the longest due first", () => {
    const answers = [given({ day: 90, asked: "ballast-is-free" }), given({ day: 80 })];
    const early = dueOn(81, answers).map((review) => review.asked);
    const later = dueOn(95, answers).map((review) => review.asked);
    expect(early).toEqual([asked]);
    expect(later).toEqual([asked, "ballast-is-free"]);
  });
});

describe("the gain", () => {
  const before = (changes: Partial<Given>) => given({ occasion: "before", day: 1, ...changes });
  const after = (changes: Partial<Given>) =>
    given({ occasion: "after", form: "twin", day: 50, ...changes });
  const four: Given[] = [
    before({ asked: "roll-moves-load", idea: "roll-moves-load", confidence: 2 }),
    before({ asked: "grip-in-proportion" }),
    before({ asked: "ballast-is-free" }),
    before({ asked, ...wrong, confidence: 2 }),
    after({ asked: "roll-moves-load" }),
    after({ asked: "grip-in-proportion" }),
    after({ asked: "ballast-is-free", idea: "weight-is-grip" }),
    after({ asked, idea: "other-end-stays", confidence: 0 }),
  ];

  it("says of each misconception what became of it", () => {
    const outcomes = gainsOf(four).flatMap((gain) =>
      gain.outcome ? [[gain.asked, gain.outcome]] : [],
    );
    expect(outcomes).toEqual([
      ["roll-moves-load", "learned"],
      ["grip-in-proportion", "known"],
      [asked, "not yet"],
      ["ballast-is-free", "lost"],
    ]);
  });

  it("counts, and only what was answered both times", () => {
    const counts = countsOf(gainsOf([...four, before({ asked: "more-camber-grips" })]));
    expect(counts).toEqual({
      both: 4,
      rightBefore: 2,
      rightAfter: 2,
      outcomes: { learned: 1, known: 1, lost: 1, "not yet": 1 },
      certainAndWrong: { before: 2, after: 0 },
    });
  });

  it("says when a twin had been met before the second check", () => {
    const met = given({ form: "twin", day: 20 });
    const flagged = (answers: Given[]) =>
      gainsOf(answers).flatMap((gain) => (gain.twinMet ? [gain.asked] : []));
    expect(flagged(four)).toEqual([]);
    expect(flagged([met, ...four])).toEqual([asked]);
    expect(flagged([...four, { ...met, day: 60 }])).toEqual([]);
  });

  it("of a group is counted by misconception over those who answered both times", () => {
    const one = four;
    const two = [before({ asked: "roll-moves-load" })];
    const row = groupGainsOf([one, two, one]).find((gain) => gain.asked === "roll-moves-load");
    expect(row).toEqual({ asked: "roll-moves-load", both: 2, rightBefore: 0, rightAfter: 2 });
  });
});

describe("a file of answers", () => {
  it("holds them all", () => {
    fc.assert(
      fc.property(fc.array(anyGiven, { maxLength: 40 }), (answers) => {
        expect(answersFromFile(answersToFile(answers))).toEqual({ answers, left: 0 });
      }),
    );
  });

  it.each([
    ["no JSON", "{", { code: "not-answers" }],
    ["a number", "7", { code: "not-answers" }],
    ["something else", '{"kind":"car"}', { code: "not-answers" }],
    [
      "a later version",
      '{"kind":"rollbook answers","version":2}',
      { code: "other-version", version: "2", known: 1 },
    ],
    ["no list", '{"kind":"rollbook answers","version":1}', { code: "no-list" }],
  ])("is refused when it is %s", (_, text, fault) => {
    expect(answersFromFile(text)).toEqual({ fault });
  });

  it("leaves out what is no answer, and counts it", () => {
    const text = answersToFile([given(), { ...given(), day: -4 }]);
    expect(answersFromFile(text)).toEqual({ answers: [given()], left: 1 });
  });

  it("read twice adds nothing, and never loses an answer given here", () => {
    fc.assert(
      fc.property(fc.array(anyGiven), fc.array(anyGiven), (mine, others) => {
        const both = mergedAnswers(mine, others);
        expect(mergedAnswers(both, others)).toHaveLength(both.length);
        expect(both.length).toBeGreaterThanOrEqual(Math.max(mine.length, others.length));
        for (const one of mine) expect(both).toContainEqual(one);
      }),
    );
  });
});

describe("a warm-up", () => {
  const last = "07-how-fast-the-load-arrives";

  it("asks two different things from earlier chapters only", () => {
    fc.assert(
      fc.property(fc.array(anyGiven), fc.integer({ min: 0, max: 500 }), (answers, day) => {
        const picked = warmUpFor(last, answers, day);
        expect(new Set(picked).size).toBe(picked.length);
        for (const one of picked) expect(taughtBefore(last)).toContain(one);
      }),
    );
    expect(warmUpFor(last, [], 1)).toHaveLength(2);
  });

  it("asks in a chapter two of its own, none that was answered on that day, and nothing where it has none", () => {
    const chapter = "03-distribution-between-axles";
    const own = taughtIn(chapter);
    expect(own).toHaveLength(3);
    expect(own).toEqual(expect.arrayContaining(checkFor(chapter, [], 9)));
    const answered = own.slice(0, 2).map((idea) => given({ day: 9, asked: idea }));
    expect(checkFor(chapter, answered, 9)).toEqual(own.slice(2));
    expect(checkFor(chapter, answered, 10)).toHaveLength(2);
    expect(checkFor("09-your-workshop", [], 9)).toEqual([]);
  });

  it("has nothing to ask in the first chapters", () => {
    expect(warmUpFor("00-start-here", [], 1)).toEqual([]);
    expect(warmUpFor("01-load-transfer", [], 1)).toEqual([]);
  });

  it("asks first for what is due", () => {
    const answers = [given({ day: 5 }), given({ asked: "ballast-is-free", day: 3 })];
    expect(warmUpFor(last, answers, 9)).toEqual(["ballast-is-free", asked]);
  });

  it("stays the same all day and changes from day to day", () => {
    const over = Array.from({ length: 30 }, (_, day) => warmUpFor(last, [], day).join());
    expect(warmUpFor(last, [], 3)).toEqual(warmUpFor(last, [], 3));
    expect(new Set(over).size).toBeGreaterThan(10);
  });

  it("keeps the twins for the check after the course, and lets the two take turns from then on", () => {
    expect(formFor(asked, [given(), given()])).toBe("first");
    const checked = given({ occasion: "after", form: "twin" });
    expect(formFor(asked, [given(), checked])).toBe("first");
    expect(formFor(asked, [checked, given({ form: "first" })])).toBe("twin");
  });
});
