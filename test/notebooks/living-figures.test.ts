import { describe, expect, it } from "vitest";
import { axleLoadsOf } from "../../lib/car/axle-loads.js";
import { demoCar } from "../../lib/car/demo-car.js";
import { readNotebooks } from "../../site/build/build.js";
import type { ArrowMark, Mark } from "../../site/cells/marks.js";
import { format } from "../../site/cells/reader.js";
import { startValues } from "../../site/cells/spec.js";
import { compiled, onCar } from "../../site/chapter/on-car.js";

const notebooks = readNotebooks();
const chapter = (number: string) => {
  const notebook = notebooks.find(({ name }) => name.startsWith(number));
  if (notebook === undefined) throw new RangeError(`no chapter ${number}`);
  return notebook;
};

/** What a figure of a chapter shows of the workbook's own car as it starts. */
async function shown(number: string, id: string) {
  const { figures } = onCar(await compiled(chapter(number)), demoCar);
  const figure = figures.find((one) => one.id === id);
  if (figure === undefined) throw new RangeError(`no figure ${id}`);
  const values = startValues(figure.inputs);
  return { says: figure.says(values), marks: figure.panels.map(({ draw }) => draw(values)) };
}

const loadsIn = (marks: readonly Mark[]) =>
  marks
    .filter((mark): mark is ArrowMark & Mark => mark.kind === "arrow" && mark.part === "loads")
    .map(({ label }) => label);
const newtons = (force: number) => format("force", force, 0);

describe("a living picture", () => {
  it("shows the loads that the model gives each tyre of each axle", async () => {
    const { marks } = await shown("03", "four-loads");
    const { front, rear } = axleLoadsOf(demoCar, 8);
    expect(marks.map(loadsIn)).toEqual(
      [front, rear].map(({ load }) => [newtons(load.left), newtons(load.right)]),
    );
  });

  it("shows both axles as one, and one lean for one car: the tyres give once", async () => {
    const { says, marks } = await shown("01", "bars-and-total");
    const { front, rear, rollAngle, total } = axleLoadsOf(demoCar, 7);
    expect(loadsIn(marks[0] ?? [])).toEqual([
      newtons(front.load.left + rear.load.left),
      newtons(front.load.right + rear.load.right),
    ]);
    expect(says).toContain(`leans ${format("angle", rollAngle.front, 1)}`);
    expect(says).toContain(newtons(total));
  });
});

/** Words of prose between two pictures, at most, on the way through Why. */
function longestWithoutPicture(number: string): number {
  const { cells } = chapter(number);
  const from = cells.findIndex(({ source }) => source.startsWith("## Why"));
  const to = cells.findIndex(({ source }) => /^## In numbers$/m.test(source));
  let [run, longest] = [0, 0];
  for (const { kind, source } of cells.slice(from, to)) {
    if (/^figure\(/m.test(source)) run = 0;
    if (kind === "markdown") run += source.replace(/\$[^$]*\$/g, " ").split(/\s+/).length;
    longest = Math.max(longest, run);
  }
  return longest;
}

it.each(["00", "01", "02", "03", "04", "05", "06", "07", "09"])(
  "Why of chapter %s stands beside pictures all the way",
  (number) => {
    expect(longestWithoutPicture(number)).toBeLessThanOrEqual(320);
  },
);
