import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { parseCar } from "../../lib/car/file/parse.js";
import { requireInRange } from "../../lib/check.js";
import { howSure, SEED, USUAL_SAMPLES } from "./how-sure.js";
import { reportText } from "./report-text.js";
import { setUpReport } from "./set-up-report.js";

const USAGE = `Usage: npm run report -- car.json [--ay 9] [--speed 25] [--samples 25] [--us] [--json]

  --ay      lateral acceleration of the corner, m/s², 0 to 30 (9 when left out)
  --speed   speed, m/s, 1 to 100 (25 when left out)
  --samples cars sampled for how sure changes are, four times as many for balance; 0 to 500, 0 for
            no bands (${USUAL_SAMPLES} when left out); the same each time (seed ${SEED})
  --us      US units in the text
  --json    all figures as JSON in SI units; docs/report.md lists the keys`;

/** What the command prints, where each part goes, and its exit code. */
export interface Printed {
  readonly out: string;
  readonly err: string;
  readonly status: 0 | 1;
}

/** The report of a car file, as the command is asked for it in `folder`; all that went wrong in sentences, with 1 as exit code. */
export function answerTo(args: readonly string[], folder: string): Printed {
  try {
    return { ...printedFor(question(args), folder), status: 0 };
  } catch (error) {
    const sentence = error instanceof Error ? error.message : String(error);
    return { out: "", err: `${sentence}\n`, status: 1 };
  }
}

function printedFor(asked: ReturnType<typeof question>, folder: string): Omit<Printed, "status"> {
  const read = parseCar(readFileSync(resolve(folder, asked.file), "utf8"));
  if (read.faults !== undefined) throw new Error(read.faults.join("\n"));
  const report = setUpReport(read.car, asked.corner);
  const err = read.notes.map((note) => `Note: ${note}\n`).join("");
  const sure = asked.samples > 0 ? howSure(read.car, report, asked.samples) : undefined;
  if (!asked.json)
    return { out: reportText(report, read.car, asked.us ? "us" : "metric", sure), err };
  const all = { notes: read.notes, ...report, ...(sure && { howSure: sure }) };
  return { out: `${JSON.stringify(all, null, 2)}\n`, err };
}

function question(args: readonly string[]) {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      ay: { type: "string", default: "9" },
      speed: { type: "string", default: "25" },
      samples: { type: "string", default: String(USUAL_SAMPLES) },
      us: { type: "boolean", default: false },
      json: { type: "boolean", default: false },
    },
  });
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) throw new Error(USAGE);
  const lateralAcceleration = requireInRange("--ay", numberOf(values.ay), 0, 30, "m/s²");
  const speed = requireInRange("--speed", numberOf(values.speed), 1, 100, "m/s");
  const samples = requireWhole("--samples", numberOf(values.samples), 500);
  return {
    file,
    samples,
    corner: { lateralAcceleration, speed },
    us: values.us,
    json: values.json,
  };
}

function requireWhole(name: string, value: number, max: number): number {
  if (Number.isInteger(value) && value >= 0 && value <= max) return value;
  throw new RangeError(`${name} is ${value} but must be a whole number from 0 to ${max}.`);
}

function numberOf(text: string): number {
  return text.trim() === "" ? Number.NaN : Number(text);
}
