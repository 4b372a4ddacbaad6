import { parseCar } from "../../../lib/car/file/parse.js";
import { type CarClass, factsInClass, parseClass } from "../../../lib/day/class/class-file.js";
import { Refusal } from "../../../lib/refusal.js";
import { CourseError } from "../../build/notebook.js";
import { type CheckedCar, classTable } from "../../report/class-table.js";
import { readerWith, spelt } from "../../say/reader.js";
import { refusalInWords } from "../../say/refusal.js";
import { forTerminal, inOneLine } from "../for-terminal.js";
import type { Printed } from "./printed.js";

interface How {
  readonly us: boolean;
  readonly json: boolean;
}

/** Cars against a class: a table, or the facts as JSON; not well where a rule is broken or a car not read. */
export function classAnswer(
  classFile: string,
  files: readonly string[],
  { us, json }: How,
  textOf: (file: string) => string,
): Printed {
  const read = parseClass(textOf(classFile));
  if (read.faults !== undefined) throw new CourseError(read.faults.map(inOneLine).join("\n"));
  const { carClass, notes } = read;
  const units = us ? "us" : "metric";
  const cars = files.map((file) => checked(file, textOf(file), carClass, us));
  const isWell = cars.every(({ facts }) => facts?.every(({ held }) => held) ?? false);
  const table = classTable({ ...carClass, name: inOneLine(carClass.name) }, cars, units);
  const out = json
    ? `${JSON.stringify({ class: carClass.name, cars }, null, 2)}\n`
    : spelt(table, readerWith(units));
  const told = [
    ...notes,
    ...cars.flatMap(({ file, notes = [] }) => notes.map((note) => `${file}: ${note}`)),
  ];
  const err = told.map((note) => `Note: ${inOneLine(note)}\n`).join("");
  return { out: forTerminal(out), err: forTerminal(err), ...(!isWell && { code: 1 }) };
}

function checked(file: string, text: string, carClass: CarClass, us: boolean): CheckedCar {
  const { car, notes = [], faults = [] } = { notes: [], ...parseCar(text) };
  if (car === undefined) return { file, faults: faults.map(inOneLine) };
  const named = { file, car: inOneLine(car.name) };
  try {
    return { ...named, notes, facts: factsInClass(car, carClass) };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { ...named, faults: [refusalInWords(error, readerWith(us ? "us" : "metric"))] };
  }
}
