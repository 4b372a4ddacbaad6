import { describe, expect, it } from "vitest";
import { handlingCarOf } from "../../lib/balance/handling-car-of.js";
import { mirrorCar } from "../../lib/balance/mirror-car.js";
import { phaseBalances, phaseNames } from "../../lib/balance/phases.js";
import { standingCar } from "../../lib/balance/standing-car.js";
import { demoCar } from "../../lib/car/demo-car.js";
import { baselineOf } from "../../lib/change/effect.js";
import { USUAL_SPEED } from "../../lib/change/figures.js";
import { readNotebooks } from "../../site/build/build.js";
import { startValues } from "../../site/cells/spec.js";
import { compiled, onCar } from "../../site/chapter/on-car.js";
import { format } from "../../site/say/units.js";

const notebooks = readNotebooks();

/** What a figure of a chapter says of the workbook's own car, with these inputs other than where it starts. */
async function saidIn(chapter: string, id: string, inputs: Record<string, number> = {}) {
  const notebook = notebooks.find(({ name }) => name.startsWith(chapter));
  if (!notebook) throw new Error(`no chapter ${chapter}`);
  const figure = onCar(await compiled(notebook), demoCar).figures.find((one) => one.id === id);
  if (!figure) throw new Error(`no figure ${id} in ${chapter}`);
  return figure.says({ ...startValues(figure.inputs), ...inputs });
}

/** The numbers before a unit, in the order in which a sentence has them. */
const numbers = (text: string, unit: string): string[] =>
  [...text.matchAll(new RegExp(`([−+]?\\d+(?:\\.\\d+)?)\\s${unit}`, "g"))].map(
    ([, number = ""]) => number,
  );
const ms2 = "m/s²";
const bare = (value: number, decimals: number) =>
  format("acceleration", value, decimals).split(/\s/)[0] ?? "";

describe("one quantity of one car is one number", () => {
  const handling = handlingCarOf(demoCar);
  const left = phaseBalances(handling, USUAL_SPEED);
  const right = phaseBalances(mirrorCar(handling), USUAL_SPEED);
  const margins = phaseNames.map(
    (name) => (left[name].understeerMargin + right[name].understeerMargin) / 2,
  );

  it("is the margin of each phase, in chapters 7 and 8 and in the baseline of map, plan and report", async () => {
    const wanted = margins.map((margin) => bare(Math.abs(margin), 2));
    expect(numbers(await saidIn("07", "four-balances"), ms2)).toEqual(wanted);
    const byPhase = phaseNames.map(async (_, i) =>
      numbers(await saidIn("08", "one-car-four-cars", { phase: i + 1 }), ms2),
    );
    expect((await Promise.all(byPhase)).flat()).toEqual(wanted);
    const { phases } = baselineOf(standingCar(demoCar)).behaviour;
    expect(phaseNames.map((name) => bare(Math.abs(phases[name].understeerMargin), 2))).toEqual(
      wanted,
    );
  });

  it("is what one hole of the front bar moves, in chapters 0 and 8", async () => {
    const zero = await saidIn("00", "parts-of-a-corner");
    const [, bars = ""] = zero.split("Bar:");
    const hole = (demoCar.front.bar?.position ?? 1) - 1;
    const eight = await saidIn("08", "one-car-four-cars", { front: hole });
    const [, moved = ""] = eight.split("as it is:");
    expect(numbers(bars, ms2)).toEqual(numbers(moved, ms2));
  });

  it("is the limit of each axle by itself, in chapters 3 and 5, which both say that it is the simple picture, and why", async () => {
    const [front, rear, margin] = numbers(await saidIn("03", "axle-limits"), ms2);
    expect(numbers(await saidIn("05", "trim"), ms2).slice(0, 3)).toEqual([front, rear, margin]);
    const prose = (chapter: string) =>
      (notebooks.find(({ name }) => name.startsWith(chapter))?.cells ?? [])
        .map(({ source }) => source)
        .join("\n");
    expect(prose("03")).toMatch(
      /each axle by itself.*because you can check it with a pencil.*whole car/,
    );
    expect(prose("05")).toMatch(/simple picture of chapter 3, each axle by itself/);
  });

  it("is the lean and the load of one turn, in chapters 1 and 3", async () => {
    const one = await saidIn("01", "bars-and-total");
    const three = await saidIn("03", "four-loads", { lateralAcceleration: 7 });
    expect(numbers(one, "N")[0]).toBe(numbers(three, "N")[0]);
    expect(one.match(/leans ([\d.]+)/)?.[1]).toBe(three.match(/leans ([\d.]+)/)?.[1]);
  });
});
