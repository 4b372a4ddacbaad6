import { inShort } from "../car/file/in-short.js";
import { MOST_READINGS, type TyreReading } from "./fit-tyre.js";

/** Readings of a table, or what is wrong with its lines. */
export type ReadReadings =
  | { readonly readings: readonly TyreReading[]; readonly faults?: undefined }
  | { readonly readings?: undefined; readonly faults: readonly string[] };

const MOST_FAULTS = 12;
const LONGEST = 200_000;

/**
 * Reads a table of side forces: load in N, slip angle in degrees, side force in N on each line, parted
 * by tabs, semicolons, spaces or commas; one line of names may stand first. A comma between digits is
 * a decimal one where columns are parted otherwise. Never throws.
 */
export function readTyreReadings(text: string): ReadReadings {
  if (text.length > LONGEST) return { faults: [`The table is longer than ${LONGEST} characters.`] };
  const lines = text
    .split(/\r\n|[\r\n]/)
    .map((line, i) => ({ number: i + 1, line: line.trim() }))
    .filter(({ line }) => line !== "");
  const [first] = lines;
  const rows = first && isHead(first.line) ? lines.slice(1) : lines;
  if (rows.length === 0) return { faults: ["The table is empty."] };
  if (rows.length > MOST_READINGS)
    return {
      faults: [`The table has ${rows.length} lines but must have at most ${MOST_READINGS}.`],
    };
  const read = rows.map(({ number, line }) => readingIn(number, line));
  const faults = read.flatMap((one) => (typeof one === "string" ? [one] : []));
  if (faults.length > 0) return { faults: faults.slice(0, MOST_FAULTS) };
  return { readings: read.filter((one): one is TyreReading => typeof one !== "string") };
}

/** A line of names begins with no number. */
const isHead = (line: string): boolean => !/^[+\-−.,\d]/.test(line);

function cellsOf(line: string): string[] {
  const parted = /[;\t]/.test(line) ? line.split(/[;\t]/) : line.split(/,\s|\s+/);
  const cells = parted.length >= 3 ? parted : line.split(",");
  return cells.map((cell) => cell.trim()).filter((cell) => cell !== "");
}

const numberOf = (cell: string): number =>
  /^[+\-−]?(\d|[.,]\d)/.test(cell)
    ? Number(cell.replace("−", "-").replace(/^([^,]*),([^,]*)$/, "$1.$2"))
    : Number.NaN;

function readingIn(number: number, line: string): TyreReading | string {
  const cells = cellsOf(line);
  const values = cells.map(numberOf);
  const [load = Number.NaN, slip = Number.NaN, sideForce = Number.NaN] = values;
  if (cells.length !== 3 || !values.every(Number.isFinite))
    return `Line ${number} is ${inShort(line)} but must be three numbers: load, slip angle, side force.`;
  const outside = ranges.find(([, from, to], i) => !within(values[i], from, to));
  if (outside !== undefined) {
    const [name, from, to, unit] = outside;
    const value = values[ranges.indexOf(outside)];
    return `Line ${number}: ${name} is ${value} ${unit} but must be from ${from} to ${to} ${unit}.`;
  }
  return { load, slipAngle: (slip * Math.PI) / 180, sideForce };
}

const within = (value = Number.NaN, from: number, to: number) => value >= from && value <= to;

const ranges: readonly (readonly [string, number, number, string])[] = [
  ["load", 50, 20_000, "N"],
  ["slip angle", -55, 55, "°"],
  ["side force", -50_000, 50_000, "N"],
];
