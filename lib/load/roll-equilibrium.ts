import { type AxleStiffness, axleStiffness, momentInRoll } from "./axle-stiffness.js";
import { type AxleInRoll, type CarInRoll, sprungMassOnAxles } from "./car-in-roll.js";
import type { Axles } from "./wheels.js";

/** What is known of an axle before the body rolls. */
export interface AxleHeld {
  /** N·m between body and axle besides springs and bar: dampers, stops; above 0 holds a left turn */
  readonly extra: number;
  /** N·m that the tyres move when the inner one is off the ground and has no more to give */
  readonly given?: number | undefined;
  /** m/s² that acts on what an axle with a wheel off the ground lifts; 0 when left out */
  readonly lifting?: number | undefined;
}

/** A body in balance on its axles, and the axles on their tyres. */
export interface RollEquilibrium {
  /** rad of the body at each axle against the road, above 0 right side down */
  readonly body: Axles<number>;
  /** rad of the same between the wheels and the road: what the tyres give */
  readonly tyres: Axles<number>;
  /** N·m about the ground that the tyres of each axle move from left to right */
  readonly moment: Axles<number>;
}

const NOTHING_HELD: Axles<AxleHeld> = { front: { extra: 0 }, rear: { extra: 0 } };

/**
 * Roll of a body on springs, and of its axles on their tyres, in a steady left turn.
 *
 * With φ of the body and φt of the axle against the road, M = K·(φ − φt) + extra between them, and
 * the share s of the wheels' own side force that stays at the axle, whose wheels lean by
 * λ = (1 − s)·φ + s·φt:
 * axle: Kt·φt = M + ms·h_rc·(ay + g·φt) + s·mu·hu·(ay + g·λ),
 * body: M = ms·d·(ay + g·φ) + (1 − s)·mu·hu·(ay + g·λ) + Kc·(φ of the other end − φ)
 * – virtual work of weights and side forces over small angles; with stiff tyres and s = 1 it is
 * Milliken 1995, ch. 18. On independent links K has ms·g·h_rc more: their springs press along the
 * leaning body, so its weight leans on the links as well, and it rises a little as it rolls.
 *
 * An axle that has lifted its inner tyre goes up as it turns about the outer one, by t/2 for each rad,
 * and side force has the longer lever: (ms + mu)·(t/2)·`lifting` for each rad from there on.
 *
 * @param ay - m/s² to the left
 * @param held - what else holds an axle, and which one has lifted its inner tyre
 * @returns nothing when springs and tyres cannot hold the body up
 */
export function rollEquilibrium(
  car: CarInRoll,
  ay: number,
  held: Axles<AxleHeld> = NOTHING_HELD,
): RollEquilibrium | undefined {
  const sprung = sprungMassOnAxles(car);
  const front = endOf(car, "front", sprung.front, ay, held.front);
  const rear = endOf(car, "rear", sprung.rear, ay, held.rear);
  if (!(front.stiff.hold > 0 && rear.stiff.hold > 0)) return undefined;
  const body = bodyAngles(front, rear, car.torsionStiffness ?? Infinity);
  if (body === undefined) return undefined;
  const tyres = { front: tyreAngle(front, body.front), rear: tyreAngle(rear, body.rear) };
  return {
    body,
    tyres,
    moment: {
      front: held.front.given ?? momentOf(front, body.front, tyres.front),
      rear: held.rear.given ?? momentOf(rear, body.rear, tyres.rear),
    },
  };
}

/** One end with its axle taken out: what the body feels of it. */
interface End {
  readonly stiff: AxleStiffness;
  /** N·m/rad that holds the body, its axle giving way and its weight leaning */
  readonly stiffness: number;
  /** N·m that rolls the body */
  readonly load: number;
  /** N·m that roll the axle besides the body's angle */
  readonly push: number;
  /** N·m that the tyres move besides what comes with the angles */
  readonly direct: number;
}

function endOf(
  car: CarInRoll,
  name: "front" | "rear",
  sprungMass: number,
  ay: number,
  { extra, given, lifting = 0 }: AxleHeld,
): End {
  const axle = car[name];
  const tyres = axle.tyreRollStiffness ?? Infinity;
  const up = given === undefined ? 0 : Math.sign(given) * liftedPerRad(axle, sprungMass) * lifting;
  const stays = given === undefined ? tyres : -up;
  const stiff = axleStiffness(axle, sprungMass, car.sprungHeight, stays);
  const direct = extra + stiff.axleLever * ay;
  const push = direct - (given ?? 0) * (1 + up / tyres); // it went up from the angle given / tyres on
  const { coupling, hold, own, bodyLever } = stiff;
  return {
    stiff,
    stiffness: own - (coupling * coupling) / hold,
    load: bodyLever * ay - extra + (coupling * push) / hold,
    push,
    direct,
  };
}

/** What an axle lifts for each rad that it turns about its outer tyre, kg·m. */
function liftedPerRad({ unsprungMass, track }: AxleInRoll, sprungMass: number): number {
  return (sprungMass + unsprungMass) * (track / 2);
}

/** The body at both ends: one angle on a stiff chassis, two with a torsion spring between them. */
function bodyAngles(front: End, rear: End, torsion: number): Axles<number> | undefined {
  const [kf, kr, mf, mr] = [front.stiffness, rear.stiffness, front.load, rear.load];
  if (torsion === Infinity) {
    const angle = (mf + mr) / (kf + kr);
    return kf + kr > 0 ? { front: angle, rear: angle } : undefined;
  }
  const determinant = kf * kr + torsion * (kf + kr); // of [kf + c, −c; −c, kr + c]
  if (!(determinant > 0 && kf + torsion > 0)) return undefined;
  return {
    front: ((kr + torsion) * mf + torsion * mr) / determinant,
    rear: ((kf + torsion) * mr + torsion * mf) / determinant,
  };
}

function tyreAngle({ stiff: { coupling, hold }, push }: End, body: number): number {
  return (coupling * body + push) / hold;
}

function momentOf({ stiff, direct }: End, body: number, tyres: number): number {
  return direct + momentInRoll(stiff, body, tyres);
}
