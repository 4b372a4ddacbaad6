import type { Car } from "../car.js";
import { carShape } from "./car-shape.js";
import { inconsistenciesOf } from "./consistency.js";
import { cut } from "./in-short.js";
import { deeperThan, readJson } from "./json.js";
import { withLinkageGeometry } from "./linkage-geometry.js";
import { CAR_FILE_VERSION, migrate } from "./migrate.js";
import { unknownFieldsOf } from "./unknown-fields.js";
import { validatorOf } from "./validate.js";

/** A car that was read, with what is worth telling; or all that is wrong with its file. */
export type ReadCar =
  | { readonly car: Car; readonly notes: readonly string[]; readonly faults?: undefined }
  | { readonly car?: undefined; readonly faults: readonly string[] };

/** The longest car file that is read, characters: far above any car. */
export const LONGEST_CAR_FILE = 1_000_000;
const DEEPEST = 40; // parts inside parts, far above any car
const faultsOfCar = validatorOf(carShape);

/**
 * Reads a car file.
 *
 * Never throws: whatever the text, the answer is a car with notes or a list of faults, each one
 * sentence with field, value and allowed range. Fields that are not known stay in the car, so that
 * writing it again loses nothing.
 */
export function parseCar(text: string): ReadCar {
  if (text.length > LONGEST_CAR_FILE)
    return { faults: [`The file is longer than ${LONGEST_CAR_FILE} characters.`] };
  const { json, fault } = readJson(text);
  return fault === undefined ? carFromJson(json) : { faults: [fault] };
}

/** Reads a car from parsed JSON, as `parseCar`. */
export function carFromJson(json: unknown): ReadCar {
  if (typeof json !== "object" || json === null || Array.isArray(json))
    return { faults: ["The file must be one JSON object: a car with its fields."] };
  if (deeperThan(json, DEEPEST)) return { faults: [`The file is nested deeper than ${DEEPEST}.`] };
  const migrated = migrate({ ...json });
  if ("fault" in migrated) return { faults: [migrated.fault] };
  const { content, notes } = migrated;
  const faults = faultsOfCar(content);
  if (faults.length > 0) return { faults };
  const read = content as unknown as Car; // every field of the type was checked, others are kept
  const inconsistencies = inconsistenciesOf(read);
  if (inconsistencies.length > 0) return { faults: inconsistencies };
  const guided = withLinkageGeometry(read);
  const unknown = unknownFieldsOf(carShape, content).map(kept);
  return { car: guided.car, notes: [...notes, ...guided.notes, ...unknown] };
}

const kept = (path: string) =>
  `${cut(path)} is not a field this workbook knows: it is kept as it is.`;

/** Writes a car file: what `parseCar` reads, with its version, nothing left out. */
export function formatCar(car: Car): string {
  return `${JSON.stringify({ version: CAR_FILE_VERSION, ...car }, null, 2)}\n`;
}
