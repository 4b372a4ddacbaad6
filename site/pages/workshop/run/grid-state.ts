import { faultsOfReport, type Report, tidied, withAnswer } from "@rollbook/lib";
import { documentOf } from "@rollbook/page";
import { write } from "../../../store/log.js";
import { knownDay } from "../day/known-day.js";
import { driverRun, runFor } from "../day/reporter.js";

/** Slips that are being typed, by driver, of one run. */
interface Typed {
  readonly run: number;
  readonly slips: Readonly<Record<string, Report>>;
}

const none: Typed = { run: 0, slips: {} };

export const typedSlips = documentOf<Typed>({
  key: "workshop/slips",
  empty: none,
  read: (kept) => {
    const { run, slips } = (kept ?? {}) as Partial<Typed>;
    if (typeof run !== "number" || typeof slips !== "object" || slips === null) return undefined;
    const sound = Object.entries(slips).filter(([, one]) => faultsOfReport(one).length === 0);
    return { run, slips: Object.fromEntries(sound) };
  },
});

/** The slip of a driver in a run as far as it was typed. */
export function slipOf(driver: string, run: number): Report {
  const now = typedSlips.now.value;
  return now.run === run && Object.hasOwn(now.slips, driver) ? (now.slips[driver] ?? {}) : {};
}

function put(driver: string, run: number, slip: Report): void {
  const now = typedSlips.now.value;
  const slips = now.run === run ? now.slips : {};
  void typedSlips.setTyped({ run, slips: { ...slips, [driver]: slip } });
}

/** Takes one answer of a slip. */
export function answerSlip<Field extends keyof Report>(
  driver: string,
  run: number,
  field: Field,
  value: Report[Field],
): void {
  put(driver, run, tidied(withAnswer(slipOf(driver, run), field, value, knownDay()?.venue)));
}

/** Whether a slip says enough: where, when, and what the car does or that the driver cannot tell. */
export const saysEnough = ({ corner, phase, balance, againstLastRun }: Report): boolean =>
  corner !== undefined &&
  phase !== undefined &&
  (balance !== undefined || againstLastRun === "cannot tell");

/** Whether the driver has a report on that place of the run already. */
export const isDouble = (driver: string, run: number, { corner, phase }: Report): boolean =>
  corner !== undefined &&
  (driverRun(driver, run)?.reports ?? []).some(
    ({ report }) => report.corner === corner && report.phase === phase,
  );

/** Files a slip, and begins the driver's next one. */
export function fileSlip(driver: string, run: number): Report {
  const report = slipOf(driver, run);
  write({ kind: "report", author: driver, run: runFor(driver, run).id, report });
  put(driver, run, {});
  return report;
}
