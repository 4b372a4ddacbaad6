import type { Reader } from "../reader.js";
import { formatAlike } from "../shown-range.js";

type Sentence = (value: number, reader: Reader) => string;

const small = (value: number, { units }: Reader) => formatAlike("lengthSmall", value, 0, units);
const percent = (value: number) => `${Math.max(1, Math.round(100 * value))} %`;

const pressure = (value: number, { units }: Reader) => formatAlike("pressure", value, 0, units);
const rose = (axle: string) => (value: number, reader: Reader) =>
  `The ${axle} tyres ${value < 0 ? "fell" : "rose"} by ${pressure(Math.abs(value), reader)}: begin each run with the same warm pressures, or they count as the change.`;
const notAsInFile = (axle: string) => (value: number, reader: Reader) =>
  `After the laps the ${axle} tyres have ${pressure(Math.abs(value), reader)} ${value > 0 ? "more" : "less"} than in the file: what the model says is of the file’s.`;

/** What is told beside the numbers of a form, by its code. */
const remarks: Readonly<Record<string, Sentence>> = {
  springsTaken: (value, reader) =>
    `Springs that move would make it ${small(value, reader)} too great: taken off, by the rates in the file.`,
  tyresTaken: (value, reader) =>
    `Tyres that give would make it ${small(value, reader)} too great: taken off, by their rate in the file.`,
  weightDiffers: (value, reader) =>
    `The file has ${formatAlike("mass", value, 0, reader.units)} on that axle when level: put the four scales in first.`,
  scatters: () =>
    "The lines lie further off a straight line than the tools are off: friction, or one wrong reading. The spread is widened.",
  fits: () => "Spring rate and motion ratio of the file fit what was measured.",
  misfit: (value) =>
    `Spring rate × motion ratio² of the file is ${Math.abs(value).toFixed(1)} spreads too ${value > 0 ? "stiff" : "soft"}: one of them is wrong. Write the one that you trust less.`,
  tyreSofter: () =>
    "The tyre by its data is softer than what was measured: look at the tyre’s rate, or at the readings.",
  noSplit: () =>
    "Falls say the total, never its split: a stiff body leans alike at both ends. Four scales, without the weight and with it, say what each end holds.",
  ratioChanges: () =>
    "The ratio changes with travel: the one at the first line is what the file takes.",
  ratioStraight: () => "No change of the ratio with travel can be seen.",
  fewSteps: () => "Four lines or more would show whether it changes with travel.",
  triesLost: (value) => `In ${percent(value)} of the tries no such links can be put together.`,
  followsLinkage: () =>
    "The car’s file has joints of this axle, from which its geometry follows: change them there.",
  printOnly: () =>
    "The print goes into no field: it shows whether the tyre’s data are like this tyre. Near 1 the air carries the load, above it the tyre’s own walls help.",
  frontRose: rose("front"),
  rearRose: rose("rear"),
  frontNotAsInFile: notAsInFile("front"),
  rearNotAsInFile: notAsInFile("rear"),
  modelLap: (value) => `At its limit the model drives a lap in ${value.toFixed(2)} s.`,
  noLaps: () => "No laps as fast as it goes yet.",
  fewLaps: () => "One run of each needs two clean laps at least.",
  fewSteady: () => "A gradient needs the steering wheel’s size and three steady laps.",
  paired: () => "Run is held against run: what drifts evenly in the day is in both.",
  unpaired: () =>
    "With one run each, what drifts in the day counts as the change: drive two of each or more.",
  isMeasured: (value) =>
    `The change is measured: chance does it less than once in ${Math.floor(1 / Math.max(value, 1e-3))}.`,
  notMeasured: (value) =>
    Number.isFinite(value)
      ? `Not measured: it may be nothing. ${value} laps more of each, in runs of three, would show a change as large as this four times in five.`
      : "Not measured: it may be nothing. A change as small as this takes more laps than a day has.",
};

/** A remark as a sentence. */
export const remarkInWords = (code: string, value: number | undefined, reader: Reader): string =>
  (remarks[code] ?? (() => code))(value ?? 0, reader);
