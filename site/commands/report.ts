import { readFileSync } from "node:fs";
import { parseCar } from "../../lib/car/file/parse.js";
import { requireInRange } from "../../lib/check.js";
import { Refusal } from "../../lib/refusal.js";
import { CourseError } from "../build/notebook.js";
import { howSure, SEED, USUAL_SAMPLES } from "../report/how-sure.js";
import { reportText } from "../report/report-text.js";
import { setUpReport } from "../report/set-up-report.js";
import { forTerminal, inOneLine } from "./for-terminal.js";
import { reportFaults } from "./report-faults.js";
import { codeOf, fromCaller, optionsOf, UsageError } from "./usage.js";

const USAGE = `Usage: npm run report -- car.json [--ay 9] [--speed 25] [--samples 25] [--us] [--json]

  --ay      lateral acceleration of the corner, m/s², 0 to 30 (9 when left out)
  --speed   speed, m/s, 1 to 100 (25 when left out)
  --samples cars sampled for how sure changes are, four times as many for balance; 0 to 500, 0 for
            no bands (${USUAL_SAMPLES} when left out); the same each time (seed ${SEED})
  --us      US units in the text
  --json    all figures as JSON in SI units; docs/report.md lists the keys`;

/** Prints the report of a car file; what is wrong with the file in sentences, and 1 as exit code. */
function main(): void {
  const asked = question();
  if (asked === "help") {
    console.log(USAGE);
    return;
  }
  const read = parseCar(textOf(asked.file));
  if (read.faults !== undefined) throw new CourseError(read.faults.map(inOneLine).join("\n"));
  const report = setUpReport(read.car, asked.corner);
  for (const note of read.notes) console.error(`Note: ${inOneLine(note)}`);
  const sure = asked.samples > 0 ? howSure(read.car, report, asked.samples) : undefined;
  const all = { notes: read.notes, ...report, ...(sure && { howSure: sure }) };
  const json = () => `${JSON.stringify(all, null, 2)}\n`;
  const text = () => {
    const named = { ...report, car: inOneLine(report.car) };
    return reportText(named, read.car, asked.us ? "us" : "metric", sure);
  };
  process.stdout.write(forTerminal(asked.json ? json() : text()));
}

function textOf(file: string): string {
  const path = fromCaller(file);
  try {
    return readFileSync(path, "utf8");
  } catch (error) {
    throw new UsageError(`${path} cannot be read (${codeOf(error)}).`);
  }
}

function question() {
  const { values, positionals } = optionsOf({
    allowPositionals: true,
    options: {
      ay: { type: "string", default: "9" },
      speed: { type: "string", default: "25" },
      samples: { type: "string", default: String(USUAL_SAMPLES) },
      us: { type: "boolean", default: false },
      json: { type: "boolean", default: false },
      help: { type: "boolean", default: false },
    },
  });
  if (values.help) return "help";
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) throw new UsageError(USAGE);
  const lateralAcceleration = requireWithin("--ay", values.ay, 0, 30, "m/s²");
  const speed = requireWithin("--speed", values.speed, 1, 100, "m/s");
  const samples = requireWhole("--samples", numberOf(values.samples), 500);
  return {
    file,
    samples,
    corner: { lateralAcceleration, speed },
    us: values.us,
    json: values.json,
  };
}

function requireWithin(name: string, text: string, least: number, most: number, unit: string) {
  try {
    return requireInRange(name, numberOf(text), least, most, unit);
  } catch (error) {
    throw error instanceof Refusal ? new UsageError(error.message) : error;
  }
}

function requireWhole(name: string, value: number, max: number): number {
  if (Number.isInteger(value) && value >= 0 && value <= max) return value;
  throw new UsageError(`${name} is ${value} but must be a whole number from 0 to ${max}.`);
}

function numberOf(text: string): number {
  return text.trim() === "" ? Number.NaN : Number(text);
}

await reportFaults(() => {
  try {
    main();
  } catch (error) {
    throw error instanceof Refusal ? new CourseError(error.message) : error;
  }
});
