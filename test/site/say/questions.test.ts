import { demoCar, ideaNames, misconceptions, type QuestionForm } from "@rollbook/lib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { otherCars } from "../../../site/chapter/other-cars.js";
import { type Asked, askAbout, refutation } from "../../../site/say/questions/asked.js";
import type { Show } from "../../../site/say/questions/tell.js";
import { words } from "../../../site/say/questions/words.js";
import { format, type UnitSystem } from "../../../site/say/units.js";
import { anyCar } from "../../lib/car/any-car.js";

const showIn =
  (units: UnitSystem): Show =>
  (quantity, value, decimals) =>
    format(quantity, value, decimals, units);
const forms: readonly QuestionForm[] = ["first", "twin"];
const all = misconceptions.flatMap(({ idea }) =>
  forms.map((form) => ({ idea, form, name: `${idea}, ${form}` })),
);
const names = all.map(({ name }) => name);
const of = (name: string) => {
  const found = all.find((one) => one.name === name);
  if (!found) throw new Error(name);
  return found;
};

function expectFair({ ask, choices, answer, ...rest }: Asked) {
  expect(choices).toHaveLength(4);
  expect(new Set(choices.map(({ text }) => text)).size).toBe(4);
  expect(choices.filter(({ idea }) => idea === undefined)).toHaveLength(1);
  expect(choices[answer]?.idea).toBeUndefined();
  const words = [ask, ...choices.flatMap(({ text, because }) => [text, because])];
  for (const text of words) {
    expect(text).not.toMatch(/NaN|Infinity|undefined|\[object/);
    expect(text).toMatch(/[.?]$/);
  }
  return rest;
}

describe("the bank", () => {
  it("holds the fifteen misconceptions, each once", () => {
    expect(misconceptions).toHaveLength(15);
    expect(new Set(misconceptions.map(({ idea }) => idea)).size).toBe(15);
  });

  it("uses every wrong idea that it has a figure against", () => {
    const used = new Set(
      all.flatMap(({ idea: asked, form }) =>
        [demoCar, ...otherCars].flatMap((car) =>
          askAbout(car, asked, form, showIn("metric")).choices.map(({ idea }) => idea),
        ),
      ),
    );
    // on all of these cars the ends change on the brakes: there it is no wrong idea
    const unused = ideaNames.filter((idea) => !used.has(idea));
    expect(unused.filter((idea) => idea !== "brakes-change-ends")).toEqual([]);
  });

  it("does not let anyone pass by always giving the same letter", () => {
    for (const form of forms) {
      const letters = misconceptions.map(
        ({ idea }) => askAbout(demoCar, idea, form, showIn("metric")).answer,
      );
      for (const letter of [0, 1, 2, 3]) {
        const count = letters.filter((answer) => answer === letter).length;
        expect(count).toBeGreaterThanOrEqual(2);
        expect(count).toBeLessThanOrEqual(6);
      }
    }
  });
});

describe.each(names)("question %s", (name) => {
  const { idea, form } = of(name);

  it.each(["metric", "us"] as const)("is fair for the demo car in %s units", (units) => {
    const asked = askAbout(demoCar, idea, form, showIn(units));
    expect(expectFair(asked)).toMatchObject({ about: demoCar.name });
    expect(asked.instead).toBeUndefined();
  });

  it("offers the misconception itself among its wrong answers, each with an idea of its own", () => {
    const { choices } = askAbout(demoCar, idea, form, showIn("metric"));
    const wrong = choices.flatMap((choice) => choice.idea ?? []);
    expect(wrong).toContain(idea);
    expect(new Set(wrong).size).toBe(3);
  });

  it("is fair for three other cars, about them or, with a reason, about the demo car", () => {
    for (const car of otherCars) {
      const asked = askAbout(car, idea, form, showIn("metric"));
      const { about, instead } = expectFair(asked);
      expect(about).toBe(instead === undefined ? car.name : demoCar.name);
      if (instead !== undefined) expect(instead.message).toMatch(/\.$/);
    }
  });

  it("is asked about at least one of them itself", () => {
    const own = otherCars.filter(
      (car) => askAbout(car, idea, form, showIn("metric")).instead === undefined,
    );
    expect(own.length).toBeGreaterThanOrEqual(1);
  });
});

describe("any car", () => {
  it("gets a fair question, about itself or with a reason about another", () => {
    fc.assert(
      fc.property(anyCar, fc.constantFrom(...names), (car, name) => {
        const { idea, form } = of(name);
        expectFair(askAbout(car, idea, form, showIn("metric")));
      }),
      { numRuns: 60 },
    );
  });

  it("without an anti-roll bar is not asked to take one off", () => {
    const bare = otherCars.find(({ front, rear }) => !front.bar && !rear.bar);
    if (!bare) throw new Error("one of the cars must have no bar");
    const asked = askAbout(bare, "stiffer-moves-more", "twin", showIn("metric"));
    expect(asked.about).toBe(demoCar.name);
    expect(asked.instead?.message).toBe("it has no anti-roll bar to take off.");
  });
});

describe("a refutation", () => {
  it("is a link to a figure with its sliders set", () => {
    expect(refutation("bar-helps-own-end").href).toBe(
      "03-distribution-between-axles.html#axle-limits?rearBar=most",
    );
  });
});

describe("a file that holds no answers", () => {
  it.each([
    [{ code: "too-large" }, /too large/],
    [{ code: "not-answers" }, /does not hold answers/],
    [{ code: "other-version", version: "2", known: 1 }, /version 2, not 1/],
    [{ code: "no-list" }, /no list/],
    [{ code: "too-many", most: 5000 }, /more than 5000/],
  ] as const)("is refused in one sentence: %j", (fault, sentence) => {
    expect(words.fileFault(fault)).toMatch(sentence);
  });
});
