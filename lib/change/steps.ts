import type { Car, CarLever } from "../car/car.js";
import { adjusterOf } from "./adjuster.js";
import { canApply } from "./apply.js";
import type { Change, EndLever } from "./change.js";
import { carLenses, endLenses } from "./levers.js";

/**
 * Every single change that a car allows: one step up and one step down of each adjuster, as far as
 * its range goes.
 *
 * @param steps - how many steps a change makes, above 0
 */
export function possibleChanges(car: Car, steps = 1): Change[] {
  return places.flatMap((place) => {
    const step = adjusterOf(car, place)?.step;
    if (step === undefined) return [];
    const both: Change[] = [steps, -steps].map((count) => ({ ...place, by: count * step }));
    return both.filter((change) => canApply(car, change));
  });
}

type Place =
  | Omit<Extract<Change, { end: unknown }>, "by">
  | Omit<Extract<Change, { lever: CarLever }>, "by">;

const endLevers = Object.keys(endLenses) as EndLever[];
const carLevers = Object.keys(carLenses) as CarLever[];

const places: readonly Place[] = [
  ...endLevers.flatMap((lever) => [
    { lever, end: "front" as const },
    { lever, end: "rear" as const },
  ]),
  ...carLevers.map((lever) => ({ lever })),
];
