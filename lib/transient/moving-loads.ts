import type { HandlingAxle } from "../balance/handling-car.js";
import { momentInRoll } from "../load/axle-stiffness.js";
import type { Sides } from "../load/wheels.js";
import type { RollingEnd } from "./rolling-body.js";

/** What one axle moves from its left to its right tyre, N, by cause. */
export interface TransferParts {
  /** through the links, as soon as there is side force */
  readonly geometric: number;
  /** of the wheels themselves, at once too, as far as their own side force stays at the axle */
  readonly unsprung: number;
  /** with the roll angle: through springs and bar, and by weight that leans on links and wheels */
  readonly elastic: number;
  /** through the dampers, while the body rolls */
  readonly damper: number;
}

/**
 * The sum of all parts, N.
 *
 * @example
 * totalTransfer({ geometric: 100, unsprung: 50, elastic: 200, damper: -20 }) // → 330
 */
export function totalTransfer({ geometric, unsprung, elastic, damper }: TransferParts): number {
  return geometric + unsprung + elastic + damper;
}

/** What one axle of a moving car moves, and how it stands on its tyres. */
export interface AxleInMotion {
  readonly transfer: TransferParts;
  /** rad of the axle against the road, above 0 right side down */
  readonly tyreAngle: number;
}

/**
 * Load transfer of one axle of a moving car, by cause. Its tyres give at once.
 *
 * @param sideForce - N of both tyres
 * @param wheels - m/s² of the mass of the wheels across the car
 */
export function axleInMotion(
  axle: HandlingAxle,
  end: RollingEnd,
  sideForce: number,
  wheels: number,
  { rollAngle, rollRate }: { rollAngle: number; rollRate: number },
): AxleInMotion {
  const { track, unsprungMass, ownForceShare = 1 } = axle;
  const links = (sideForce - unsprungMass * wheels) * axle.rollCentreHeight; // what tyres do beyond their own wheels
  const own = ownForceShare * unsprungMass * wheels * axle.unsprungHeight;
  const damper = end.damping * (1 - end.gives) * rollRate;
  const tyreAngle = end.gives * rollAngle + (links + own + damper) / end.stiff.hold;
  const transfer = {
    geometric: links / track,
    unsprung: own / track,
    elastic: momentInRoll(end.stiff, rollAngle, tyreAngle) / track,
    damper: damper / track,
  };
  return { transfer, tyreAngle };
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
