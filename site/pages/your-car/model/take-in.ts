import { type Car, LONGEST_CAR_FILE, migrate, parseCar, readJson } from "@rollbook/lib";
import { fileFaultInWords } from "../../../say/file-fault.js";
import type { UnitSystem } from "../../../say/units.js";
import { carWords as words } from "../../../say/your-car/cars.js";
import { type Draft, draftOf } from "./draft.js";
import { mended } from "./mend.js";
import type { Content } from "./path.js";
import { freeName, widened } from "./save.js";

/** What came of a file: a car with what is worth telling, or all that is wrong and a draft to mend it in. */
export type TakenIn =
  | { readonly car: Car; readonly notes: readonly string[] }
  | { readonly faults: readonly string[]; readonly mend?: Draft };

/**
 * Reads a car file that the reader opens.
 *
 * @param taken - names that are in use
 * @param id - for a draft, where the file needs mending
 */
export function takeIn(
  text: string,
  taken: readonly string[],
  id: string,
  units: UnitSystem = "metric",
): TakenIn {
  const { car, notes, faults } = { notes: [], ...parseCar(text) };
  if (car) {
    const wide = widened(car as unknown as Content, units);
    return named(wide.content as unknown as Car, [...notes, ...wide.notes], taken);
  }
  const content = contentOfFile(text);
  const all = (faults ?? []).map((fault) => fileFaultInWords(fault, units));
  return content ? { faults: all, mend: draftOf(id, mended(content)) } : { faults: all };
}

const LONGEST_NAME = 60;

function named(car: Car, notes: readonly string[], taken: readonly string[]): TakenIn {
  const whole = car.name.trim();
  const short = whole.slice(0, LONGEST_NAME);
  const name = freeName(short || words.newName, taken);
  if (name === car.name) return { car, notes };
  const before = whole.length > LONGEST_NAME ? `${short}…` : car.name;
  return { car: { ...car, name }, notes: [words.renamed(before, name), ...notes] };
}

/** The content of a file that has something of a car, in today's version; else nothing to mend. */
function contentOfFile(text: string): Content | undefined {
  if (text.length > LONGEST_CAR_FILE) return undefined;
  const { json } = readJson(text);
  if (typeof json !== "object" || json === null) return undefined;
  const migrated = migrate({ ...json });
  if ("fault" in migrated) return undefined;
  const { content } = migrated;
  const ofCar = ["wheelbase", "body", "front", "rear"].some((name) => Object.hasOwn(content, name));
  return ofCar ? content : undefined;
}
