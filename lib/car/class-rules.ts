import type { AxleLever, CarLever } from "./lever.js";
import type { OwnTyre } from "./own-tyre.js";

/** What the rules of a class allow: ranges, a control tyre, and what may not be touched. */
export type ClassRule = RangeRule | TyreRule | FixedRule;

/** Numbers of a car that a class may limit; each is a row of the parameter table. */
export const rangeKinds = [
  "rideHeight",
  "track",
  "wheelbase",
  "mass",
  "camber",
  "toe",
  "tyrePressure",
  "springRate",
  "barRate",
  "seatTurns",
] as const;
export type RangeKind = (typeof rangeKinds)[number];

/** Those of them that belong to the whole car, not to an axle. */
export const ofWholeCar: readonly RangeKind[] = ["wheelbase", "mass"];

interface Rule {
  /** What the rule book calls it, such as "4.2". */
  readonly name?: string;
  /** Left out: both axles. */
  readonly end?: "front" | "rear";
}

/** Least and greatest value of a number, SI; at least one of them. */
export interface RangeRule extends Rule {
  readonly kind: RangeKind;
  readonly least?: number;
  readonly greatest?: number;
}

/** The tyre that everybody drives. */
export interface TyreRule extends Rule {
  readonly kind: "tyre";
  /** One of the tyres the workbook knows; or "own", with that tyre. */
  readonly tyre: string;
  /** A tyre that the class brings along. */
  readonly own?: OwnTyre;
}

/** Levers that may not be moved. */
export interface FixedRule extends Rule {
  readonly kind: "fixed";
  readonly levers: readonly RuledLever[];
}

/** What a class may forbid to move. */
export type RuledLever = AxleLever | CarLever | "barPosition";

/** A car as far as its class goes. */
interface Ruled {
  readonly classRules?: readonly ClassRule[];
}

/** Whether a rule is one of a range. */
export const isRange = (rule: ClassRule): rule is RangeRule =>
  rule.kind !== "tyre" && rule.kind !== "fixed";

/** The rules of a kind that a class has for an axle; those of the whole car have no end. */
export function rulesFor<K extends ClassRule["kind"]>(
  { classRules = [] }: Ruled,
  kind: K,
  end?: "front" | "rear",
): Extract<ClassRule, { kind: K }>[] {
  return classRules.filter(
    (rule): rule is Extract<ClassRule, { kind: K }> =>
      rule.kind === kind && (rule.end === undefined || end === undefined || rule.end === end),
  );
}

/** The rule that forbids a car's lever; nothing where none does. */
export const ruleAgainst = (
  car: Ruled,
  lever: RuledLever,
  end?: "front" | "rear",
): FixedRule | undefined =>
  rulesFor(car, "fixed", end).find(({ levers }) => levers.includes(lever));
