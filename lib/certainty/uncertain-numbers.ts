import type { Car, Source } from "../car/car.js";
import { demoCar } from "../car/demo-car.js";
import { numberAt, type Path, shapeAt, valueAtPlace, withValueAtPlace } from "../car/file/place.js";
import type { NumberShape } from "../car/file/shape.js";
import { bestPressureRange, tyreOf } from "../car/tyres.js";
import { barRateNumber } from "./bar-rate.js";
import { isOfAxle, valueLeftOut } from "./left-out.js";
import { gripOfTheDay, pressureGauge, sharedByAxles } from "./shared-numbers.js";
import { type SpreadRow, spreadOf, spreads } from "./spreads.js";
import type { UncertainNumber } from "./uncertain-number.js";

/**
 * Every number of a car that may be off, each with how far.
 *
 * Source and spread are what the car's file says. What it says nothing of counts as estimated; the
 * workbook's own car as an honest owner with tape measure, scales, gauges and data sheets has it;
 * geometry that follows from joints as measured.
 *
 * @example
 * uncertainNumbersOf(demoCar).find(({ path }) => path === "wheelbase").value // → 2.4
 */
export function uncertainNumbersOf(car: Car): UncertainNumber[] {
  const single = Object.entries(spreads).flatMap(([key, row]) =>
    placesOf(key).flatMap((path) => numberOf(car, path, row)),
  );
  const shared = [pressureGauge, gripOfTheDay].map((one) => one(car, sourceUnsaid));
  return [...sharedByAxles(car, single), ...shared].filter(
    ({ path, spread }) => spread > 0 && !isOfNothing(car, path),
  );
}

/** Where somebody sits who is not there matters to nobody. */
function isOfNothing(car: Car, path: Path): boolean {
  const [part = ""] = path.split(".");
  return heldAt(car, `${part}.mass`) === 0;
}

/** Every place that a general one stands for. */
function placesOf(key: string): Path[] {
  const each = (text: string, mark: string, names: readonly string[]) =>
    text.includes(mark) ? names.map((name) => text.replace(mark, name)) : [text];
  return each(key, "{end}", ["front", "rear"]).flatMap((path) =>
    each(path, "{side}", ["left", "right"]),
  );
}

function numberOf(car: Car, path: Path, row: SpreadRow): UncertainNumber[] {
  if (path.endsWith(".bar.rate")) return barRateNumber(car, endOf(path), row, sourceUnsaid);
  const shape = shapeAt(path);
  const value = valueIn(car, path);
  if (value === undefined || shape?.type !== "number") return [];
  const known = car.known && Object.hasOwn(car.known, path) ? car.known[path] : undefined;
  const how = known?.how ?? sourceUnsaid(car, row, path);
  return [
    {
      path,
      value,
      how,
      spread: known?.spread ?? spreadOf(row, how, value),
      ...rangeOf(car, path, shape),
      get: (other) => heldAt(other, path) ?? value,
      set: (other, next) => withValueAtPlace({ ...other }, path, next) as unknown as Car,
    },
  ];
}

function heldAt(car: Car, path: Path): number | undefined {
  const held = valueAtPlace(car, path);
  return typeof held === "number" ? held : undefined;
}

/** Where a number is held: in the range of the file, a best pressure where the tyre's data reach. */
function rangeOf(car: Car, path: Path, { min, max }: NumberShape): { min: number; max: number } {
  if (!path.endsWith(".bestPressure")) return { min, max };
  const { minimum = min, maximum = max } = bestPressureRange(tyreOf(car[endOf(path)])) ?? {};
  return { min: minimum, max: maximum };
}

const endOf = (path: Path) => (path.startsWith("front") ? "front" : "rear");

/** What the file says, or what figures take where it says nothing. */
function valueIn(car: Car, path: Path): number | undefined {
  const [, end, field = ""] = /^(front|rear)\.(.+)$/.exec(path) ?? [];
  if (end === undefined) return numberAt(car, path)?.value;
  const axle = car[end as "front" | "rear"];
  if (!isOfAxle(axle, field)) return undefined;
  return numberAt(car, path)?.value ?? valueLeftOut(axle, endOf(path), field);
}

/** Where a number comes from of which the file says nothing. */
function sourceUnsaid(car: Car, { honest }: SpreadRow, path: Path): Source {
  if (car.name === demoCar.name) return honest;
  const fromJoints = /\.geometry\.(rollCentre|camberGain|toeGain|rollSteer)/.test(path);
  return fromJoints && car[endOf(path)].linkage !== undefined ? "measured" : "estimated";
}
