import { columnKey, ruleColumns, worstFact } from "../../lib/day/class/class-columns.js";
import type { CarClass } from "../../lib/day/class/class-file.js";
import type { ClassFact } from "../../lib/statics/class-check.js";
import { factName, factStanding, fixedLevers } from "../say/class-rules.js";
import type { UnitSystem } from "../say/units.js";
import { DASH } from "./balance-text.js";
import { textTable } from "./text-table.js";
import { writer } from "./writer.js";

/** A car against its class, or why there is nothing to say of it. */
export interface CheckedCar {
  readonly file: string;
  readonly car?: string;
  readonly notes?: readonly string[];
  readonly facts?: readonly ClassFact[];
  readonly faults?: readonly string[];
}

/**
 * Cars down, rules across: held or broken and by how much, at the wheel where it is nearest to the
 * limit. Rules are numbered in the head and told below.
 */
export function classTable(
  { name, rules }: Pick<CarClass, "name" | "rules">,
  cars: readonly CheckedCar[],
  units: UnitSystem,
): string {
  const { value } = writer(units);
  const columns = columnsOf(cars);
  const sound = cars.filter(({ facts }) => facts !== undefined);
  const head = ["", ...columns.map((_, i) => `[${i + 1}]`), ""];
  const rows = sound.map(({ car = "", facts = [] }) => {
    const cells = columns.map((column) => cellOf(facts, columnKey(column)));
    const broken = cells.filter((cell) => cell !== undefined && !cell.held).length;
    return [
      car,
      ...cells.map((fact) =>
        fact ? factStanding(fact, value).replace(/^broken/, "BROKEN") : DASH,
      ),
      broken === 0 ? "held" : `${broken} BROKEN`,
    ];
  });
  const fixed = rules.flatMap((rule) => (rule.kind === "fixed" ? [fixedLevers(rule)] : []));
  const parts = [
    `Class ${name}`,
    ...(rows.length > 0 ? [textTable([head, ...rows])] : []),
    ...columns.map((fact, i) => `  [${i + 1}] ${factName(fact, value)}`),
    ...fixed.map((sentence) => `  ${sentence}`),
    ...cars.flatMap(({ file, car, faults = [] }) =>
      faults.map((fault) => `${car ?? file}: ${fault}`),
    ),
  ];
  return `${parts.join("\n")}\n`;
}

const cellOf = (facts: readonly ClassFact[], key: string): ClassFact | undefined =>
  worstFact(facts.filter((fact) => columnKey(fact) === key));

/** One fact for each rule that any car is held against. */
function columnsOf(cars: readonly CheckedCar[]): ClassFact[] {
  const all = ruleColumns(cars.flatMap(({ facts = [] }) => facts));
  return all.flatMap(({ facts }) => facts.slice(0, 1));
}
