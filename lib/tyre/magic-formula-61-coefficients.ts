import type { TyreRange } from "./tyre.js";

/**
 * What Magic Formula 6.1 needs to know of one tyre, under the published names.
 *
 * Only forces and moment of pure and combined slip, load against deflection, contact patch. Angles follow the book: slip
 * angle and inclination are ISO 8855, which is why stiffnesses carry a minus sign.
 * – Pacejka, Tire and Vehicle Dynamics, 3rd ed. 2012, ch. 4.3.2 and Appendix 3
 */
export interface MagicFormula61Coefficients {
  readonly name: string;
  readonly valid: TyreRange;

  /** Nominal load, N. */
  readonly FNOMIN: number;
  /** Nominal pressure above atmosphere, Pa. */
  readonly NOMPRES: number;
  /** Free radius, m. */
  readonly UNLOADED_RADIUS: number;
  /** Width, m. */
  readonly WIDTH: number;

  /** Vertical stiffness at nominal load and pressure, N/m, and its relative rise with pressure. */
  readonly VERTICAL_STIFFNESS: number;
  readonly PFZ1: number;
  /** Load against deflection: square term, and what lean adds to the linear one. */
  readonly Q_FZ2: number;
  readonly Q_FZ3: number;
  /** Contact half length: square root term, linear term. */
  readonly Q_RA1: number;
  readonly Q_RA2: number;
  /** Contact half width: linear term and cube root term. */
  readonly Q_RB1: number;
  readonly Q_RB2: number;

  /** Side force: shape, friction, curvature, stiffness, shifts, pressure. */
  readonly PCY1: number;
  readonly PDY1: number;
  readonly PDY2: number;
  readonly PDY3: number;
  readonly PEY1: number;
  readonly PEY2: number;
  readonly PEY3: number;
  readonly PEY4: number;
  readonly PEY5: number;
  readonly PKY1: number;
  readonly PKY2: number;
  readonly PKY3: number;
  readonly PKY4: number;
  readonly PKY5: number;
  readonly PKY6: number;
  readonly PKY7: number;
  readonly PHY1: number;
  readonly PHY2: number;
  readonly PVY1: number;
  readonly PVY2: number;
  readonly PVY3: number;
  readonly PVY4: number;
  readonly PPY1: number;
  readonly PPY2: number;
  readonly PPY3: number;
  readonly PPY4: number;
  readonly PPY5: number;

  /** Side force under drive or brake slip. */
  readonly RBY1: number;
  readonly RBY2: number;
  readonly RBY3: number;
  readonly RBY4: number;
  readonly RCY1: number;
  readonly REY1: number;
  readonly REY2: number;
  readonly RHY1: number;
  readonly RHY2: number;
  readonly RVY1: number;
  readonly RVY2: number;
  readonly RVY3: number;
  readonly RVY4: number;
  readonly RVY5: number;
  readonly RVY6: number;

  /** Longitudinal force: shape, friction, curvature, stiffness, shifts, pressure. */
  readonly PCX1: number;
  readonly PDX1: number;
  readonly PDX2: number;
  readonly PDX3: number;
  readonly PEX1: number;
  readonly PEX2: number;
  readonly PEX3: number;
  readonly PEX4: number;
  readonly PKX1: number;
  readonly PKX2: number;
  readonly PKX3: number;
  readonly PHX1: number;
  readonly PHX2: number;
  readonly PVX1: number;
  readonly PVX2: number;
  readonly PPX1: number;
  readonly PPX2: number;
  readonly PPX3: number;
  readonly PPX4: number;

  /** Longitudinal force under slip angle. */
  readonly RBX1: number;
  readonly RBX2: number;
  readonly RBX3: number;
  readonly RCX1: number;
  readonly REX1: number;
  readonly REX2: number;
  readonly RHX1: number;

  /** Trail: stiffness, shape, size, curvature, shift, pressure. */
  readonly QBZ1: number;
  readonly QBZ2: number;
  readonly QBZ3: number;
  readonly QBZ4: number;
  readonly QBZ5: number;
  readonly QCZ1: number;
  readonly QDZ1: number;
  readonly QDZ2: number;
  readonly QDZ3: number;
  readonly QDZ4: number;
  readonly QEZ1: number;
  readonly QEZ2: number;
  readonly QEZ3: number;
  readonly QEZ4: number;
  readonly QEZ5: number;
  readonly QHZ1: number;
  readonly QHZ2: number;
  readonly QHZ3: number;
  readonly QHZ4: number;
  readonly PPZ1: number;
  /** Moment that is left without side force: stiffness, size, pressure. */
  readonly QBZ9: number;
  readonly QBZ10: number;
  readonly QDZ6: number;
  readonly QDZ7: number;
  readonly QDZ8: number;
  readonly QDZ9: number;
  readonly QDZ10: number;
  readonly QDZ11: number;
  readonly PPZ2: number;
  /** Where the push acts beside the middle: still, by side force, by lean. */
  readonly SSZ1: number;
  readonly SSZ2: number;
  readonly SSZ3: number;
  readonly SSZ4: number;
}

/**
 * The same tyre without what makes it pull to one side: ply steer, conicity, left-right asymmetry.
 *
 * A car wears mirrored tyres left and right, so on an axle most of that cancels. What is left
 * behaves the same in left and right turns.
 */
export function withoutPull(tyre: MagicFormula61Coefficients): MagicFormula61Coefficients {
  return { ...tyre, ...noPull };
}

const noPull = {
  PHY1: 0,
  PHY2: 0,
  PVY1: 0,
  PVY2: 0,
  PEY3: 0,
  RBY3: 0,
  RVY1: 0,
  RVY2: 0,
  RHX1: 0,
  QBZ4: 0,
  QDZ6: 0,
  QDZ7: 0,
  QEZ4: 0,
  QHZ1: 0,
  QHZ2: 0,
  SSZ1: 0,
};
