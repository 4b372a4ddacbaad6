import {
  type Car,
  formatAlike,
  type Margin,
  parameters,
  type SheetRow,
  type UnitSystem,
  undoOf,
} from "@rollbook/lib";
import { changeLabel } from "../../../say/change.js";
import type { Reader } from "../../../say/reader.js";

/** What the hands do before a run, in words and the reader's units. */
export function toDoInWords(row: SheetRow, before: Car, reader: Reader): string[] {
  return row.toDo.map((change) => changeLabel(change, before, reader));
}

/** How what was done before a run is taken back, in words. */
export function undoInWords(row: SheetRow, reader: Reader): string[] {
  return [...row.toDo].reverse().map((change) => changeLabel(undoOf(change), row.car, reader));
}

/** The tightest margin of each kind of limit. */
export function tightest(margins: readonly Margin[]): Margin[] {
  const kinds = new Map<string, Margin>();
  for (const margin of margins) {
    const kind = `${margin.parameter} ${margin.kind}`;
    const known = kinds.get(kind);
    if (known === undefined || margin.margin < known.margin) kinds.set(kind, margin);
  }
  return [...kinds.values()];
}

/** A distance to a limit in the reader's unit, without sign. */
export function marginAmount({ parameter, margin }: Margin, system: UnitSystem): string {
  const { quantity, decimals } = parameters[parameter];
  return formatAlike(quantity, Math.abs(margin), decimals + 1, system);
}
