import { parameters } from "../../parameters.js";
import { quantities } from "../../units.js";
import { type ClassRule, isRange, type RangeRule, type TyreRule } from "../class-rules.js";
import { OWN_TYRE } from "../tyres.js";
import { tyreDataFaults } from "./tyre-data-faults.js";

/** What is wrong with rules whose fields are each in their range, one sentence each. */
export function ruleFaultsOf(rules: readonly ClassRule[] = [], path = "rules"): string[] {
  return rules.flatMap((rule, i) => {
    const at = `${path}.${i}`;
    if (isRange(rule)) return rangeFaults(rule, at);
    return rule.kind === "tyre" ? tyreFaults(rule, at) : [];
  });
}

function tyreFaults({ tyre, own }: TyreRule, path: string): string[] {
  if (own === undefined)
    return tyre === OWN_TYRE
      ? [`${path}.own is missing but must be given where tyre is "own".`]
      : [];
  if (tyre !== OWN_TYRE)
    return [`${path}.own is given but must be left out where tyre is "${tyre}".`];
  return tyreDataFaults(own.coefficients, `${path}.own.coefficients`);
}

function rangeFaults({ kind, least, greatest }: RangeRule, path: string): string[] {
  const { si } = quantities[parameters[kind].quantity];
  if (least === undefined && greatest === undefined)
    return [`${path}.least is missing but must be given, or ${path}.greatest.`];
  if (least === undefined || greatest === undefined || least <= greatest) return [];
  const told = (value: number) => `${value} ${si}`.trim();
  return [`${path}.least is ${told(least)} but must be at most the greatest, ${told(greatest)}.`];
}
