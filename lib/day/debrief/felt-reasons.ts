import type { DriverInput, Report } from "../log/report.js";
import type { Surface } from "../plan/venue.js";

/** How what was felt lies beside what the model says. None of them says that a driver was wrong. */
export type Verdict =
  | "match"
  | "opposite"
  | "nothing felt"
  | "other phase"
  | "felt, not predicted"
  | "confounded"
  | "no comparison";

/** All that is known about one cell of two runs. */
export interface FeltFacts {
  /** How many things were changed between the runs. */
  readonly tested: number;
  /** m/s², above 0 towards the front */
  readonly predicted: number;
  /** The sign of what should be felt; 0 when the shift is too small to feel. */
  readonly expected: number;
  /** Points, above 0 towards the front; nothing where it cannot be told. */
  readonly felt?: number;
  /** The sign of what was felt in the other phases of the corner. */
  readonly elsewhere: number;
  /** The shift is less than twice the least that is felt. */
  readonly nearThreshold: boolean;
  /** An inner wheel is in the air at the limit. */
  readonly lifted: boolean;
  readonly before?: Report;
  readonly report: Report;
  readonly surface?: Surface;
}

/** Why felt and predicted may lie as they do. */
export type FeltReason =
  /** m/s² that the model moves balance here, above 0 towards the front */
  | { readonly code: "predicted"; readonly shift: number }
  /** So many things were changed at once: nobody can say which was felt. */
  | { readonly code: "several-changes"; readonly count: number }
  /** No report on this place from the run before. */
  | { readonly code: "no-report-before" }
  /** A shift was felt in another part of this corner; above 0 towards the front. */
  | { readonly code: "felt-elsewhere"; readonly towards: number }
  /** This is how much feeling moves by itself. */
  | { readonly code: "nothing-changed" }
  /** What the driver was doing before, and now. */
  | { readonly code: "other-input"; readonly before: DriverInput; readonly now?: DriverInput }
  /** The shift is less than twice what can just be felt. */
  | { readonly code: "near-threshold" }
  /** At the limit an inner wheel is in the air here. */
  | { readonly code: "wheel-lifted" }
  | { readonly code: "rough-road" }
  /** One of the two reports was a guess. */
  | { readonly code: "a-guess" }
  | { readonly code: "not-every-lap" };

/** Why felt and predicted may lie as they do, the likelier reasons first. */
export function reasonsFor(verdict: Verdict, facts: FeltFacts): FeltReason[] {
  return [...ofVerdict(verdict, facts), ...(verdict === "match" ? [] : ofCircumstances(facts))];
}

function ofVerdict(verdict: Verdict, { tested, predicted, elsewhere }: FeltFacts): FeltReason[] {
  const said: FeltReason = { code: "predicted", shift: predicted };
  switch (verdict) {
    case "confounded":
      return [{ code: "several-changes", count: tested }];
    case "no comparison":
      return [{ code: "no-report-before" }];
    case "other phase":
      return [said, { code: "felt-elsewhere", towards: elsewhere }];
    case "felt, not predicted":
      return tested === 0 ? [said, { code: "nothing-changed" }] : [said];
    case "match":
    case "opposite":
    case "nothing felt":
      return [said];
  }
}

function ofCircumstances(facts: FeltFacts): FeltReason[] {
  const { before, report, surface } = facts;
  const holds: readonly (readonly [boolean, FeltReason])[] = [
    [facts.expected !== 0 && facts.nearThreshold, { code: "near-threshold" }],
    [facts.lifted, { code: "wheel-lifted" }],
    [surface === "rough", { code: "rough-road" }],
    [report.confidence === "a guess" || before?.confidence === "a guess", { code: "a-guess" }],
    [report.howOften === "once" || report.howOften === "sometimes", { code: "not-every-lap" }],
  ];
  const others = holds.flatMap(([isSo, reason]) => (isSo ? [reason] : []));
  return [...otherInput(before?.input, report.input), ...others];
}

function otherInput(before?: DriverInput, now?: DriverInput): FeltReason[] {
  if (before === undefined || before === now) return [];
  return [{ code: "other-input", before, ...(now !== undefined && { now }) }];
}
