/** What edited cells give back. It comes from code that nobody has read, so everything is checked. */
import { type Quantity, quantities } from "@rollbook/lib";
import * as v from "valibot";
import { tones } from "../../cells/marks.js";

const longestReply = 4_000_000; // characters

const text = v.pipe(v.string(), v.maxLength(4_000));
const number = v.pipe(v.number(), v.finite());
const index = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(10_000));
const decimals = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(9));
const quantity = v.picklist(Object.keys(quantities) as Quantity[]);

/** JSON has no word for "not a number", which leaves a gap in a curve. */
const coordinate = v.pipe(
  v.nullable(v.number()),
  v.transform((value) => value ?? Number.NaN),
);
const point = v.tuple([coordinate, coordinate]);
const points = v.pipe(v.array(point), v.maxLength(20_000));
const tone = v.picklist(tones);
const side = v.picklist(["above", "below", "left", "right", "middle"] as const);
const weight = v.picklist(["fine", "normal", "heavy"] as const);

const mark = v.variant("kind", [
  v.object({ kind: v.literal("line"), points, tone, label: text, name: text, weight, side }),
  v.object({ kind: v.literal("area"), points, tone, name: text }),
  v.object({ kind: v.literal("dot"), at: point, tone, label: text, name: text, side }),
  v.object({ kind: v.literal("arrow"), from: point, to: point, tone, label: text, side }),
  v.object({ kind: v.literal("label"), at: point, text, tone, side }),
]);
const marks = v.pipe(v.array(mark), v.maxLength(2_000));

const interval = v.pipe(
  v.tuple([number, number]),
  v.check(([from, to]) => from !== to, "goes from a number to itself"),
);
const axis = v.pipe(
  v.object({
    label: text,
    quantity,
    domain: interval,
    names: v.optional(v.pipe(v.array(v.tuple([number, text])), v.maxLength(50))),
  }),
  v.transform(({ names, ...rest }) => (names ? { ...rest, names } : rest)),
);
const chart = v.object({ x: axis, y: axis });
const drawing = v.object({
  view: v.pipe(
    v.object({ x: interval, y: interval }),
    v.check(({ x, y }) => {
      const ratio = (y[1] - y[0]) / (x[1] - x[0]);
      return x[1] > x[0] && ratio > 0.02 && ratio < 5;
    }, "is too flat, too tall or upside down"),
  ),
  label: text,
});

const input = v.pipe(
  v.object({
    name: text,
    symbol: v.optional(text, ""),
    quantity,
    min: number,
    max: number,
    step: number,
    start: number,
    decimals,
    names: v.exactOptional(v.array(text)),
  }),
  v.check(({ min, max, step }) => min < max && step > 0, "needs min below max and a step above 0"),
);
const inputs = v.pipe(
  v.record(v.pipe(v.string(), v.maxLength(100)), input),
  v.check((all) => Object.keys(all).length <= 20, "has more than 20 inputs"),
);

const id = v.pipe(v.string(), v.maxLength(200));
const figure = v.object({
  kind: v.literal("figure"),
  id,
  title: text,
  inputs,
  panels: v.pipe(v.array(v.union([chart, drawing])), v.minLength(1), v.maxLength(8)),
});
const worked = v.pipe(
  v.object({
    kind: v.literal("worked"),
    id,
    label: text,
    value: number,
    quantity,
    decimals,
    how: v.optional(text, ""),
  }),
);
const predict = v.pipe(
  v.object({
    kind: v.literal("predict"),
    id,
    ask: text,
    choices: v.pipe(v.array(v.object({ text, because: text })), v.minLength(2), v.maxLength(6)),
    answer: index,
  }),
  v.check(({ choices, answer }) => answer < choices.length, "has no such answer"),
);
const exercise = v.object({
  kind: v.literal("exercise"),
  id,
  ask: text,
  answer: number,
  quantity,
  decimals,
  hint: text,
  solution: text,
});
const output = v.variant("kind", [figure, worked, predict, exercise]);

const fault = v.object({ message: text, stack: v.pipe(v.string(), v.maxLength(50_000)) });
const reply = v.variant("kind", [
  v.object({ kind: v.literal("at"), cell: index }),
  v.object({
    kind: v.literal("ran"),
    outputs: v.pipe(v.array(v.object({ cell: index, output: v.unknown() })), v.maxLength(500)),
    fault: v.optional(fault),
  }),
  v.object({ kind: v.literal("drawn"), panels: v.array(marks), says: text }),
  v.object({ kind: v.literal("failed"), fault }),
]);

export type FigureOutput = v.InferOutput<typeof figure>;
export type Output = v.InferOutput<typeof output>;
export type Reply = v.InferOutput<typeof reply>;

/** What the runtime sends of an error. */
export type Fault = v.InferOutput<typeof fault>;

/** A reply as data; undefined where it is none of the known. */
export function replyFrom(said: unknown): Reply | undefined {
  if (typeof said !== "string" || said.length > longestReply) return undefined;
  try {
    const parsed = v.safeParse(reply, JSON.parse(said));
    return parsed.success ? parsed.output : undefined;
  } catch {
    return undefined;
  }
}

/** A result that can be shown, or a sentence on why it cannot. */
export function outputFrom(given: unknown): Output | string {
  const parsed = v.safeParse(output, given, { abortEarly: true });
  if (parsed.success) return parsed.output;
  const [issue] = parsed.issues;
  const path = v.getDotPath(issue)?.slice(0, 200);
  return path ? `${path}: ${issue.message}` : issue.message;
}
