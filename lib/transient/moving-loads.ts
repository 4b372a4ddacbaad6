import type { HandlingAxle } from "../balance/handling-car.js";
import type { Sides } from "../load/wheels.js";

/** What one axle moves from its left to its right tyre, N, by cause. */
export interface TransferParts {
  /** through the links, as soon as there is side force */
  readonly geometric: number;
  /** of the wheels themselves, at once too */
  readonly unsprung: number;
  /** through springs, bar and tyres, with the roll angle */
  readonly elastic: number;
  /** through the dampers, while the body rolls */
  readonly damper: number;
}

/** The sum of all parts, N. */
export function totalTransfer({ geometric, unsprung, elastic, damper }: TransferParts): number {
  return geometric + unsprung + elastic + damper;
}

/**
 * Load transfer of one axle of a moving car, by cause.
 *
 * @param sideForce - N of both tyres
 * @param ay - m/s² of the axle across the car
 */
export function transferParts(
  axle: HandlingAxle,
  sideForce: number,
  ay: number,
  { rollAngle, rollRate }: { rollAngle: number; rollRate: number },
): TransferParts {
  const { track, unsprungMass } = axle;
  const throughLinks = sideForce - unsprungMass * ay; // what the tyres do beyond their own wheels
  return {
    geometric: (throughLinks * axle.rollCentreHeight) / track,
    unsprung: (unsprungMass * ay * axle.unsprungHeight) / track,
    elastic: (axle.rollStiffness * rollAngle) / track,
    damper: (axle.rollDamping * rollRate) / track,
  };
}

/**
 * Load under each tyre of an axle, N: no tyre pulls at the road, none carries more than all.
 *
 * @param load - N of both tyres
 */
export function tyreLoads(axle: HandlingAxle, load: number, parts: TransferParts): Sides<number> {
  const wanted = load / 2 + axle.leftExcessLoad - totalTransfer(parts);
  const left = Math.min(load, Math.max(0, wanted));
  return { left, right: load - left };
}
