import { decimalsOfStep } from "../say/shown-range.js";
import { toShown } from "../say/units.js";
import { calmPlaces } from "./domain.js";
import type { AreaMark, DotMark, LineMark, Mark, Point, Tone } from "./marks.js";
import type { Table } from "./numbers.js";
import { format, spell } from "./reader.js";
import type { Axis, Chart, Interval } from "./spec.js";
import { words } from "./words.js";

const none = "–";

/** Digits after the point that tell the ends of a step along an axis apart. */
function decimalsOf({ quantity }: Axis, [from, to]: Interval): number {
  const step = Math.abs(toShown(quantity, to) - toShown(quantity, from));
  return Math.min(4, decimalsOfStep(step));
}

const hundredth = ([from, to]: Interval): Interval => [from, from + (to - from) / 100];

/** A value along an axis: the nearest name where it has names, else the number with its unit. */
function told(
  axis: Axis,
  value: number,
  decimals = decimalsOf(axis, hundredth(axis.domain)),
): string {
  const [first, ...others] = axis.names ?? [];
  if (!first) return format(axis.quantity, value, decimals);
  const [, name] = others.reduce(
    (best, next) => (Math.abs(next[0] - value) < Math.abs(best[0] - value) ? next : best),
    first,
  );
  return spell(name);
}

const ends = (values: readonly number[]): Interval => [Math.min(...values), Math.max(...values)];

/** Its name, or that of the axle or side whose colour it has. */
const nameOf = ({ name, tone }: { name: string; tone: Tone }): string =>
  spell(name || words.tones[tone]);

/** Lines from left to right that say how one quantity follows another; lines that only mark a place do not. */
function isCurve({ points, name }: LineMark, { x: { domain } }: Chart<never>): boolean {
  const along = points.filter((point) => point.every(Number.isFinite)).map(([x]) => x);
  const [from, to] = ends(along);
  const rising = along.every((x, i) => i === 0 || x > (along[i - 1] ?? x));
  return rising && to - from > (domain[1] - domain[0]) / 10 && (along.length > 2 || name !== "");
}

/** The height of a curve over a place on the axis, NaN beside it. */
function heightAt(points: readonly Point[], x: number): number {
  for (let i = 1; i < points.length; i += 1) {
    const [[x0, y0], [x1, y1]] = [points[i - 1], points[i]] as [Point, Point];
    if (x >= x0 && x <= x1) return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  return Number.NaN;
}

function tableOfCurves(chart: Chart<never>, marks: readonly Mark[]): Table[] {
  const curves = marks
    .filter((mark) => mark.kind === "line")
    .filter((mark) => isCurve(mark, chart));
  const { x, y } = chart;
  if (x.names || y.names || curves.length === 0) return [];
  const places = calmPlaces(x.quantity, x.domain);
  const decimals = decimalsOf(x, [places[0] ?? 0, places[1] ?? 1]);
  const rows = places.flatMap((place) => {
    const heights = curves.map(({ points }) => heightAt(points, place));
    if (!heights.some(Number.isFinite)) return [];
    const cells = heights.map((height) => (Number.isFinite(height) ? told(y, height) : none));
    return [[told(x, place, decimals), ...cells]];
  });
  const names = curves.length === 1 && !curves[0]?.name ? [spell(y.label)] : curves.map(nameOf);
  return [{ head: [spell(x.label), ...names], rows }];
}

/** From where to where a bar reaches; one that stands on zero, or has no length, by its end alone. */
function reach(axis: Axis, [from, to]: Interval): string {
  const small = (axis.domain[1] - axis.domain[0]) * 1e-6;
  if (Math.abs(from) <= small || to - from <= small) return told(axis, to);
  if (Math.abs(to) <= small) return told(axis, from);
  return words.fromTo(told(axis, from), told(axis, to));
}

/** A bar, or a named stroke across the place of one. */
const isBar = (mark: Mark): mark is AreaMark | LineMark =>
  mark.kind === "area" || (mark.kind === "line" && mark.name !== "");

/** Bars over the names of one axis: a row for each name, a column for each kind of bar. */
function tableOfBars({ x, y }: Chart<never>, marks: readonly Mark[]): Table[] {
  const [names, values, i] = x.names ? ([x, y, 0] as const) : ([y, x, 1] as const);
  const bars = marks.filter(isBar);
  if (!names.names || bars.length === 0) return [];
  const found = bars.map((bar) => {
    const [from, to] = ends(bar.points.map((point) => point[i]));
    return {
      row: told(names, (from + to) / 2),
      kind: nameOf(bar),
      value: reach(values, ends(bar.points.map((point) => point[1 - i] as number))),
    };
  });
  const rowNames = [...new Set(found.map(({ row }) => row))];
  const single = rowNames.length === found.length;
  const kinds = single ? [spell(values.label)] : [...new Set(found.map(({ kind }) => kind))];
  const cell = (name: string, kind: string): string => {
    const here = found.filter(({ row, kind: own }) => row === name && (single || own === kind));
    return here.map(({ value }) => value).join("; ") || none;
  };
  const rows = rowNames.map((name) => [name, ...kinds.map((kind) => cell(name, kind))]);
  return [{ head: [spell(names.label), ...kinds], rows }];
}

function tableOfDots({ x, y }: Chart<never>, marks: readonly Mark[]): Table[] {
  const dots = marks.filter((mark): mark is DotMark => mark.kind === "dot");
  if (dots.length === 0) return [];
  const alike = x.names || new Set(dots.map(nameOf)).size < Math.min(2, dots.length);
  const rows = dots.map((dot) => {
    const at = [told(x, dot.at[0]), told(y, dot.at[1])];
    return alike ? at : [nameOf(dot), ...at];
  });
  const head = [spell(x.label), spell(y.label)];
  return [{ head: alike ? head : [words.marked, ...head], rows }];
}

/** The curves, the bars and the dots of a chart, a table each where it has any. */
export const tablesOfChart = (chart: Chart<never>, marks: readonly Mark[]): Table[] =>
  [tableOfCurves, tableOfBars, tableOfDots].flatMap((table) => table(chart, marks));
