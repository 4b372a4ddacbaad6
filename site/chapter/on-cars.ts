import type { Car } from "../../lib/car/car.js";
import { demoCar } from "../../lib/car/demo-car.js";
import { isChart } from "../cells/layout.js";
import type { Mark, Point } from "../cells/marks.js";
import { ensureLooks } from "../cells/node/ensure-looks.js";
import type { ExerciseSpec, FigureSpec, Inputs, Interval, Panel, ValuesOf } from "../cells/spec.js";
import { looksLeft, startValues } from "../cells/spec.js";
import { type Chapter, type ChapterOnCar, onCar } from "./on-car.js";
import { otherCars } from "./other-cars.js";

type Figure = FigureSpec<Inputs>;

/** The workbook's own car, and others that a reader may have. */
export const tried: readonly Car[] = [demoCar, ...otherCars];

const broken = /NaN|Infinity|undefined/;

/** Numbers that are none, in worked figures and questions. */
export function numberFaults({ worked, exercises, predictions }: ChapterOnCar): string[] {
  const numbers = [
    ...worked.map(({ id, value }) => ({ id, value })),
    ...exercises.map(({ id, answer }) => ({ id, value: answer })),
  ];
  const questions = [...worked, ...exercises, ...predictions];
  return [
    ...numbers
      .filter(({ value }) => !Number.isFinite(value))
      .map(({ id }) => `${id} is no number.`),
    ...predictions
      .filter(({ answer, choices }) => choices[answer] === undefined)
      .map(({ id }) => `No choice of ${id} is its answer.`),
    ...questions
      .filter((one) => broken.test(JSON.stringify(one)))
      .map(({ id }) => `The text of ${id} has a number in it that is none.`),
  ];
}

/** Sliders that start outside their range. */
export const sliderFaults = ({ figures }: ChapterOnCar): string[] =>
  figures.flatMap(({ id, inputs }) =>
    Object.entries(inputs)
      .filter(([, { min, max, start }]) => !(start >= min - 1e-9 && start <= max + 1e-9))
      .map(
        ([key, { min, max, start }]) =>
          `${id}: ${key} starts at ${start}, outside ${min} to ${max}.`,
      ),
  );

/** Figures that a prediction opens and that ask for too little or too much, or for what no slider does. */
export function lookFaults({ figures }: ChapterOnCar): string[] {
  return figures.flatMap((figure) => {
    const { id, after } = figure;
    const count = looksLeft(figure).length;
    if (after !== undefined && (count < 2 || count > 3))
      return [
        `${id}: a figure that a prediction opens asks for two or three things, not ${count}.`,
      ];
    if (after === undefined && count > 0)
      return [`${id}: it asks for things to do, but no prediction opens it.`];
    return undone(figure);
  });
}

function undone(figure: Figure): string[] {
  try {
    ensureLooks(figure);
    return [];
  } catch (error) {
    if (error instanceof RangeError) return [error.message];
    throw error;
  }
}

/** Exercises whose slips cannot be told from the answer or from each other, and chapters that meet too few. */
export function slipFaults({ exercises }: ChapterOnCar): string[] {
  const met = exercises.filter(({ slips = [] }) => slips.length > 0);
  const few = exercises.length > 0 && met.length <= exercises.length / 2;
  return [
    ...(few
      ? [`In *Exercises*: most meet a likely slip, found ${met.length} of ${exercises.length}.`]
      : []),
    ...met.flatMap(alike),
    ...met.flatMap(({ id, slips = [] }) =>
      slips
        .filter(({ because }) => !/^[a-z].*\.$/.test(because))
        .map(
          ({ because }) =>
            `${id}: “${because}” goes on a sentence that began: a small letter first, a full stop last.`,
        ),
    ),
  ];
}

function alike({ id, answer, tolerance = 0.02, slips = [] }: ExerciseSpec): string[] {
  const values = [answer, ...slips.map(({ value }) => value)];
  const near = (a: number, b: number) =>
    Math.abs(b - a) <= tolerance * Math.max(Math.abs(a), 1e-12);
  return values.flatMap((value, i) =>
    values
      .slice(i + 1)
      .filter((other) => near(value, other))
      .map((other) => `${id}: ${value} and ${other} cannot be told apart, one of them a slip.`),
  );
}

/** Where the sliders start, and every corner of their ranges. */
function settingsOf({ inputs }: Figure): ValuesOf<Inputs>[] {
  const ends = Object.entries(inputs).map(([key, { min, max }]) => [key, min, max] as const);
  const corners = Array.from({ length: 2 ** ends.length }, (_, corner) =>
    Object.fromEntries(ends.map(([key, min, max], bit) => [key, (corner >> bit) & 1 ? max : min])),
  );
  return [startValues(inputs), ...corners];
}

const tolerance = 0.02; // of the axis
const holds = ([from, to]: Interval, value: number) =>
  value >= from - tolerance * (to - from) && value <= to + tolerance * (to - from);

/** Dots that a panel puts outside its frame, undrawn ones aside; lines may run out of it on purpose. */
function lostDots(panel: Panel<ValuesOf<Inputs>>, marks: readonly Mark[]): Point[] {
  const [x, y] = isChart(panel) ? [panel.x.domain, panel.y.domain] : [panel.view.x, panel.view.y];
  return marks.flatMap((mark) => {
    if (mark.kind !== "dot") return [];
    const [across, up] = mark.at;
    if (!Number.isFinite(across) || !Number.isFinite(up)) return [];
    return holds(x, across) && holds(y, up) ? [] : [mark.at];
  });
}

/** Figures with a dot outside their frame or a sentence with no number in it, wherever their sliders stand. */
export const pictureFaults = ({ figures }: ChapterOnCar): string[] =>
  figures.flatMap((figure) =>
    settingsOf(figure).flatMap((values) => {
      const at = `${figure.id} at ${JSON.stringify(values)}`;
      const said = broken.test(figure.says(values))
        ? [`${at}: its sentence has a number that is none.`]
        : [];
      const lost = figure.panels.flatMap((panel) => lostDots(panel, panel.draw(values)));
      return [
        ...said,
        ...lost.map((dot) => `${at}: the dot ${dot.join(", ")} is outside its frame.`),
      ];
    }),
  );

const rules = [numberFaults, sliderFaults, lookFaults, pictureFaults];

/** What goes wrong in a chapter for any of the cars, a sentence each with the car's name. */
export function carFaults(chapter: Chapter): string[] {
  const own = slipFaults(onCar(chapter, demoCar));
  return [
    ...own,
    ...tried.flatMap((car) =>
      faultsFor(chapter, car).map((fault) => `For the ${car.name}: ${fault}`),
    ),
  ];
}

/** A cell that throws for a car is told as what it says. */
function faultsFor(chapter: Chapter, car: Car): string[] {
  try {
    const shown = onCar(chapter, car);
    return rules.flatMap((rule) => rule(shown));
  } catch (error) {
    if (error instanceof Error) return [`a cell throws: ${error.message}`];
    throw error;
  }
}
