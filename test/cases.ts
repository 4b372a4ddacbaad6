import { appendFileSync } from "node:fs";
import fc, { type RunDetails } from "fast-check";
import { beforeEach, expect } from "vitest";
import { kindOf, type Tally } from "../site/commands/long/tally.js";

/** A hundred cases for a law that names no number, always the same; the long run asks for others and for more. */
const {
  CASES_SEED = "1",
  CASES = "100",
  LONG_SECONDS,
  LONG_UNTIL,
  LONG_TALLY,
  SHRINK,
} = process.env;

fc.configureGlobal({
  seed: Number(CASES_SEED),
  numRuns: Number(CASES),
  endOnFailure: SHRINK === undefined,
});

/** Fails as fast-check does by itself, and writes down how much was tried. */
function tallied(details: RunDetails<unknown>): void {
  const began = details.numRuns > 0 || !details.interrupted; // a law for which no time was left has not failed
  if (details.failed && began)
    throw new Error(fc.defaultReportMessage(details), { cause: details.errorInstance });
  const kind = kindOf(expect.getState().testPath ?? "");
  const tally: Tally = { kind, tried: details.numRuns, cut: details.interrupted };
  appendFileSync(LONG_TALLY ?? "", `${JSON.stringify(tally)}\n`);
}

if (LONG_TALLY !== undefined) {
  beforeEach(() => {
    const left = Number(LONG_UNTIL) - Date.now();
    const limit = Math.max(1, Math.min(left, Number(LONG_SECONDS ?? Infinity) * 1000));
    fc.configureGlobal({
      ...fc.readConfigureGlobal(),
      reporter: tallied,
      interruptAfterTimeLimit: limit,
    });
  });
}
