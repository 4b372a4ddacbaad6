import {
  applyChange,
  type Car,
  type Change,
  isEndChange,
  orUndefined,
  possibleChanges,
  predictedCircle,
  standingCar,
} from "@rollbook/lib";

/** A change that can be tried on a circle, and how it is kept. */
export interface CircleChange {
  readonly key: string;
  readonly change: Change;
}

const keyOf = (change: Change): string =>
  [change.lever, isEndChange(change) ? change.end : "car", change.by.toPrecision(4)].join(" ");

/** Every change of one step or two that the car's adjusters allow. */
export const circleChanges = (car: Car): CircleChange[] =>
  [1, 2]
    .flatMap((steps) => possibleChanges(car, steps))
    .map((change) => ({ key: keyOf(change), change }));

/** What the model says that a change does to the limit on a circle, m/s²; nothing of one that is none. */
export function predictedShift(car: Car, radius: number, key: string): number | undefined {
  const chosen = circleChanges(car).find((one) => one.key === key);
  if (chosen === undefined) return undefined;
  return orUndefined(() => {
    const changed = standingCar(applyChange(car, chosen.change), car);
    const limitOf = ({ handling }: typeof changed) => predictedCircle(handling, radius).limit;
    return limitOf(changed) - limitOf(standingCar(car));
  });
}
