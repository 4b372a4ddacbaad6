import fc from "fast-check";

/**
 * The long run tries each law that names no number of cases on as many as it is told, for a time.
 * Cheap laws reach them all.
 */
const { LONG_RUNS, LONG_SECONDS } = process.env;
if (LONG_RUNS !== undefined) {
  fc.configureGlobal({
    numRuns: Number(LONG_RUNS),
    interruptAfterTimeLimit: Number(LONG_SECONDS ?? 30) * 1000,
  });
}
