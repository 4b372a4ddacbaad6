import { fromRepeats, type Measured } from "@rollbook/lib";
import { numberFrom } from "../../../say/typed-number.js";
import type { Typed } from "../../../store/car-draft.js";
import { type Field, MOST, type Spec } from "./spec.js";

/** Everything typed for one car, by its place: measurement, axle where it has one, field, which reading. */
export type Sheet = Readonly<Record<string, Typed>>;

/** Which form of a sheet: a measurement, of an axle where it has one. */
export interface FormPlace {
  readonly spec: Spec;
  readonly end: "front" | "rear";
}

/** Where the places of a form begin. */
export const formAt = ({ spec, end }: FormPlace) => (spec.ofAxle ? `${spec.id}.${end}` : spec.id);

export const readingAt = (form: FormPlace, key: string, i: number) => `${formAt(form)}.${key}.${i}`;
export const toolAt = ({ spec }: FormPlace, key: string) => `${spec.id}.tool.${key}`;
export const choiceAt = (form: FormPlace, key: string) => `${formAt(form)}.choice.${key}`;
export const endAt = (spec: Spec) => `${spec.id}.end`;
/** Where it is kept which change was driven on the circle. */
export const changeAt = "circle.choice.change";
export const lapAt = (side: "before" | "after", run: number, lap: number) =>
  `circle.${side}.${run}.${lap}`;

const isBlank = (typed: Typed | undefined) => typed === undefined || typed.text.trim() === "";

/** What was typed, SI: nothing where it is blank, NaN where it is no number or out of its range. */
export function readTyped(
  typed: Typed | undefined,
  { quantity, min, max }: Field,
): number | undefined {
  if (typed === undefined || isBlank(typed)) return undefined;
  const value = numberFrom(typed.text, quantity, typed.units) ?? Number.NaN;
  const hair = 1e-9 * (max - min);
  return value >= min - hair && value <= max + hair ? value : Number.NaN;
}

/** The same of a place. */
export const readAt = (sheet: Sheet, place: string, field: Field): number | undefined =>
  readTyped(sheet[place], field);

/** How many boxes to show: those in use and one more, as far as there is room. */
export function boxesFor(sheet: Sheet, placeOf: (i: number) => string, most: number): number {
  let last = -1;
  for (let i = 0; i < most; i++) if (!isBlank(sheet[placeOf(i)])) last = i;
  return Math.min(most, last + 2);
}

/** The readings of a field that are numbers in its range. */
export function readingsOf(sheet: Sheet, form: FormPlace, field: Field): number[] {
  return Array.from({ length: MOST.readings }, (_, i) =>
    readAt(sheet, readingAt(form, field.key, i), field),
  ).filter(isSound);
}

const isSound = (value: number | undefined): value is number =>
  value !== undefined && !Number.isNaN(value);

/** How far a tool may be off. */
export function toolOf(sheet: Sheet, form: FormPlace, key: string): number {
  const tool = form.spec.tools.find((one) => one.key === key);
  if (tool === undefined) return 0;
  const typed = readAt(sheet, toolAt(form, key), tool);
  return isSound(typed) ? typed : tool.usual;
}

/** The mean of a field's readings, with the doubt of its tool; nothing without any. */
export function meanAt(
  sheet: Sheet,
  form: FormPlace,
  key: string,
  tool: string,
): Measured | undefined {
  const field = form.spec.fields.find((one) => one.key === key);
  const values = field ? readingsOf(sheet, form, field) : [];
  if (values.length === 0) return undefined;
  return fromRepeats({ values, tool: toolOf(sheet, form, tool) });
}

/** The lines that are complete and sound, SI. */
export function linesOf(sheet: Sheet, form: FormPlace): number[][] {
  const { columns } = form.spec;
  return Array.from({ length: MOST.lines }, (_, i) =>
    columns.map((column) => readAt(sheet, readingAt(form, column.key, i), column)),
  ).filter((line): line is number[] => line.length > 0 && line.every(isSound));
}

/** The answer to a question with a few. */
export function choiceOf(sheet: Sheet, form: FormPlace, key: string): string {
  const values = form.spec.choices.find((choice) => choice.key === key)?.values ?? [];
  const typed = sheet[choiceAt(form, key)]?.text ?? "";
  return values.includes(typed) ? typed : (values[0] ?? "");
}

/** The laps of every run of a set-up, as far as runs have any. */
export function runsOf(sheet: Sheet, side: "before" | "after", lap: Field): number[][] {
  return Array.from({ length: MOST.runs }, (_, run) =>
    Array.from({ length: MOST.laps }, (_, i) => readAt(sheet, lapAt(side, run, i), lap)).filter(
      isSound,
    ),
  );
}
