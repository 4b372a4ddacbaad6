import {
  type ClassFact,
  type ClassRule,
  carLenses,
  controlTyreName,
  type EndLever,
  endLenses,
  type FixedRule,
  type Margin,
  parameters,
  type Quantity,
  type RuledLever,
  type SeatRule,
} from "@rollbook/lib";
import { inList } from "./in-list.js";
import type { Reader } from "./reader.js";
import { formatAlike } from "./shown-range.js";

/** An SI value as text with its unit. */
type Show = (quantity: Quantity, value: number, decimals: number) => string;

/** Shows values in the units of a reader. */
export const shownTo =
  ({ units }: Pick<Reader, "units">): Show =>
  (quantity, value, decimals) =>
    formatAlike(quantity, value, decimals, units);

type Limit = Omit<Margin, "value">;

/** What a rule is called, such as "rule 4.2" or "a rule". */
export const ruleName = (rule: string | undefined): string =>
  rule === undefined ? "a rule" : `rule ${rule}`;

const before = (rule: string | undefined): string => (rule === undefined ? "" : `rule ${rule}, `);

/** A distance to a limit without sign: finer, where as fine as usual would show as nothing. */
export function marginAmount(limit: Pick<Limit, "parameter" | "margin">, show: Show): string {
  const { quantity, decimals } = parameters[limit.parameter];
  const as = (more: number) => show(quantity, Math.abs(limit.margin), decimals + more);
  const first = decimals === 0 ? 1 : 0;
  const finer = [first, 1, 2, 3, 4, 5].find((more) => /[1-9]/.test(as(more)));
  return as(limit.margin === 0 ? first : (finer ?? 6));
}

/** What is limited, such as "rule 4.2, ride height at least 110 mm". */
export function limitName(limit: Limit, show: Show): string {
  const { name, quantity, decimals } = parameters[limit.parameter];
  const bound = limit.kind === "least" ? "at least" : "at most";
  const value = show(quantity, limit.limit, decimals);
  return `${before(limit.rule)}${name.toLowerCase()} ${bound} ${value}`;
}

/** How a limit stands, such as "broken by 4.0 mm (front left)". */
export function standingOf(limit: Limit, show: Show): string {
  const { margin, where } = limit;
  const by = marginAmount(limit, show);
  const told =
    margin < 0 ? `broken by ${by}` : margin > 0 ? `held, ${by} to spare` : "held, nothing to spare";
  return where === "car" ? told : `${told} (${where})`;
}

/** What a limit that does not hold says, such as "ride height at least 110 mm by 4.0 mm (front left)". */
export const brokenBy = (limit: Limit, show: Show): string => {
  const where = limit.where === "car" ? "" : ` (${limit.where})`;
  return `${limitName(limit, show)} by ${marginAmount(limit, show)}${where}`;
};

type TyreFact = Extract<ClassFact, { code: "tyre" }>;

/** What a fact of a car against its class is about. */
export const factName = (fact: ClassFact, show: Show): string =>
  fact.code === "limit" ? limitName(fact, show) : `${before(fact.rule)}control tyre ${fact.limit}`;

/** Whether it is held or broken, and by how much. */
export const factStanding = (fact: ClassFact, show: Show): string =>
  fact.code === "limit" ? standingOf(fact, show) : tyreStanding(fact);

const tyreStanding = ({ held, value, where }: TyreFact): string =>
  held ? `held (${where})` : `broken (${where}: ${value})`;

/** A rule by itself, a sentence for each end of a range: "rule 4.1, front ride height at least 120 mm". */
export function ruleInWords(rule: ClassRule, show: Show): string[] {
  if (rule.kind === "fixed") return [fixedLevers(rule)];
  const at = rule.end === undefined ? "" : `${rule.end}: `;
  if (rule.kind === "tyre")
    return [`${at}${before(rule.name)}control tyre ${controlTyreName(rule)}`];
  const bounds = ["least", "greatest"] as const;
  return bounds.flatMap((kind) => {
    const limit = rule[kind];
    if (limit === undefined) return [];
    const named = rule.name === undefined ? {} : { rule: rule.name };
    const bound = { parameter: rule.kind, kind, limit, margin: 0, where: "car", ...named };
    return [`${at}${limitName(bound, show)}`];
  });
}

/** Why a lever is not moved. */
export const fixedInWords = ({ name }: FixedRule): string => {
  const rule = ruleName(name);
  return `${rule.charAt(0).toUpperCase()}${rule.slice(1)} of the class does not allow it to be moved.`;
};

/** Why the seats are not turned back after a change. */
export function seatsKeptInWords(why: SeatRule, show: Show): string {
  return why.code === "fixed"
    ? `The seats stay as they are: ${ruleName(why.rule.name)} of the class does not allow them to be turned.`
    : `The seats stay as they are: turned back they would break the class limit of ${brokenBy(why.margin, show)}.`;
}

/** What may not be moved, such as "rule 4.3: front spring rate and toe-in per wheel may not be moved". */
export function fixedLevers({ name, end, levers }: FixedRule): string {
  const named = levers.map((lever) => {
    const lens = isEndLever(lever) ? endLenses[lever] : carLenses[lever];
    const at = end === undefined || !isEndLever(lever) ? "" : `${end} `;
    return `${at}${parameters[lens.parameter].name.toLowerCase()}`;
  });
  return `${ruleName(name)}: ${inList(named)} may not be moved`;
}

const isEndLever = (lever: RuledLever): lever is EndLever => Object.hasOwn(endLenses, lever);
