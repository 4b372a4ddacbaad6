import type { Parameter, Quantity } from "@rollbook/lib";
import type { Mark, Point } from "./marks.js";

export type Interval = readonly [from: number, to: number];

/** A fixed axis: it does not move while a slider does. */
export interface Axis {
  readonly label: string;
  readonly quantity: Quantity;
  /** SI. */
  readonly domain: Interval;
  /** Names in place of numbers, each at its SI position. */
  readonly names?: readonly (readonly [position: number, name: string])[];
}

/** A panel with axes. */
export interface Chart<Values> {
  readonly x: Axis;
  readonly y: Axis;
  readonly draw: (values: Values) => readonly Mark[];
}

/** A panel to scale, in metres, without axes. */
export interface Drawing<Values> {
  readonly view: { readonly x: Interval; readonly y: Interval };
  /** What the drawing shows, for those who cannot see it. */
  readonly label: string;
  readonly draw: (values: Values) => readonly Mark[];
  /** What a reader can take hold of and pull: the input that follows, and the point that it moves. */
  readonly hold?: { readonly input: keyof Values & string; readonly at: (values: Values) => Point };
}

export type Panel<Values> = Chart<Values> | Drawing<Values>;

export type Inputs = Readonly<Record<string, Parameter>>;

export type ValuesOf<I extends Inputs> = { readonly [K in keyof I]: number };

/** Something to do in a figure before it is explained; it ticks itself. */
export interface Look<I extends Inputs> {
  /** What to do, as a sentence: "Take both bars off." */
  readonly ask: string;
  /** Whether these values are that. Where they are so from the start, nothing is asked for. */
  readonly done: (values: ValuesOf<I>, inputs: I) => boolean;
}

export interface FigureSpec<I extends Inputs> {
  /** Unique in the chapter; the link to the figure. */
  readonly id: string;
  readonly title: string;
  readonly inputs: I;
  readonly panels: readonly Panel<ValuesOf<I>>[];
  /** The result in one sentence. */
  readonly says: (values: ValuesOf<I>) => string;
  /** The prediction that unlocks the sliders. */
  readonly after?: string;
  /** Small, its words beside its picture, for a step of an explanation; or its two or three pictures abreast. */
  readonly layout?: "beside" | "pair" | "row";
  /** Two or three things to do after that prediction; then, and after a sentence of the reader's, its reasons open. */
  readonly looks?: readonly Look<I>[];
  /** The input, in seconds, that the reader can let run. */
  readonly plays?: keyof I & string;
}

export interface WorkedSpec {
  /** Unique in the chapter; the name under which a test pins the value. */
  readonly id: string;
  readonly label: string;
  /** SI. */
  readonly value: number;
  readonly quantity: Quantity;
  /** Digits after the point in the shown unit. */
  readonly decimals: number;
  /** The sum with its numbers filled in. */
  readonly how?: string;
}

export interface Choice {
  readonly text: string;
  /** Why this choice is right or wrong. */
  readonly because: string;
}

/** What a drawn prediction looks like: what the reader expects, and what the model says once it may be told. */
export interface Drawn {
  readonly expected: number;
  readonly truth?: number;
}

/** A quantity to be drawn before the figure opens: pulled along the picture, or set by its slider. */
export interface Sketch {
  /** Its name, range and where it starts. */
  readonly input: Parameter;
  /** What the model says, SI. */
  readonly truth: number;
  /** It is pulled by its `hold`. */
  readonly panel: Drawing<Drawn> & { readonly hold: { readonly input: "expected" } };
}

export interface PredictSpec {
  readonly id: string;
  readonly ask: string;
  readonly choices: readonly Choice[];
  /** Index of the right choice, computed from the model. */
  readonly answer: number;
  readonly sketch?: Sketch;
}

/** A wrong answer that a likely slip leads to. */
export interface Slip {
  /** SI, computed. */
  readonly value: number;
  /** The slip, said to whoever made it. */
  readonly because: string;
}

export interface ExerciseSpec {
  readonly id: string;
  readonly ask: string;
  /** SI, computed. */
  readonly answer: number;
  readonly quantity: Quantity;
  /** Digits after the point in the shown unit. */
  readonly decimals: number;
  /** Allowed relative error; 0.02 where absent. */
  readonly tolerance?: number;
  readonly hint: string;
  readonly solution: string;
  readonly slips?: readonly Slip[];
}

/** The values that a figure starts from. */
export function startValues<I extends Inputs>(inputs: I): ValuesOf<I> {
  const entries = Object.entries(inputs).map(([key, input]) => [key, input.start]);
  return Object.fromEntries(entries) as ValuesOf<I>;
}

const END = 0.03; // of its range: so near to an end a slider is at it

/** Whether a value is at the upper end of its slider. */
export const isMost = (value: number, { min, max }: Parameter): boolean =>
  value >= max - END * (max - min);

/** Whether a value is at the lower end of its slider. */
export const isLeast = (value: number, { min, max }: Parameter): boolean =>
  value <= min + END * (max - min);

/** What a figure asks for that is not so from the start. */
export const looksLeft = <const I extends Inputs>({
  looks = [],
  inputs,
}: FigureSpec<I>): Look<I>[] => looks.filter(({ done }) => !done(startValues(inputs), inputs));

/**
 * The parameter with another starting value, name or range.
 *
 * A range too narrow for the starting value is made wider by whole steps: the value is a car's own.
 */
export function from(parameter: Parameter, changes: Partial<Parameter>): Parameter {
  const asked = { ...parameter, ...changes };
  const { min, max, step, start } = asked;
  const steps = (distance: number) => Math.max(0, Math.ceil(distance / step - 1e-9)) * step;
  return { ...asked, min: min - steps(min - start), max: max + steps(start - max) };
}
