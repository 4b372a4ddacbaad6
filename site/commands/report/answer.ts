import { readFileSync } from "node:fs";
import { parseCar } from "../../../lib/car/file/parse.js";
import { requireInRange } from "../../../lib/check.js";
import { Refusal } from "../../../lib/refusal.js";
import { CourseError } from "../../build/notebook.js";
import { howSure, SEED, USUAL_SAMPLES } from "../../report/how-sure.js";
import { reportText } from "../../report/report-text.js";
import { setUpReport } from "../../report/set-up-report.js";
import { forTerminal, inOneLine } from "../for-terminal.js";
import { codeOf, fromCaller, optionsOf, UsageError } from "../usage.js";
import { classAnswer } from "./class-answer.js";
import type { Printed } from "./printed.js";

const USAGE = `Usage: npm run report -- car.json [--ay 9] [--speed 25] [--samples 25] [--us] [--json]
       npm run report -- --class class.json cars/*.json [--us] [--json]

  --ay      lateral acceleration of the corner, m/s², 0 to 30 (9 when left out)
  --speed   speed, m/s, 1 to 100 (25 when left out)
  --samples cars sampled for how sure changes are, four times as many for balance; 0 to 500, 0 for
            no bands (${USUAL_SAMPLES} when left out); the same each time (seed ${SEED})
  --us      US units in the text
  --json    all figures as JSON in SI units; docs/report.md lists the keys
  --class   instead a table: a row a car, a column a rule of this class file; ends with 1 where a
            rule is broken or a car cannot be read`;

/**
 * The report of a car file, as the command is asked for it in `folder`.
 *
 * @throws UsageError when it is asked for what cannot be, CourseError when the file is no sound car
 */
export function answerTo(args: readonly string[], folder?: string): Printed {
  try {
    const asked = question(args);
    if (asked === "help") return { out: `${USAGE}\n`, err: "" };
    const { of, files, ...how } = asked;
    if (of !== undefined) return classAnswer(of, files, how, (file) => textOf(file, folder));
    const [file = "", ...more] = files;
    if (more.length > 0) throw new UsageError(USAGE);
    return printedFor({ file, ...how }, folder);
  } catch (error) {
    throw error instanceof Refusal ? new CourseError(error.message) : error;
  }
}

type Question = Omit<Exclude<ReturnType<typeof question>, "help">, "of" | "files">;

function printedFor(
  { file, samples, corner, us, json }: Question & { readonly file: string },
  folder?: string,
): Printed {
  const read = parseCar(textOf(file, folder));
  if (read.faults !== undefined) throw new CourseError(read.faults.map(inOneLine).join("\n"));
  const report = setUpReport(read.car, corner);
  const err = read.notes.map((note) => `Note: ${inOneLine(note)}\n`).join("");
  const sure = samples > 0 ? howSure(read.car, report, samples) : undefined;
  const named = { ...report, car: inOneLine(report.car) };
  const all = { notes: read.notes, ...report, ...(sure && { howSure: sure }) };
  const out = json
    ? `${JSON.stringify(all, null, 2)}\n`
    : reportText(named, read.car, us ? "us" : "metric", sure);
  return { out: forTerminal(out), err };
}

function textOf(file: string, folder?: string): string {
  const path = fromCaller(file, folder);
  try {
    return readFileSync(path, "utf8");
  } catch (error) {
    throw new UsageError(`${path} cannot be read (${codeOf(error)}).`);
  }
}

function question(args: readonly string[]) {
  const { values, positionals } = optionsOf({
    args: [...args],
    allowPositionals: true,
    options: {
      ay: { type: "string", default: "9" },
      speed: { type: "string", default: "25" },
      samples: { type: "string", default: String(USUAL_SAMPLES) },
      us: { type: "boolean", default: false },
      json: { type: "boolean", default: false },
      class: { type: "string" },
      help: { type: "boolean", default: false },
    },
  });
  if (values.help) return "help" as const;
  if (positionals.length === 0) throw new UsageError(USAGE);
  const lateralAcceleration = requireWithin("--ay", values.ay, 0, 30, "m/s²");
  const speed = requireWithin("--speed", values.speed, 1, 100, "m/s");
  const samples = requireWhole("--samples", numberOf(values.samples), 500);
  return {
    files: positionals,
    of: values.class,
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
