import { describe, expect, it, vi } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import { type BandOptions, marginBands } from "../../../lib/certainty/band-sampler.js";
import { uncertainNumbersOf } from "../../../lib/certainty/uncertain-numbers.js";
import type { Quantity } from "../../../lib/units.js";
import {
  speed,
  summaryOf,
  toldSureness,
  widestDoubts,
} from "../../../site/pages/your-car/model/summary.js";
import { formatAlike } from "../../../site/say/shown-range.js";

vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const show = (...given: [Quantity, number, number]) => formatAlike(...given, "metric");
const bandsWith = (options: BandOptions, samples = 30) =>
  marginBands(demoCar, { speed, samples, ...options });
const usual = bandsWith({});
const exact = bandsWith({ numbers: [] }, 4);
const decimals = (text: string) =>
  [...text.matchAll(/\d+(?:\.(\d+))?/g)].map(([, digits = ""]) => digits.length);

describe("how sure limit and balance are, in words", () => {
  it("has bands and a verdict for each part of a corner", () => {
    const told = toldSureness(usual, "metric");
    expect(told.map(({ phase }) => phase)).toEqual(["Braking in", "Turn-in", "Middle", "Power on"]);
    for (const { limit, margin, verdict } of told) {
      expect(limit).toMatch(/^\d+\.\d to \d+\.\d$/);
      expect(margin).toMatch(/^[−\d.]+ to [−\d.]+$/);
      expect(["sure", "likely", "cannot say"]).toContain(verdict);
    }
  });

  it("has all digits where nothing is in doubt, and claims nothing from four samples", () => {
    for (const { limit, verdict } of toldSureness(exact, "metric")) {
      expect(decimals(limit)).toEqual([2, 2]);
      expect(verdict).toBe("cannot say"); // four samples never say more
    }
  });

  it("tells balance with no more digits than its band has", () => {
    const { balance, balanceWithin } = summaryOf(demoCar, "metric", show);
    const numbers = (rows: typeof balance) =>
      rows.map(([, text]) => decimals(text.replaceAll("m/s²", "")));
    for (const all of numbers(balance)) expect(all).toEqual([2, 2]);
    for (const all of numbers(balanceWithin(exact))) expect(all).toEqual([2, 2]);
    balanceWithin(usual).forEach(([, text], i) => {
      const { low, high } = Object.values(usual)[i]?.understeerMargin.band ?? {};
      const half = ((high?.value ?? 0) - (low?.value ?? 0)) / 2;
      const most = half >= 0.355 ? 1 : 2; // half the band has one digit from 0.355 on
      expect(decimals(text.replaceAll("m/s²", ""))[1]).toBeLessThanOrEqual(most);
    });
  });

  it("names what to measure first: what is in doubt and nothing that is not", () => {
    const numbers = uncertainNumbersOf(demoCar).filter(({ path }) => path === "rear.tyre.grip");
    const doubts = widestDoubts(bandsWith({ numbers }));
    expect(doubts).toEqual(["rear tyre grip (about 100 %)"]);
    expect(widestDoubts(exact)).toEqual([]);
  });
});
