import type { PhaseName } from "../../balance/phases.js";
import type { Compared } from "./debrief.js";
import type { FeltCell } from "./felt.js";
import type { FeltReason } from "./felt-reasons.js";
import type { GroupCell } from "./group.js";

/** A part of a corner in which something else was felt than was predicted, and why that may be. */
export interface NotAsPredicted {
  readonly corner: string;
  readonly phase: PhaseName;
  /** Of every driver, in their order; the same ones may come again. */
  readonly reasons: readonly FeltReason[];
}

/** The places in which somebody felt something else than was predicted, each once. */
export function notAsPredicted(cells: readonly FeltCell[]): NotAsPredicted[] {
  const places = new Map<string, NotAsPredicted>();
  for (const { corner, phase, verdict, reasons } of cells) {
    if (verdict === "match") continue;
    const key = JSON.stringify([corner, phase]);
    const known = places.get(key)?.reasons ?? [];
    places.set(key, { corner, phase, reasons: [...known, ...reasons] });
  }
  return [...places.values()];
}

/** The cells of drivers in those places of which enough drivers speak that no name can be guessed. */
export function cellsToldOf(
  groups: readonly GroupCell[],
  compared: readonly Compared[],
): FeltCell[] {
  const told = groups.filter(({ felt }) => felt !== undefined);
  return compared
    .flatMap(({ cells }) => cells)
    .filter((one) =>
      told.some(({ corner, phase }) => one.corner === corner && one.phase === phase),
    );
}
