import { standingCar } from "../../balance/standing-car.js";
import type { Car } from "../../car/car.js";
import type { ClassRule } from "../../car/class-rules.js";
import { onControlTyre } from "../../car/control-tyre.js";
import { carShape } from "../../car/file/car-shape.js";
import { cut, inShort } from "../../car/file/in-short.js";
import { deeperThan, readJson } from "../../car/file/json.js";
import { carFromJson, formatCar, LONGEST_CAR_FILE } from "../../car/file/parse.js";
import { ruleFaultsOf } from "../../car/file/rule-faults.js";
import { rulesShape } from "../../car/file/rules-shape.js";
import { defined, group, optional, type ShapeOf, text } from "../../car/file/shape.js";
import { unknownFieldsOf } from "../../car/file/unknown-fields.js";
import { validatorOf } from "../../car/file/validate.js";
import { type ClassFact, classFactsOf, tyreFactsOf } from "../../statics/class-check.js";
import type { Venue } from "../plan/venue.js";
import { faultsOfVenue, venueShape } from "../plan/venue-file.js";

/** A class as its organiser keeps it. */
export interface CarClass {
  readonly name: string;
  readonly notes?: string;
  readonly rules: readonly ClassRule[];
  /** A car that somebody new may begin from. */
  readonly baseCar?: Car;
  /** Where the class drives. */
  readonly venue?: Venue;
  /** Read out before the first run. */
  readonly briefing?: string;
  /** Address of the club's own copy of the course. */
  readonly course?: string;
}

/** The class file, field by field. */
export const classShape: ShapeOf<CarClass> = group("A class", {
  name: text("What the class is called"),
  notes: optional(text("Anything worth knowing")),
  rules: rulesShape,
  baseCar: optional(
    defined("car", { ...carShape, about: "A car that somebody new may begin from" }),
  ),
  venue: optional(defined("venue", { ...venueShape, about: "Where the class drives" })),
  briefing: optional(text("What is read out before the first run")),
  course: optional(text("Address of the club's own copy of the course, from https://")),
});

/** A class that was read, with what is worth telling; or all that is wrong with its file. */
export type ReadClass =
  | { readonly carClass: CarClass; readonly notes: readonly string[]; readonly faults?: undefined }
  | { readonly carClass?: undefined; readonly faults: readonly string[] };

/** Version written by this workbook. */
export const CLASS_FILE_VERSION = 1;
/** What the file says it is, so that it is told from a car. */
export const CLASS_FILE_KIND = "rollbook class";

const DEEPEST = 42; // a car as deep as a car file may be, in a class
const faultsOfFields = validatorOf(classShape);

/**
 * Reads a class file.
 *
 * Never throws: the answer is a class with notes, or a list of faults, each one sentence with field,
 * value and allowed range. Fields that are not known stay in the class.
 */
export function parseClass(file: string): ReadClass {
  if (file.length > LONGEST_CAR_FILE)
    return { faults: [`The file is longer than ${LONGEST_CAR_FILE} characters.`] };
  const { json, fault } = readJson(file);
  return fault === undefined ? classFromJson(json) : { faults: [fault] };
}

/** Whether parsed JSON says that it is a class. */
export const saysItIsClass = (json: unknown): boolean =>
  typeof json === "object" && json !== null && "kind" in json && json.kind === CLASS_FILE_KIND;

/** Reads a class from parsed JSON, as `parseClass`. */
export function classFromJson(json: unknown): ReadClass {
  if (!saysItIsClass(json))
    return { faults: [`The file must be one JSON object whose kind is "${CLASS_FILE_KIND}".`] };
  if (deeperThan(json, DEEPEST)) return { faults: [`The file is nested deeper than ${DEEPEST}.`] };
  const { kind: _, version = CLASS_FILE_VERSION, ...content } = json as Record<string, unknown>;
  if (version !== CLASS_FILE_VERSION)
    return { faults: [`version is ${inShort(version)} but must be ${CLASS_FILE_VERSION}.`] };
  const { baseCar, ...rest } = content;
  const base = baseCar === undefined ? undefined : carFromJson(baseCar);
  const faults = [
    ...faultsOfFields(rest),
    ...(base?.faults ?? []).map((fault) => `baseCar: ${fault}`),
  ];
  if (faults.length > 0) return { faults };
  const read = { ...rest, ...(base?.car && { baseCar: base.car }) } as unknown as CarClass;
  const inconsistent = inconsistenciesOf(read);
  if (inconsistent.length > 0) return { faults: inconsistent };
  const unknown = unknownFieldsOf(classShape, rest).map(
    (path) => `${cut(path)} is not a field this workbook knows: it is kept as it is.`,
  );
  const ofCar = (base?.faults === undefined ? (base?.notes ?? []) : []).map(
    (note) => `baseCar: ${note}`,
  );
  return { carClass: read, notes: [...unknown, ...ofCar] };
}

function inconsistenciesOf({ rules, venue, course }: CarClass): string[] {
  return [
    ...ruleFaultsOf(rules),
    ...(venue === undefined ? [] : faultsOfVenue(venue).map((fault) => `venue.${fault}`)),
    ...(course === undefined || isAddress(course)
      ? []
      : [
          `course is ${inShort(course)} but must be an address that begins with https:// or http://.`,
        ]),
  ];
}

/** An address that may be shown as a link: nothing that runs. */
function isAddress(course: string): boolean {
  return /^https?:\/\/[\w.-]+(:\d{1,5})?(\/[^\s"'<>]*)?$/i.test(course);
}

/** Writes a class file: what `parseClass` reads, nothing left out. */
export function formatClass(carClass: CarClass): string {
  const { baseCar, ...rest } = carClass;
  const car = baseCar && { baseCar: JSON.parse(formatCar(baseCar)) as unknown };
  const head = { kind: CLASS_FILE_KIND, version: CLASS_FILE_VERSION };
  return `${JSON.stringify({ ...head, ...rest, ...car }, null, 2)}\n`;
}

/**
 * The car as it runs in a class: its rules take the place of those that it ran by before, and it
 * stands on the control tyre that the class brings along.
 *
 * @example
 * carInClass(demoCar, { name: "Club", rules: [] }).wheelbase // → 2.4, as it was
 */
export const carInClass = (car: Car, { rules }: Pick<CarClass, "rules">): Car =>
  onControlTyre({ ...car, classRules: rules });

/**
 * A car against a class: its limits as it runs there, and the control tyre as its own file has it.
 *
 * @throws Refusal when it cannot stand on its springs
 */
export function factsInClass(car: Car, { rules }: Pick<CarClass, "rules">): ClassFact[] {
  const { limits: _, ...ruled } = carInClass(car, { rules }); // each rule of the class alone
  const facts = classFactsOf(standingCar(ruled)).filter(({ code }) => code !== "tyre");
  return [...facts, ...tyreFactsOf({ ...car, classRules: rules })];
}
