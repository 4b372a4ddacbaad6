import {
  type Changed,
  type Difference,
  type MeasuredChange,
  NINE_IN_TEN,
  type Quantity,
} from "@rollbook/lib";
import { plusMinus } from "../measure/plus-minus.js";
import type { Reader } from "../reader.js";
import { formatAlike } from "../shown-range.js";

/** What is said of what was measured in runs. */
export const measured = {
  heading: "Change by change: felt, predicted, measured",
  columns: { what: "What", felt: "Felt", predicted: "Predicted", measured: "Measured" },
  rows: {
    balance: "Balance",
    circle: "Circle",
    lapTime: "Lap time",
    rollGradient: "Roll",
  },
  points: (points: string) => `${points} points`,
  none: "",
  nothing:
    "Nothing was measured on this set-up and the one before yet: laps of a circle or a roll gradient below, lap times in the log.",
  isMeasured: (byChance: number) =>
    `measured: chance does it less than once in ${Math.floor(1 / Math.max(byChance, 1e-3))}`,
  notMeasured: "not measured: it may be nothing",
  more: (laps: number) => `${laps} laps more of each would show it`,
  tooMany: "it takes more laps than a day has",
  drift: (drift: string) =>
    `the first set-up was driven again: ${drift} from run to run is drift, and taken off`,
  unpaired: "one run each: what drifts in the day counts as the change",
  own: "Balance: the middle of all places and drivers, above 0 where the front slides earlier; no gauge measures it. Circle: the hardest turn. Laps are held against those of the same driver only, on all runs of the day with the one set-up and the other; where one of them was driven again, what drifted between is told from the change.",
  write: "Write down what was measured",
  driver: "Who drove",
  radius: "Radius of the circle to the middle between the wheel tracks",
  laps: "Clean laps of the circle, as fast as it goes, in s",
  lapsNote: "divided by spaces",
  lapsFault: (text: string) => `“${text}” is no lap of a circle; write seconds from 2 to 600.`,
  roll: "Roll gradient, such as the phone that rides along tells it",
  rollWithin: "± nine times in ten",
  range: (what: string, from: string, to: string) => `${what} takes ${from} to ${to}.`,
  empty: "Write laps of the circle, or a roll gradient with how far it may be off.",
  keep: "Keep it in the log",
  kept: (run: number) => `It is in the log, with run ${run}.`,
  filed: (driver: string, parts: string) => `${driver === "" ? "" : `${driver}: `}${parts}`,
  circleRadius: (radius: string) => `circle of ${radius}`,
  circleLaps: (laps: string) => `laps in s: ${laps}`,
  rollFiled: (roll: string) => `roll ${roll}`,
  line: (what: string, amount: string, model: string, told: string) =>
    `${what}: ${amount}${model === "" ? "" : ` (the model says ${model})`}; ${told}.`,
  summary: "The day, change by change",
  summaryNone: "No change of this day was driven yet with something felt or measured.",
  run: (run: number, whose: string, changes: string) =>
    `Run ${run}${whose === "" ? "" : `, ${whose}`}: ${changes === "" ? "nothing changed" : changes}`,
  confounded: "Several things at once: nobody can say which of them it was.",
} as const;

/** A change of a number with how far it may be off, with its sign: "+0.13 ± 0.20 m/s²". */
export function changedAmount(
  { value, within }: Changed,
  quantity: Quantity,
  decimals: number,
  reader: Reader,
): string {
  const text = plusMinus({ value, spread: within / NINE_IN_TEN }, quantity, decimals, reader);
  const [shown = ""] = text.split(" ± ");
  return value > 0 && /[1-9]/.test(shown) ? `+${text}` : text;
}

/** The figures that are measured, with their quantity and digits in the metric unit. */
export const measuredFigures = [
  ["circle", "acceleration", 2],
  ["lapTime", "time", 2],
  ["rollGradient", "rollGradient", 2],
] as const satisfies readonly (readonly [keyof MeasuredChange, Quantity, number])[];

/** A number with its sign, such as "+0.11 m/s²". */
export function signedAmount(quantity: Quantity, value: number, decimals: number, reader: Reader) {
  const text = formatAlike(quantity, value, decimals, reader.units);
  return value > 0 && /[1-9]/.test(text) ? `+${text}` : text;
}

/** What was measured of a change, a sentence for each figure. */
export const measuredInWords = (found: MeasuredChange, reader: Reader): string[] =>
  measuredFigures.flatMap(([key, quantity, decimals]) => {
    const one = found[key];
    if (one === undefined) return [];
    const predicted = "predicted" in one ? one.predicted : undefined;
    const model =
      predicted === undefined ? "" : signedAmount(quantity, predicted, decimals, reader);
    const amount = changedAmount(one.difference, quantity, decimals, reader);
    const more = beside(one.difference, [quantity, decimals], reader);
    const told = [whetherMeasured(one.difference), ...more].join("; ");
    return [measured.line(measured.rows[key], amount, model, told)];
  });

/** Whether it was measured. */
export const whetherMeasured = ({ measured: isMeasured, byChance }: Changed): string =>
  isMeasured ? measured.isMeasured(byChance) : measured.notMeasured;

/** What more laps would tell, and what drifted. */
function beside(
  { measured: isMeasured, lapsMore, paired, drift }: Changed & Partial<Difference>,
  [quantity, decimals]: readonly [Quantity, number],
  reader: Reader,
): string[] {
  const laps =
    isMeasured || lapsMore === undefined
      ? []
      : [Number.isFinite(lapsMore) ? measured.more(lapsMore) : measured.tooMany];
  const drifted = drift && measured.drift(changedAmount(drift, quantity, decimals, reader));
  return [...laps, ...(drifted ? [drifted] : []), ...(paired === false ? [measured.unpaired] : [])];
}

/** What stands below the table of one change. */
export const besideInWords = (found: MeasuredChange, reader: Reader): string[] =>
  measuredFigures.flatMap(([key, quantity, decimals]) => {
    const told = found[key] && beside(found[key].difference, [quantity, decimals], reader);
    return told && told.length > 0 ? [`${measured.rows[key]}: ${told.join("; ")}.`] : [];
  });
