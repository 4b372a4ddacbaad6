import {
  applyChange,
  type Car,
  type Change,
  type HandlingCar,
  isEndChange,
  mirrorCar,
  orUndefined,
  possibleChanges,
  predictedCircle,
  standingCar,
} from "@rollbook/lib";
import { changeAt, choiceOf, type Sheet } from "./input.js";
import { specOf } from "./spec.js";

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

/** A car as the model turns it, to the left, for a circle that is driven to the side that was chosen. */
export function turned(handling: HandlingCar, sheet: Sheet): HandlingCar {
  const form = { spec: specOf("circle"), end: "front" } as const;
  return choiceOf(sheet, form, "direction") === "right" ? mirrorCar(handling) : handling;
}

/** What the model says that the chosen change does to the limit on a circle, m/s²; nothing where none is chosen. */
export function predictedShift(car: Car, radius: number, sheet: Sheet): number | undefined {
  const key = sheet[changeAt]?.text ?? "";
  const chosen = circleChanges(car).find((one) => one.key === key);
  if (chosen === undefined) return undefined;
  return orUndefined(() => {
    const changed = standingCar(applyChange(car, chosen.change), car);
    const limitOf = ({ handling }: typeof changed) =>
      predictedCircle(turned(handling, sheet), radius).limit;
    return limitOf(changed) - limitOf(standingCar(car));
  });
}
