import { GRAVITY } from "../units.js";
import type { Axles } from "./wheels.js";

/** One end of the body, as a mass that leans on its axle. */
export interface BodyEnd {
  /** kg of sprung mass over this axle */
  readonly sprungMass: number;
  /** m from the roll centre up to the sprung mass */
  readonly arm: number;
  /** N·m/rad between body and road; none when the axle can hold no more */
  readonly rollStiffness: number;
  /** N·m with which an axle that has lifted a wheel still holds the body */
  readonly heldMoment: number;
}

/**
 * Roll angle of the body at each axle, rad, or nothing when the springs cannot hold it up.
 *
 * Each end: Kφ·φ = ms·d·(ay + g·φ) + Kc·(φ of the other end − φ), with Kc the chassis in torsion.
 *
 * @param torsionStiffness - N·m/rad; Infinity for a stiff chassis: one angle for both ends
 */
export function bodyRoll(
  { front, rear }: Axles<BodyEnd>,
  lateralAcceleration: number,
  torsionStiffness = Infinity,
): Axles<number> | undefined {
  const [kf, kr] = [uprightStiffness(front), uprightStiffness(rear)];
  const [mf, mr] = [rollMoment(front, lateralAcceleration), rollMoment(rear, lateralAcceleration)];
  if (torsionStiffness === Infinity) {
    const angle = (mf + mr) / (kf + kr); // φ = ms·ay·d / (ΣKφ − ms·g·d) – Milliken 1995, ch. 18
    return kf + kr > 0 ? { front: angle, rear: angle } : undefined;
  }
  const c = torsionStiffness;
  const determinant = kf * kr + c * (kf + kr); // of [kf + c, −c; −c, kr + c]
  if (!(determinant > 0 && kf + c > 0)) return undefined;
  return {
    front: ((kr + c) * mf + c * mr) / determinant,
    rear: ((kf + c) * mr + c * mf) / determinant,
  };
}

/** What is left of the stiffness after the weight has pulled the leaning body over, N·m/rad. */
function uprightStiffness({ rollStiffness, sprungMass, arm }: BodyEnd): number {
  return rollStiffness - sprungMass * GRAVITY * arm;
}

function rollMoment({ sprungMass, arm, heldMoment }: BodyEnd, lateralAcceleration: number): number {
  return sprungMass * arm * lateralAcceleration - heldMoment;
}
