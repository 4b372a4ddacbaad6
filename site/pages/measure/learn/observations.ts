import {
  apparentRollStiffnessOf,
  axleWeightsOf,
  type Car,
  handlingCarOf,
  inQuadrature,
  type Measured,
  numberAt,
  type Observation,
  predictedCircle,
  predictedRollGradient,
  totalMassOf,
  tyreStiffnessOf,
  wheelRateOf,
} from "@rollbook/lib";
import { turned } from "../model/circle-change.js";
import { meanAt, type Sheet } from "../model/input.js";
import type { Found } from "../model/result.js";
import { resultOf } from "../model/results.js";
import { type MeasurementId, type Spec, specOf, specs } from "../model/spec.js";

type End = "front" | "rear";

/** What a form found, and where. */
interface Read {
  readonly id: MeasurementId;
  readonly ofAxle: boolean;
  readonly end: End;
  readonly found: readonly Found[];
}

/** How far the model itself may be off of what a car does on the road, as a share: common practice, no source. */
const MODEL = 0.03;
const MODELLED = ["limit", "rollGradient"];

/**
 * Readings from which a car can learn: those whose numbers are not in its file already.
 *
 * @param car - as it was before it learned anything from them
 */
export function observationsOf(car: Car, sheet: Sheet): Observation[] {
  const reads = specs.flatMap((spec) =>
    endsOf(spec).map((end) => ({
      ...{ id: spec.id, ofAxle: spec.ofAxle, end },
      found: resultOf({ car, sheet, form: { spec, end } }).found ?? [],
    })),
  );
  const radius = meanAt(sheet, { spec: specOf("circle"), end: "front" }, "radius", "radiusTape");
  return reads.flatMap((read) => {
    if (read.found.some((found) => isInFile(car, found))) return [];
    return read.found.flatMap((found) => observation(read, found, sheet, radius?.value) ?? []);
  });
}

const endsOf = ({ ofAxle }: Spec): readonly End[] => (ofAxle ? ["front", "rear"] : ["front"]);

/** Whether a form's number was written into the car as it stands. */
function isInFile(car: Car, { path, value }: Found): boolean {
  if (path === undefined || car.known?.[path]?.how !== "measured") return false;
  const now = numberAt(car, path)?.value;
  return now !== undefined && Math.abs(now - value) <= 1e-5 * Math.abs(value);
}

/** What the model says of a found number, for any car; nothing of those that follow from others here. */
function observation(
  read: Read,
  found: Found,
  sheet: Sheet,
  radius: number | undefined,
): Observation | undefined {
  const of =
    saidOf(read.end, sheet, radius)[found.key] ?? (isOwn(found) ? ownNumber(found) : undefined);
  if (of === undefined || !(found.spread > 0)) return undefined;
  const id = `${read.id}.${read.ofAxle ? `${read.end}.` : ""}${found.key}`;
  return { id, of, measured: withModel(found) };
}

/** Numbers that a form reads for themselves; those of the ride rate follow from it. */
const isOwn = ({ path, key }: Found): boolean =>
  path !== undefined && !/^(motionRatioBySpring|springRateByRatio|bodyHeight)$/.test(key);

const ownNumber =
  ({ path = "", predicted = 0 }: Found) =>
  (car: Car): number =>
    numberAt(car, path)?.value ?? predicted;

const withModel = ({ key, value, spread }: Found): Measured => ({
  value,
  spread: MODELLED.includes(key) ? inQuadrature(spread, MODEL * value) : spread,
});

const saidOf = (
  end: End,
  sheet: Sheet,
  radius: number | undefined,
): Readonly<Record<string, ((car: Car) => number) | undefined>> => ({
  rideRate: (car) => {
    const tyre = tyreStiffnessOf(car[end], axleWeightsOf(car)[end] / 2);
    return 1 / (1 / wheelRateOf(car[end]) + 1 / tyre); // series law
  },
  apparent: apparentRollStiffnessOf,
  rollGradient: predictedRollGradient,
  height: (car) => totalMassOf(car).height,
  limit:
    radius === undefined
      ? undefined
      : (car) => predictedCircle(turned(handlingCarOf(car), sheet), radius).limit,
  gradient:
    radius === undefined
      ? undefined
      : (car) => predictedCircle(turned(handlingCarOf(car), sheet), radius).gradient,
});
