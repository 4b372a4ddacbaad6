import type { ClassFact } from "../../statics/class-check.js";

/** One rule for a table of cars: what it is, and its facts on one car. */
export interface RuleColumn {
  readonly key: string;
  readonly facts: readonly ClassFact[];
}

/** The facts of a car rule by rule, in the order in which the rules come. */
export function ruleColumns(facts: readonly ClassFact[]): RuleColumn[] {
  const columns = new Map<string, ClassFact[]>();
  for (const fact of facts) {
    const key = columnKey(fact);
    columns.set(key, [...(columns.get(key) ?? []), fact]);
  }
  return [...columns].map(([key, found]) => ({ key, facts: found }));
}

/** What two cars share where they are held against the same rule. */
export const columnKey = (fact: ClassFact): string =>
  fact.code === "tyre"
    ? JSON.stringify(["tyre", fact.rule ?? "", fact.limit])
    : JSON.stringify([fact.parameter, fact.kind, fact.rule ?? "", fact.limit]);

/** The fact of a rule that matters most on a car: broken before held, then the nearest to the limit. */
export const worstFact = (facts: readonly ClassFact[]): ClassFact | undefined =>
  facts.reduce<ClassFact | undefined>(
    (worst, fact) => (worst === undefined || isWorse(fact, worst) ? fact : worst),
    undefined,
  );

function isWorse(one: ClassFact, other: ClassFact): boolean {
  if (one.code === "limit" && other.code === "limit") return one.margin < other.margin;
  return !one.held && other.held;
}
