import { applyChange, type Change, demoCar, parameters, Refusal } from "@rollbook/lib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readerWith } from "../../../site/say/reader.js";
import { refusalInWords } from "../../../site/say/refusal.js";
import { fromShown } from "../../../site/say/units.js";

function refused(change: Change): Refusal {
  try {
    applyChange(demoCar, change);
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
  throw new Error("not refused");
}

const stiffer: Change = { lever: "springRate", end: "front", by: 100e3 };

describe("a set-up change that goes too far", () => {
  it("is refused in SI, with the facts of its number", () => {
    const { message, number } = refused(stiffer);
    expect(message).toMatch(/^front spring rate is \d+ N\/m but must be from \d+ to 90000 N\/m\.$/);
    expect(number).toMatchObject({ quantity: "stiffness", unit: "N/m", most: 90e3 });
  });

  it("is told in the reader's unit: 90 N/mm = 513.9 lbf/in (1 lbf/in = 175.1268 N/m, NIST SP 811)", () => {
    expect(refusalInWords(refused(stiffer), readerWith("metric"))).toMatch(/to 90 N\/mm\.$/);
    expect(refusalInWords(refused(stiffer), readerWith("us"))).toMatch(/to 513\.9\d* lbf\/in\.$/);
  });

  it("says the same number whichever the units, in 100 cases", () => {
    const more = fc.double({ min: 100e3, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(more, fc.constantFrom("metric", "us"), (by, units) => {
        const refusal = refused({ ...stiffer, by });
        const [, shown] = / is ([\d.]+) /.exec(refusalInWords(refusal, readerWith(units))) ?? [];
        const value = refusal.number?.value as number;
        const back = fromShown(parameters.springRate.quantity, Number(shown), units);
        expect(Math.abs(back / value - 1)).toBeLessThan(1e-5);
      }),
    );
  });
});

it("what says no quantity is told as it is", () => {
  const refusal = new Refusal("no-crossing", "The tyres never let go.");
  expect(refusalInWords(refusal, readerWith("metric"))).toBe("The tyres never let go.");
  expect(refusalInWords(refusal, readerWith("us"))).toBe("The tires never let go.");
});
