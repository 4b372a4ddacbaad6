import type { Car } from "@rollbook/lib";
import { spell } from "@rollbook/page";
import { fixedLevers } from "../say/class-rules.js";
import { List } from "./list.js";

/** What is not offered on a car because its class forbids it, and by which rule. */
export function Forbidden({ car: { classRules = [] } }: { readonly car: Car }) {
  const fixed = classRules.flatMap((rule) => (rule.kind === "fixed" ? [fixedLevers(rule)] : []));
  if (fixed.length === 0) return null;
  return <List kind="plain quiet" texts={fixed.map((rule) => spell(`Not offered: ${rule}.`))} />;
}
