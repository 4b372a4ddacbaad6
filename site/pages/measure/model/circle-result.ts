import {
  type Car,
  type Circle,
  circleDifference,
  circleGradient,
  circleLimit,
  type HandlingCar,
  meanOf,
  NINE_IN_TEN,
  orUndefined,
  type PredictedCircle,
  predictedCircle,
} from "@rollbook/lib";
import { predictedShift } from "./circle-change.js";
import { runsOf, type Sheet } from "./input.js";
import type { Found, Remark, Result } from "./result.js";
import { lapField } from "./spec.js";

/** What was read on a circle. */
export interface CircleRead {
  readonly car: Car;
  readonly sheet: Sheet;
  /** Nothing where the car cannot stand. */
  readonly handling: HandlingCar | undefined;
  readonly circle: Circle;
  /** The steering wheel: m across, and of one reading of its mark. */
  readonly rim: { readonly diameter: number; readonly tape: number } | undefined;
  /** s, and m along the rim, of laps at a steady speed. */
  readonly steady: readonly (readonly number[])[];
  /** Pa, the mean of an axle's readings; nothing where none was read. */
  readonly pressure: (end: "front" | "rear", when: "before" | "after") => number | undefined;
}

type Part = { readonly found: readonly Found[]; readonly remarks: readonly Remark[] };

/** What laps of a circle come to: limit, difference of two set-ups, gradient. */
export function circleFound(read: CircleRead): Result {
  const { sheet, handling, circle } = read;
  const [before, after] = [runsOf(sheet, "before", lapField), runsOf(sheet, "after", lapField)];
  const predicted = handling && orUndefined(() => predictedCircle(handling, circle.radius.value));
  const parts = [
    limitOf(circle, before.flat(), predicted),
    differenceOf(circle, before, after, () => shiftOf(read)),
    gradientOf(read, predicted),
    { found: [], remarks: pressureRemarks(read) },
  ];
  return {
    found: parts.flatMap(({ found }) => found),
    remarks: parts.flatMap(({ remarks }) => remarks),
  };
}

/** What the model says of the change that was driven. */
const shiftOf = ({ car, circle, sheet }: CircleRead): number | undefined =>
  predictedShift(car, circle.radius.value, sheet);

const AS_IN_FILE = 5e3; // Pa that tyres and file may differ by unsaid: common practice, no source

/** How far pressures rose, and whether the tyres that were driven are those of the file. */
function pressureRemarks({ car, pressure }: CircleRead): Remark[] {
  return (["front", "rear"] as const).flatMap((end): Remark[] => {
    const [before, after] = [pressure(end, "before"), pressure(end, "after")];
    const off = after === undefined ? 0 : after - meanOf(car[end].tyre.pressure);
    return [
      ...(before !== undefined && after !== undefined
        ? [{ code: `${end}Rose`, value: after - before }]
        : []),
      ...(Math.abs(off) > AS_IN_FILE ? [{ code: `${end}NotAsInFile`, value: off }] : []),
    ];
  });
}

function limitOf(circle: Circle, laps: readonly number[], predicted?: PredictedCircle): Part {
  const model = predicted && { predicted: predicted.limit };
  const shown = { key: "limit", quantity: "acceleration", decimals: 2, ...model } as const;
  const lapTime: Remark[] = predicted ? [{ code: "modelLap", value: predicted.lapTime }] : [];
  if (laps.length === 0) return { found: [], remarks: [{ code: "noLaps" }, ...lapTime] };
  const { value, spread } = circleLimit(circle, laps);
  return { found: [{ ...shown, value, spread }], remarks: lapTime };
}

function differenceOf(
  circle: Circle,
  before: readonly (readonly number[])[],
  after: readonly (readonly number[])[],
  byModel: () => number | undefined,
): Part {
  const pairs = before.flatMap((laps, i) => {
    const beside = after[i] ?? [];
    return laps.length > 0 && beside.length > 0 ? [{ laps, beside }] : [];
  });
  if (pairs.length === 0) return { found: [], remarks: [] };
  if (
    pairs.length === 1 &&
    pairs.some(({ laps, beside }) => Math.min(laps.length, beside.length) < 2)
  )
    return { found: [], remarks: [{ code: "fewLaps" }] };
  const told = circleDifference(circle, {
    before: pairs.map(({ laps }) => laps),
    after: pairs.map(({ beside }) => beside),
  });
  const spread = told.within / NINE_IN_TEN;
  const found = { key: "difference", value: told.value, spread, quantity: "acceleration" } as const;
  const verdict: Remark = told.measured
    ? { code: "isMeasured", value: told.byChance }
    : { code: "notMeasured", value: told.lapsMore };
  const predicted = byModel();
  return {
    found: [{ ...found, decimals: 2, ...(predicted !== undefined && { predicted }) }],
    remarks: [verdict, { code: told.paired ? "paired" : "unpaired" }],
  };
}

function gradientOf({ car, circle, rim, steady }: CircleRead, predicted?: PredictedCircle): Part {
  if (steady.length === 0) return { found: [], remarks: [] };
  if (rim === undefined || steady.length < 3)
    return { found: [], remarks: [{ code: "fewSteady" }] };
  const radians = (along: number) => (2 * along) / rim.diameter;
  const laps = steady.map(([time = 0, mark = 0]) => ({ time, rim: radians(mark) }));
  const told = circleGradient(car, circle, laps, radians(rim.tape));
  const gradient = { key: "gradient", quantity: "understeerGradient", decimals: 2 } as const;
  const ratio = {
    key: "steeringRatio",
    quantity: "ratio",
    decimals: 1,
    path: "steeringRatio",
  } as const;
  return {
    found: [
      { ...gradient, ...told.gradient, ...(predicted && { predicted: predicted.gradient }) },
      ...(told.steeringRatio
        ? [{ ...ratio, ...told.steeringRatio, predicted: car.steeringRatio }]
        : []),
    ],
    remarks: told.byChance < 0.05 ? [{ code: "scatters" }] : [],
  };
}
