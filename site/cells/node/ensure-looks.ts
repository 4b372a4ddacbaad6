import { demoCar } from "@rollbook/lib";
import { reader } from "../reader.js";
import { type FigureSpec, type Inputs, looksLeft, type ValuesOf } from "../spec.js";

const STEPS = 8; // tried between the ends of an input

/** Values of the inputs over their whole ranges, on a grid that has their ends and starts. */
function gridOf<I extends Inputs>(inputs: I): ValuesOf<I>[] {
  return Object.entries(inputs).reduce<Record<string, number>[]>(
    (all, [key, { min, max, start, step }]) => {
      const counts = Array.from({ length: STEPS + 1 }, (_, i) =>
        Math.round((i / STEPS) * ((max - min) / step)),
      );
      const tried = [
        start,
        max,
        ...(min < 0 ? [0] : []),
        ...counts.map((count) => min + count * step),
      ];
      return all.flatMap((values) => tried.map((value) => ({ ...values, [key]: value })));
    },
    [{}],
  ) as ValuesOf<I>[];
}

/**
 * Sees that every look of a figure can be had with its sliders on the workbook's own car, where it
 * is not had from the start.
 *
 * @throws RangeError where it is not so, or where no prediction comes before
 */
export function ensureLooks<const I extends Inputs>(spec: FigureSpec<I>): void {
  const { id, after, looks, inputs } = spec;
  if (looks && after === undefined)
    throw new RangeError(`${id}: looks without a prediction before`);
  const left = reader.car === demoCar ? looksLeft(spec) : [];
  const grid = left.length > 0 ? gridOf(inputs) : [];
  for (const { ask, done } of left) {
    if (!grid.some((values) => done(values, inputs)))
      throw new RangeError(`${id}: no slider does this: ${ask}`);
  }
}
