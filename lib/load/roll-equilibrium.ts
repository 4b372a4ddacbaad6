import { GRAVITY } from "../units.js";
import { type CarInRoll, sprungMassOnAxles } from "./car-in-roll.js";
import type { Axles } from "./wheels.js";

/** What is known of an axle before the body rolls. */
export interface AxleHeld {
  /** N·m between body and axle besides springs and bar: dampers, stops; above 0 holds a left turn */
  readonly extra: number;
  /** N·m that the tyres move when the inner one is off the ground and has no more to give */
  readonly given?: number | undefined;
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
 * Milliken 1995, ch. 18.
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
  /** N·m/rad that holds the body; less what its leaning weight takes */
  readonly stiffness: number;
  /** N·m that rolls the body */
  readonly load: number;
  /** the axle's angle is (coupling·φ + push) / hold */
  readonly coupling: number;
  readonly push: number;
  /** N·m/rad that holds the axle to the road; Infinity on stiff tyres */
  readonly hold: number;
  /** N·m that the tyres move: springs·(φ − φt) + direct + leanBody·φ + leanAxle·φt */
  readonly springs: number;
  readonly direct: number;
  readonly leanBody: number;
  readonly leanAxle: number;
}

function endOf(
  car: CarInRoll,
  name: "front" | "rear",
  sprungMass: number,
  ay: number,
  { extra, given }: AxleHeld,
): End {
  const axle = car[name];
  const share = axle.ownForceShare ?? 1;
  const arm = car.sprungHeight - axle.rollCentreHeight;
  const links = sprungMass * axle.rollCentreHeight; // ms·h_rc
  const wheels = axle.unsprungMass * axle.unsprungHeight; // mu·hu
  const springs = axle.rollStiffness;
  const tyres = given === undefined ? (axle.tyreRollStiffness ?? Infinity) : 0;
  const hold = tyres + springs - GRAVITY * (links + share * share * wheels);
  const coupling = springs + GRAVITY * share * (1 - share) * wheels;
  const push = extra + (links + share * wheels) * ay - (given ?? 0);
  const own = springs - GRAVITY * (sprungMass * arm + (1 - share) * (1 - share) * wheels);
  const stands = hold > 0;
  return {
    stiffness: stands ? own - (coupling * coupling) / hold : own,
    load:
      (sprungMass * arm + (1 - share) * wheels) * ay -
      extra +
      (stands ? (coupling * push) / hold : 0),
    coupling,
    push,
    hold: stands ? hold : Infinity,
    springs,
    direct: extra + (links + share * wheels) * ay,
    leanBody: GRAVITY * share * (1 - share) * wheels,
    leanAxle: GRAVITY * (links + share * share * wheels),
  };
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

function tyreAngle({ coupling, push, hold }: End, body: number): number {
  return (coupling * body + push) / hold;
}

function momentOf(end: End, body: number, tyres: number): number {
  return end.springs * (body - tyres) + end.direct + end.leanBody * body + end.leanAxle * tyres;
}
