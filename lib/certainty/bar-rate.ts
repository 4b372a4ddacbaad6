import { barRateOf } from "../car/axle.js";
import type { AntiRollBar, Car, Certainty } from "../car/car.js";
import { parameters } from "../parameters.js";
import type { SourceUnsaid } from "./shared-numbers.js";
import { type SpreadRow, spreadOf } from "./spreads.js";
import type { UncertainNumber } from "./uncertain-number.js";

/**
 * The rate of a bar as one number, that of its stiffest position: all positions are off together, so
 * that they keep their order.
 *
 * @returns none for an axle without a bar, or with one that does nothing
 */
export function barRateNumber(
  car: Car,
  end: "front" | "rear",
  row: SpreadRow,
  sourceUnsaid: SourceUnsaid,
): UncertainNumber[] {
  const value = stiffest(car[end].bar);
  if (value === 0) return [];
  const path = `${end}.bar.rate`;
  const { how = sourceUnsaid(car, row, path), share } = knownOf(car, end) ?? {};
  const spread = share === undefined ? spreadOf(row, how, value) : share * value;
  const { min, max } = parameters.barRate;
  const get = (other: Car) => stiffest(other[end].bar);
  const set = (other: Car, next: number) => scaled(other, end, next / (get(other) || next));
  return [{ path, value, how, spread, min, max, get, set }];
}

function stiffest(bar: AntiRollBar | undefined): number {
  return bar === undefined ? 0 : Math.max(...ratesOf(bar));
}

const ratesOf = (bar: AntiRollBar): number[] =>
  bar.positions.map((_, i) => barRateOf({ ...bar, position: i + 1 }));

/** What the file says of the position in use, else of the first that it says anything of. */
function knownOf(
  car: Car,
  end: "front" | "rear",
): { how: Certainty["how"]; share: number | undefined } | undefined {
  const { known = {}, [end]: axle } = car;
  const { bar } = axle;
  if (bar === undefined) return undefined;
  const rates = ratesOf(bar);
  const order = [bar.position - 1, ...rates.keys()];
  for (const place of order) {
    const path = `${end}.bar.positions.${place}.rate`;
    if (!Object.hasOwn(known, path)) continue;
    const { how, spread } = known[path] as Certainty;
    const rate = rates[place] ?? 0;
    return { how, share: spread === undefined || rate === 0 ? undefined : spread / rate };
  }
  return undefined;
}

/** The car with every rate of a bar times a factor; where it follows from arms, by a thicker tube. */
function scaled(car: Car, end: "front" | "rear", factor: number): Car {
  const { bar } = car[end];
  if (bar === undefined) return car;
  const positions = bar.positions.map((position) =>
    position.rate === undefined ? position : { ...position, rate: position.rate * factor },
  );
  const byArms = positions.some(({ rate }) => rate === undefined);
  const tube = byArms && bar.tube && thicker(bar.tube, factor);
  return { ...car, [end]: { ...car[end], bar: { ...bar, positions, ...(tube && { tube }) } } };
}

type Tube = NonNullable<AntiRollBar["tube"]>;

/** A tube twists less as the fourth power of its size; it is held at the sizes that a file may give. */
function thicker({ diameter, innerDiameter, ...tube }: Tube, factor: number): Tube {
  const { barDiameter, barInnerDiameter } = parameters;
  const sizes = [barDiameter.max / diameter, barInnerDiameter.max / (innerDiameter ?? 0)];
  const size = Math.max(barDiameter.min / diameter, Math.min(...sizes, factor ** 0.25));
  return {
    ...tube,
    diameter: held(diameter * size, barDiameter),
    ...(innerDiameter !== undefined && {
      innerDiameter: held(innerDiameter * size, barInnerDiameter),
    }),
  };
}

const held = (value: number, { min, max }: { min: number; max: number }) =>
  Math.min(max, Math.max(min, value));
