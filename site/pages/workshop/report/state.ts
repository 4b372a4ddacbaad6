import { signal } from "@preact/signals";
import { asReporting, type Report, type Reporting, withAnswer } from "@rollbook/lib";
import { documentOf } from "@rollbook/page";
import { knownDay } from "../day/known-day.js";

const nobody: Reporting = { driver: "", run: 1, report: {} };

/** Who reports on which run, and what is said so far. */
export const reporting = documentOf({
  key: "workshop/report",
  empty: nobody,
  read: asReporting,
});

/** Somebody is asked who reports, though it is known. */
export const askingWho = signal(false);
/** The corner's name is typed, though the venue may know it. */
export const typingCorner = signal(false);
/** Filing was tried while something was missing. */
export const triedToFile = signal(false);

/** Takes an answer of the form. */
export function answer<Field extends keyof Report>(field: Field, value: Report[Field]): void {
  const now = reporting.now.value;
  const report = withAnswer(now.report, field, value, knownDay()?.venue);
  void reporting.setTyped({ ...now, report });
}

/** A name under way may be for a moment that of a corner: what was answered stays until it is done. */
export function typeCorner(corner: string): void {
  const now = reporting.now.value;
  typingCorner.value = true;
  void reporting.setTyped({ ...now, report: { ...now.report, corner } });
}

/** The corner is one that the venue knows. */
export function tapCorner(corner: string): void {
  typingCorner.value = corner === "";
  answer("corner", corner);
}

/** Begins a report: the next of the same driver and run, or of others. */
export function beginReport(driver: string, run: number): void {
  const now = reporting.now.value;
  const same = driver === now.driver && run === now.run;
  askingWho.value = false;
  if (!same) emptyReport(driver, run);
}

export function emptyReport(driver: string, run: number): void {
  typingCorner.value = false;
  triedToFile.value = false;
  void reporting.set({ driver, run, report: {} });
}
