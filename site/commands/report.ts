import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { parseCar } from "../../lib/car/file/parse.js";
import { requireInRange } from "../../lib/check.js";
import { reportText } from "../report/report-text.js";
import { setUpReport } from "../report/set-up-report.js";

const USAGE = `Usage: npm run report -- car.json [--ay 9] [--speed 25] [--us] [--json]

  --ay      lateral acceleration of the corner, m/s², 0 to 30 (9 when left out)
  --speed   speed, m/s, 1 to 100 (25 when left out)
  --us      US units in the text
  --json    all figures as JSON in SI units; docs/report.md lists the keys`;

/** Prints the report of a car file; everything that went wrong in sentences, and 1 as exit code. */
function main(): void {
  const asked = question();
  const read = parseCar(readFileSync(fromCaller(asked.file), "utf8"));
  if (read.faults !== undefined) throw new Error(read.faults.join("\n"));
  const report = setUpReport(read.car, asked.corner);
  for (const note of read.notes) console.error(`Note: ${note}`);
  const json = () => `${JSON.stringify({ notes: read.notes, ...report }, null, 2)}\n`;
  process.stdout.write(
    asked.json ? json() : reportText(report, read.car, asked.us ? "us" : "metric"),
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
      us: { type: "boolean", default: false },
      json: { type: "boolean", default: false },
    },
  });
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) throw new Error(USAGE);
  const lateralAcceleration = requireInRange("--ay", numberOf(values.ay), 0, 30, "m/s²");
  const speed = requireInRange("--speed", numberOf(values.speed), 1, 100, "m/s");
  return { file, corner: { lateralAcceleration, speed }, us: values.us, json: values.json };
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
