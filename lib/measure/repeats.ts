import { requireInRange } from "../check.js";
import { Refusal } from "../refusal.js";
import { studentT } from "../tails.js";
import { inQuadrature, type Measured, NINE_IN_TEN } from "./measured.js";

/** One thing read several times with one tool. */
export interface Readings {
  /** SI, at least one */
  readonly values: readonly number[];
  /** Standard uncertainty of the tool itself, which all its readings share, at least 0. */
  readonly tool: number;
}

/** What readings of one thing come to. */
export interface FromRepeats extends Measured {
  /** Standard deviation of one reading; nothing of fewer than two. */
  readonly scatter?: number;
  readonly count: number;
}

/**
 * The mean of repeated readings, and how far it may be off: their scatter and the tool's own doubt.
 *
 * Few readings say little of their own scatter, so theirs is widened until ±1.645 of it is as wide as
 * the interval of Student's t in which the mean lies nine times in ten. The tool's doubt is not made
 * smaller by reading it again.
 *
 * @throws Refusal without readings, or when one is not a finite number
 * @see JCGM 100:2008 (GUM), 4.2.3 and G.3
 * @example
 * fromRepeats({ values: [99, 100, 101], tool: 0 }).spread // → 1.025, by hand: 2.920/1.645·1/√3
 */
export function fromRepeats({ values, tool }: Readings): FromRepeats {
  if (values.length === 0) throw new Refusal("no-samples", "at least one reading is needed.");
  for (const value of values) requireInRange("reading", value, -Infinity, Infinity);
  requireInRange("spread of the tool", tool, 0, Infinity);
  const count = values.length;
  const value = values.reduce((sum, one) => sum + one, 0) / count;
  if (count === 1) return { value, spread: tool, count };
  const scatter = Math.sqrt(values.reduce((sum, one) => sum + (one - value) ** 2, 0) / (count - 1));
  const ofMean = (forFew(count - 1) * scatter) / Math.sqrt(count);
  return { value, spread: inQuadrature(tool, ofMean), scatter, count };
}

/** By how much a spread that few readings gave is widened, above 1. */
export const forFew = (freedom: number): number => studentT(0.9, freedom) / NINE_IN_TEN;
