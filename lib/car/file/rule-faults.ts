import { parameters } from "../../parameters.js";
import { quantities } from "../../units.js";
import { type ClassRule, isRange, type RangeRule } from "../class-rules.js";

/** What is wrong with rules whose fields are each in their range, one sentence each. */
export function ruleFaultsOf(rules: readonly ClassRule[] = [], path = "rules"): string[] {
  return rules.flatMap((rule, i) => (isRange(rule) ? rangeFaults(rule, `${path}.${i}`) : []));
}

function rangeFaults({ kind, least, greatest }: RangeRule, path: string): string[] {
  const { si } = quantities[parameters[kind].quantity];
  if (least === undefined && greatest === undefined)
    return [`${path}.least is missing but must be given, or ${path}.greatest.`];
  if (least === undefined || greatest === undefined || least <= greatest) return [];
  const told = (value: number) => `${value} ${si}`.trim();
  return [`${path}.least is ${told(least)} but must be at most the greatest, ${told(greatest)}.`];
}
