import { GRAVITY } from "../units.js";
import type { AxleInRoll } from "./car-in-roll.js";

/** How an axle holds the body over it, and the road it, in roll; weights that lean counted in. */
export interface AxleStiffness {
  /** N·m/rad between body and axle */
  readonly springs: number;
  /** N·m/rad that would hold the body on an axle that does not move */
  readonly own: number;
  /** N·m on the axle for each rad of the body, and on the body for each rad of the axle */
  readonly coupling: number;
  /** N·m/rad that holds the axle under a body that does not move; Infinity on stiff tyres */
  readonly hold: number;
  /** kg·m: moment on the body for each m/s² to the left */
  readonly bodyLever: number;
  /** kg·m: moment on the axle for each m/s² to the left */
  readonly axleLever: number;
  /** N·m that weight on links and wheels adds at the tyres for each rad of the body */
  readonly leanBody: number;
  /** the same for each rad of the axle */
  readonly leanAxle: number;
}

/**
 * One axle of a car in roll: the second derivatives of the potential energy of springs, tyres and
 * weights by the angles of body and axle, and the first ones of side force – see docs/model.md.
 *
 * @param sprungMass - kg over this axle
 * @param sprungHeight - m above the ground
 * @param tyres - N·m/rad of both tyres
 */
export function axleStiffness(
  axle: AxleInRoll,
  sprungMass: number,
  sprungHeight: number,
  tyres: number,
): AxleStiffness {
  const kept = axle.ownForceShare ?? 1;
  const links = sprungMass * axle.rollCentreHeight; // ms·h_rc
  const body = sprungMass * (sprungHeight - axle.rollCentreHeight); // ms·d
  const wheels = axle.unsprungMass * axle.unsprungHeight; // mu·hu
  const passed = 1 - kept;
  const springs = axle.rollStiffness + (axle.independent ? GRAVITY * links : 0);
  return {
    springs,
    own: springs - GRAVITY * (body + passed * passed * wheels),
    coupling: springs + GRAVITY * kept * passed * wheels,
    hold: tyres + springs - GRAVITY * (links + kept * kept * wheels),
    bodyLever: body + passed * wheels,
    axleLever: links + kept * wheels,
    leanBody: GRAVITY * kept * passed * wheels,
    leanAxle: GRAVITY * (links + kept * kept * wheels),
  };
}

/** What springs and leaning weights move at the tyres, N·m, at angles of body and axle. */
export function momentInRoll(
  { springs, leanBody, leanAxle }: AxleStiffness,
  body: number,
  axle: number,
): number {
  return springs * (body - axle) + leanBody * body + leanAxle * axle;
}
