import { inShort } from "./in-short.js";
import { type Content, type Path, valueAtPlace, withValueAtPlace } from "./place.js";

/** What a file needs to become one of the next version. */
export type Migration = (file: Content) => Content;

/** Version written by this workbook. */
export const CAR_FILE_VERSION = 2;

/** The step from each older version to the next. */
const steps: Readonly<Record<number, Migration>> = { 1: withRoomForVersion2 };

const newAtAxle = [
  "differential",
  "geometry.bumpStop",
  "geometry.droopStop",
  "geometry.complianceSteer",
  "tyre.grip",
  "tyre.loadSensitivity",
  "tyre.stiffness",
  "tyre.bestPressure",
];
const newInVersion2: readonly Path[] = [
  "known",
  ...["front", "rear"].flatMap((end) => newAtAxle.map((field) => `${end}.${field}`)),
];

/**
 * Version 2 only adds fields. Where a file of version 1 had one of that name for itself, it is kept
 * under another.
 */
function withRoomForVersion2(file: Content): Content {
  return newInVersion2.reduce((content, path) => {
    const own = valueAtPlace(content, path);
    if (own === undefined) return content;
    return withValueAtPlace(withValueAtPlace(content, path, undefined), `${path}OfVersion1`, own);
  }, file);
}

/**
 * Brings the content of a car file to the present version.
 *
 * @param migrations - steps by the version they start from
 * @param present - version to reach
 * @returns the content without its version and a note for each step, or a fault
 */
export function migrate(
  file: Content,
  migrations: Readonly<Record<number, Migration>> = steps,
  present = CAR_FILE_VERSION,
): { content: Content; notes: string[] } | { fault: string } {
  const { version = present, ...rest } = file;
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1 || version > present)
    return {
      fault: `version is ${inShort(version)} but must be a whole number from 1 to ${present}.`,
    };
  let content: Content = rest;
  const notes: string[] = [];
  for (let from = version; from < present; from++) {
    content = migrations[from]?.(content) ?? content;
    notes.push(`The file was brought from version ${from} to version ${from + 1}.`);
  }
  return { content, notes };
}
