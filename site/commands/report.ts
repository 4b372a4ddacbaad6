import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { parseCar } from "../../lib/car/file/parse.js";
import { requireInRange } from "../../lib/check.js";
import { howSure, SEED, USUAL_SAMPLES } from "../report/how-sure.js";
import { reportText } from "../report/report-text.js";
import { setUpReport } from "../report/set-up-report.js";

const USAGE = `Usage: npm run report -- car.json [--ay 9] [--speed 25] [--samples 25] [--us] [--json]

  --ay      lateral acceleration of the corner, m/s², 0 to 30 (9 when left out)
  --speed   speed, m/s, 1 to 100 (25 when left out)
  --samples cars sampled for how sure changes are, four times as many for balance; 0 to 500, 0 for
            no bands (${USUAL_SAMPLES} when left out); the same each time (seed ${SEED})
  --us      US units in the text
  --json    all figures as JSON in SI units; docs/report.md lists the keys`;

/** Prints the report of a car file; everything that went wrong in sentences, and 1 as exit code. */
function main(): void {
  const asked = question();
  const read = parseCar(readFileSync(fromCaller(asked.file), "utf8"));
  if (read.faults !== undefined) throw new Error(read.faults.join("\n"));
  const report = setUpReport(read.car, asked.corner);
  for (const note of read.notes) console.error(`Note: ${note}`);
  const sure = asked.samples > 0 ? howSure(read.car, report, asked.samples) : undefined;
  const all = { notes: read.notes, ...report, ...(sure && { howSure: sure }) };
  const json = () => `${JSON.stringify(all, null, 2)}\n`;
  process.stdout.write(
    asked.json ? json() : reportText(report, read.car, asked.us ? "us" : "metric", sure),
  );
}

/** A path as the person who typed it means it: npm itself works at the top of the repository. */
const fromCaller = (path: string): string => resolve(process.env.INIT_CWD ?? ".", path);

function question() {
  const { values, positionals } = parseArgs({
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

try {
  main();
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
}
