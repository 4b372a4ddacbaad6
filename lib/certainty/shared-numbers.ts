import { meanOf } from "../car/axle.js";
import type { Axle, Car, Source } from "../car/car.js";
import { OWN_TYRE } from "../car/tyres.js";
import { eachAxle } from "../load/wheels.js";
import { parameters } from "../parameters.js";
import { type SpreadRow, sharedSpreads, spreadOf } from "./spreads.js";
import { reflected, type UncertainNumber } from "./uncertain-number.js";

/** Where a number comes from of which the file says nothing. */
export type SourceUnsaid = (car: Car, row: SpreadRow, path: string) => Source;

/** What one gauge reads too much on all four tyres: their mean pressure, Pa. */
export function pressureGauge(car: Car, sourceUnsaid: SourceUnsaid): UncertainNumber {
  const { min, max } = parameters.tyrePressure;
  const get = ({ front, rear }: Car) =>
    (meanOf(front.tyre.pressure) + meanOf(rear.tyre.pressure)) / 2;
  const set = (other: Car, next: number) => {
    const more = next - get(other);
    return eachTyre(other, ({ pressure }) => ({
      pressure: {
        left: reflected(pressure.left + more, min, max),
        right: reflected(pressure.right + more, min, max),
      },
    }));
  };
  const how = sourceUnsaid(car, sharedSpreads.pressureGauge, "pressureGauge");
  const spread = spreadOf(sharedSpreads.pressureGauge, how, get(car));
  return { path: "pressureGauge", value: get(car), spread, how, min, max, get, set };
}

/** What all tyres grip more or less than their data say, beyond what each axle's do by themselves. */
export function gripOfTheDay(car: Car, sourceUnsaid: SourceUnsaid): UncertainNumber {
  const { min, max } = parameters.tyreGrip;
  const get = ({ front, rear }: Car) => ((front.tyre.grip ?? 1) + (rear.tyre.grip ?? 1)) / 2;
  const set = (other: Car, next: number) => {
    const factor = next / get(other);
    return eachTyre(other, ({ grip = 1 }) => ({ grip: reflected(grip * factor, min, max) }));
  };
  const how = sourceUnsaid(car, sharedSpreads.gripOfTheDay, "gripOfTheDay");
  const spread = spreadOf(sharedSpreads.gripOfTheDay, how, get(car));
  return { path: "gripOfTheDay", value: get(car), spread, how, min, max, get, set };
}

function eachTyre(car: Car, change: (tyre: Axle["tyre"]) => Partial<Axle["tyre"]>): Car {
  const axles = eachAxle(car, (axle) => ({
    ...axle,
    tyre: { ...axle.tyre, ...change(axle.tyre) },
  }));
  return { ...car, ...axles };
}

/** What a tyre is, wherever it is fitted; its grip may differ from axle to axle. */
const ofTheTyre = ["tyre.loadSensitivity", "tyre.stiffness", "tyre.bestPressure"];

/** What two axles share that wear the same tyre. */
const tyreKey = ({ tyre: { name, data } }: Axle): string =>
  JSON.stringify(name === OWN_TYRE ? [name, data] : [name]);

/** The same numbers, but one for both axles of what the same tyre has by its data on both. */
export function sharedByAxles(
  { front, rear }: Car,
  numbers: readonly UncertainNumber[],
): UncertainNumber[] {
  if (tyreKey(front) !== tyreKey(rear)) return [...numbers];
  const at = (path: string) => numbers.find((number) => number.path === path);
  const pairs = ofTheTyre.flatMap((field) => {
    const [one, other] = [at(`front.${field}`), at(`rear.${field}`)];
    return one && other && alike(one, other) ? [{ field, one, other }] : [];
  });
  const paired = new Set(pairs.flatMap(({ one, other }) => [one, other]));
  const single = numbers.filter((number) => !paired.has(number));
  return [...single, ...pairs.map(({ field, one, other }) => onBoth(one, other, field))];
}

const alike = (a: UncertainNumber, b: UncertainNumber) =>
  a.value === b.value && a.spread === b.spread && a.how === b.how;

const onBoth = (front: UncertainNumber, rear: UncertainNumber, path: string): UncertainNumber => ({
  ...front,
  path,
  set: (car, next) => rear.set(front.set(car, next), rear.get(car) + next - front.get(car)),
});
