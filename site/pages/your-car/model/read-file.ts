import { type Car, type CarClass, classFromJson, readJson, saysItIsClass } from "@rollbook/lib";
import { fileFaultInWords } from "../../../say/file-fault.js";
import type { UnitSystem } from "../../../say/units.js";
import { type TakenIn, takeIn } from "./take-in.js";

/** What came of a file that is a car or a class. */
export type FileRead = TakenIn | { readonly carClass: CarClass; readonly notes: readonly string[] };

/** Reads a car or a class, whichever the text says it is. */
export function readFile(
  text: string,
  taken: readonly string[],
  id: string,
  units: UnitSystem,
): FileRead {
  const { json } = readJson(text);
  if (!saysItIsClass(json)) return takeIn(text, taken, id, units);
  const { carClass, faults = [], notes = [] } = { notes: [], ...classFromJson(json) };
  return carClass === undefined
    ? { faults: faults.map((fault) => fileFaultInWords(fault, units)) }
    : { carClass, notes };
}

/** A car or a class that was read. */
export type Sound = { readonly car: Car } | { readonly carClass: CarClass };

/** What it is called. */
export const nameOfSound = (sound: Sound): string =>
  "car" in sound ? sound.car.name : sound.carClass.name;
