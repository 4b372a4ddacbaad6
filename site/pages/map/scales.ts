import type { SetUpMap } from "@rollbook/lib";
import { fromShown, toShown, type UnitSystem } from "../../say/units.js";
import { drawnOf } from "./drawn.js";
import { rangeOf, roundStep } from "./levels.js";

/** Steps between lines and the balance of the deepest colour, m/s², round in the shown unit. */
export interface Scales {
  readonly balance: number;
  readonly grip: number;
  readonly deepest: number;
}

const lines = 8;

/** Scales that suit a map; they stay while a lever moves, so that lines move and do not jump. */
export function scalesOf(map: SetUpMap, units: UnitSystem): Scales {
  const step = (span: number) =>
    fromShown("acceleration", roundStep(toShown("acceleration", span, units), lines), units);
  const balance = rangeOf(drawnOf(map, map.understeerMargin));
  const grip = rangeOf(drawnOf(map, map.lateralAcceleration));
  if (balance.least > balance.most) return { balance: step(1), grip: step(1), deepest: step(1) };
  const furthest = Math.max(Math.abs(balance.least), Math.abs(balance.most));
  const between = step(Math.max(1e-3, balance.most - balance.least));
  return {
    balance: between,
    grip: step(Math.max(1e-3, grip.most - grip.least)),
    deepest: Math.max(1, Math.ceil(furthest / between - 1e-9)) * between,
  };
}
