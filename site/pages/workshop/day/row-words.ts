import {
  type Car,
  type Change,
  carLenses,
  endLenses,
  formatAlike,
  isEndChange,
  labelOf,
  type Margin,
  parameters,
  type SheetRow,
  type UnitSystem,
  undoOf,
} from "@rollbook/lib";

/** A lever by its name, such as "front spring rate". */
export function leverName(change: Omit<Change, "by">): string {
  const asked = change as Change;
  const lens = isEndChange(asked) ? endLenses[asked.lever] : carLenses[asked.lever];
  const name = parameters[lens.parameter].name.toLowerCase();
  return isEndChange(asked) ? `${asked.end} ${name}` : name;
}

/** What a lever's value measures and how many digits it is shown with. */
export function leverParameter(change: Omit<Change, "by">) {
  const asked = change as Change;
  const lens = isEndChange(asked) ? endLenses[asked.lever] : carLenses[asked.lever];
  return parameters[lens.parameter];
}

/** What the hands do before a run, in words and the reader's units. */
export function toDoInWords(row: SheetRow, before: Car, system: UnitSystem): string[] {
  return row.toDo.map((change) => labelOf(change, before, system));
}

/** How what was done before a run is taken back, in words. */
export function undoInWords(row: SheetRow, system: UnitSystem): string[] {
  return [...row.toDo].reverse().map((change) => labelOf(undoOf(change), row.car, system));
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
