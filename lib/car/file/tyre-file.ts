import type { TyreData } from "../../tyre/tyre-data.js";
import type { OwnTyre } from "../own-tyre.js";
import { cut, inShort } from "./in-short.js";
import { deeperThan, readJson } from "./json.js";
import { group, numberWithin, optional, record, type ShapeOf, text } from "./shape.js";
import { leftOutCoefficients, tyreDataFaults, unusedCoefficients } from "./tyre-data-faults.js";
import { unknownFieldsOf } from "./unknown-fields.js";
import { validatorOf } from "./validate.js";

/** Coefficients by their published names, in a tyre file and in a car. */
export const tyreDataShape: ShapeOf<TyreData> = record(
  "Magic Formula 6.1 coefficients by their published names, SI, and where they were measured",
  "coefficients",
  numberWithin("One coefficient", "ratio", -1e6, 1e6),
  300,
);

/** The tyre file, field by field. */
export const tyreShape: ShapeOf<OwnTyre> = group("A tyre", {
  name: text("What the tyre is called"),
  notes: optional(text("Where its numbers come from, and who measured them")),
  coefficients: tyreDataShape,
});

export const TYRE_FILE_VERSION = 1;
/** What the file says it is. */
export const TYRE_FILE_KIND = "rollbook tyre";
/** Longer texts are no tyre, characters. */
export const LONGEST_TYRE = 100_000;

/** A tyre that was read, with what is worth telling; or all that is wrong with it. */
export type ReadTyre =
  | { readonly tyre: OwnTyre; readonly notes: readonly string[]; readonly faults?: undefined }
  | { readonly tyre?: undefined; readonly faults: readonly string[] };

const faultsOfFields = validatorOf(tyreShape);

/**
 * Reads a tyre file, or a plain table: a name and a number on each line, between them a space, a tab,
 * a comma, a semicolon or an equals sign; empty lines count for nothing. Never throws.
 *
 * @param name - what a tyre from a table is called
 */
export function parseTyre(given: string, name = "own tyre"): ReadTyre {
  if (given.length > LONGEST_TYRE)
    return { faults: [`The text is longer than ${LONGEST_TYRE} characters.`] };
  return /^\s*\{/.test(given) ? fromFile(given) : fromTable(given, name);
}

function fromFile(given: string): ReadTyre {
  const { json, fault } = readJson(given);
  if (fault !== undefined) return { faults: [fault] };
  if (deeperThan(json, 5)) return { faults: ["The file is nested deeper than 5."] };
  const { kind, version = TYRE_FILE_VERSION, ...content } = json as Record<string, unknown>;
  if (kind !== TYRE_FILE_KIND)
    return { faults: [`kind is ${inShort(kind)} but must be "${TYRE_FILE_KIND}".`] };
  if (version !== TYRE_FILE_VERSION)
    return { faults: [`version is ${inShort(version)} but must be ${TYRE_FILE_VERSION}.`] };
  const faults = faultsOfFields(content);
  if (faults.length > 0) return { faults };
  const unknown = unknownFieldsOf(tyreShape, content).map(
    (path) => `${cut(path)} is not a field this workbook knows: it is kept as it is.`,
  );
  return checked(content as unknown as OwnTyre, unknown);
}

const LINE = /^\s*([A-Za-z][A-Za-z0-9_]*)\s*[=,;\t ]\s*(\S+)\s*$/;

function fromTable(given: string, name: string): ReadTyre {
  const found = new Map<string, number>();
  const faults: string[] = [];
  for (const [i, line] of given.split(/\r\n|[\r\n]/).entries()) {
    if (line.trim() === "") continue;
    const [, key = "", number = ""] = LINE.exec(line) ?? [];
    const value = Number(number);
    if (key === "" || !Number.isFinite(value))
      faults.push(`Line ${i + 1} is ${inShort(line.trim())} but must be a name and a number.`);
    else if (found.has(key)) faults.push(`Line ${i + 1}: ${cut(key)} is there a second time.`);
    else found.set(key, value);
    if (faults.length >= MOST_FAULTS) break;
  }
  if (found.size === 0 && faults.length === 0) return { faults: ["The table is empty."] };
  if (faults.length > 0) return { faults };
  return checked({ name, coefficients: Object.fromEntries(found) }, []);
}

const MOST_FAULTS = 20;

function checked(tyre: OwnTyre, notes: readonly string[]): ReadTyre {
  const faults = tyreDataFaults(tyre.coefficients);
  if (faults.length > 0) return { faults };
  const unused = unusedCoefficients(tyre.coefficients).map((name) => cut(name));
  const left = leftOutCoefficients(tyre.coefficients);
  const told = [
    ...(unused.length > 0 ? [`Kept and not used: ${cut(unused.join(", "), 400)}.`] : []),
    ...(left.length > 0 ? [`Left out, and taken as 0: ${left.join(", ")}.`] : []),
  ];
  return { tyre, notes: [...notes, ...told] };
}

/** Writes a tyre file: what `parseTyre` reads, nothing left out. */
export const formatTyre = (tyre: OwnTyre): string =>
  `${JSON.stringify({ kind: TYRE_FILE_KIND, version: TYRE_FILE_VERSION, ...tyre }, null, 2)}\n`;
