import type { PhaseName } from "../../balance/phases.js";
import { type Axles, eachAxle } from "../../load/wheels.js";
import type { Cell } from "../debrief/cells.js";

/** Which load a change moves where it helps most, as far as that tells why it should. */
export interface LoadMoved {
  readonly corner: string;
  readonly phase: PhaseName;
  /** m/s² of balance there, above 0 towards the front sliding first */
  readonly shift: number;
  /**
   * N by which the outer tyre of an axle carries more than the inner one, after less before, in one and
   * the same turn: above 0 they share the load less evenly
   */
  readonly across: Axles<number>;
  /** N on both tyres of an axle, after less before */
  readonly along: Axles<number>;
  /**
   * What tells why: load that is shared otherwise across an axle; load that goes to the other axle;
   * neither, where it is the tyres' lean, direction, pressure or push; against, where that outweighs
   * loads which alone would move balance the other way
   */
  readonly tells: "across" | "along" | "neither" | "against";
}

/** Load below which nothing is told by it: a few hundredths of what a wheel carries. */
const LEAST_LOAD = 30; // N

/** What a change does to the loads of one place. */
export function loadMoved(before: Cell, after: Cell): LoadMoved {
  const shift = after.balance - before.balance;
  const sameTurn = before.lateralAcceleration / after.lateralAcceleration;
  const across = eachAxle(after.loads, ({ inner, outer }, end) => {
    const old = before.loads[end];
    return (outer - inner) * sameTurn - (old.outer - old.inner);
  });
  const along = eachAxle(after.loads, ({ inner, outer }, end) => {
    const old = before.loads[end];
    return inner + outer - old.inner - old.outer;
  });
  const { corner, phase } = after;
  return { corner, phase, shift, across, along, tells: whatTells(shift, across, along) };
}

/** The end that has more to carry, or shares it less evenly, slides earlier: other loads tell nothing. */
function whatTells(shift: number, across: Axles<number>, along: Axles<number>): LoadMoved["tells"] {
  const [wise, long] = [across.front - across.rear, along.front - along.rear];
  const larger = Math.abs(long) > Math.abs(wise) ? long : wise;
  if (Math.abs(larger) < 2 * LEAST_LOAD) return "neither";
  if (larger * shift <= 0) return "against";
  return larger === long ? "along" : "across";
}
