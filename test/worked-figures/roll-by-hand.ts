/** How the demo car leans in a left turn, from the moments on body and axles. */

import type { AxleByHand, CarByHand } from "./demo-car-by-hand.js";
import { g } from "./demo-car-by-hand.js";

export interface AxleStands {
  readonly inner: number; // N
  readonly outer: number;
  readonly axleRoll: number; // rad of the axle on its tyres
  readonly between: number; // rad of the body on the axle
  readonly heave: number; // m in bump from rest
}
export interface Stands {
  readonly roll: number; // rad, right side down
  readonly front: AxleStands;
  readonly rear: AxleStands;
}

type Held = { readonly extra: number; readonly lifted: number | undefined }; // N·m, N·m
const free: Held = { extra: 0, lifted: undefined };

/** What an axle hands the body, with its own angle taken out: φt = (onto·φ + push)/hold. */
function axleTakenOut(a: AxleByHand, { extra, lifted }: Held, B: number) {
  const [wheels, links, s] = [a.unsprung * 0.29, a.sprung * a.rollCentre, a.ownShare];
  const up = lifted === undefined ? 0 : ((a.sprung + a.unsprung) * a.track * B) / 2; // about the outer tyre
  const tyres = lifted === undefined ? a.tyres : -up;
  const hold = tyres + a.springs - g * (links + s * s * wheels);
  const onto = a.springs + g * s * (1 - s) * wheels;
  const push = extra + (links + s * wheels) * B - (lifted ?? 0) * (1 + up / a.tyres);
  const lever = a.sprung * a.arm + (1 - s) ** 2 * wheels;
  const rolls = (a.sprung * a.arm + (1 - s) * wheels) * B - extra;
  return { hold, onto, push, holds: a.springs - g * lever, rolls };
}

function angles({ front, rear }: CarByHand, f: Held, r: Held, B: number) {
  const [F, R] = [axleTakenOut(front, f, B), axleTakenOut(rear, r, B)];
  const rolls = F.rolls + R.rolls + (F.onto * F.push) / F.hold + (R.onto * R.push) / R.hold;
  const roll = rolls / (F.holds + R.holds - F.onto ** 2 / F.hold - R.onto ** 2 / R.hold);
  return {
    roll,
    front: (F.onto * roll + F.push) / F.hold,
    rear: (R.onto * roll + R.push) / R.hold,
  };
}

/** N·m that the tyres of an axle hold in a turn. */
const overTyres = (a: AxleByHand, roll: number, axleRoll: number, extra: number, B: number) => {
  const leans = (1 - a.ownShare) * roll + a.ownShare * axleRoll;
  return (
    a.springs * (roll - axleRoll) +
    extra +
    a.sprung * a.rollCentre * (B + g * axleRoll) +
    a.ownShare * a.unsprung * 0.29 * (B + g * leans)
  );
};

/** Push of a stop, N, above 0 in bump. */
const stopAt = ({ travel }: AxleByHand, s: number) =>
  Math.sign(s) * 0.5 * 5e6 * Math.max(0, Math.abs(s) - travel) ** 2;

/** Heave of both wheels and moment of the stops with a load on them and a roll between. */
function onStops(a: AxleByHand, load: number, between: number) {
  const half = (a.track / 2) * between;
  const pressed = (z: number) => stopAt(a, z + half) + stopAt(a, z - half);
  const wanted = load - a.mass * g;
  let heave = wanted / (2 * a.wheelRate);
  if (Math.abs(heave) + Math.abs(half) <= a.travel) return { heave, moment: 0 };
  let [low, high] = [-0.3, 0.3];
  for (let i = 0; i < 50; i++) {
    heave = (low + high) / 2;
    if (2 * a.wheelRate * heave + pressed(heave) < wanted) low = heave;
    else high = heave;
  }
  return { heave, moment: ((stopAt(a, heave + half) - stopAt(a, heave - half)) * a.track) / 2 };
}

/** Loads and angles under B (m/s² to the left), with loads (N) on the axles and dampers at work. */
export function standsIn(
  car: CarByHand,
  B: number,
  loads: { front: number; rear: number },
  jerk = 0,
): Stands {
  const once = angles(car, free, free, 1); // for each m/s²
  const damper = {
    front: car.front.damping * jerk * (once.roll - once.front),
    rear: car.rear.damping * jerk * (once.roll - once.rear),
  };
  const most = {
    front: (loads.front / 2 + car.front.leftExcess) * car.front.track,
    rear: (loads.rear / 2 + car.rear.leftExcess) * car.rear.track,
  };
  const lifted: { front?: number; rear?: number } = {};
  let stops = { front: 0, rear: 0 };
  for (let round = 0; ; round++) {
    const held = (end: "front" | "rear") => ({
      extra: damper[end] + stops[end],
      lifted: lifted[end],
    });
    const at = angles(car, held("front"), held("rear"), B);
    const one = (end: "front" | "rear") => {
      const a = car[end];
      const T = lifted[end] ?? overTyres(a, at.roll, at[end], held(end).extra, B);
      const met = onStops(a, loads[end], at.roll - at[end]);
      return { T, met, used: T / most[end] };
    };
    const [f, r] = [one("front"), one("rear")];
    const off = Math.abs(f.met.moment - stops.front) + Math.abs(r.met.moment - stops.rear);
    if (off > 1e-6 && round < 400) {
      const nearer = (now: number, next: number) => now + 0.2 * (next - now);
      stops = {
        front: nearer(stops.front, f.met.moment),
        rear: nearer(stops.rear, r.met.moment),
      };
      continue;
    }
    const end = r.used > f.used ? "rear" : "front";
    if (Math.max(f.used, r.used) > 1 + 1e-9 && Object.keys(lifted).length === 0) {
      lifted[end] = most[end];
      continue;
    }
    const written = (of: "front" | "rear", { T, met }: typeof f): AxleStands => ({
      inner: Math.max(0, (most[of] - T) / car[of].track),
      outer: loads[of] - Math.max(0, (most[of] - T) / car[of].track),
      axleRoll: at[of],
      between: at.roll - at[of],
      heave: met.heave,
    });
    return { roll: at.roll, front: written("front", f), rear: written("rear", r) };
  }
}

/** N that the tyres of an axle move in a turn with even sides. */
export const movedBy = ({ inner, outer }: AxleStands, leftExcess = 0) =>
  (outer - inner) / 2 + leftExcess;

/** The body as one mass in roll, its axles giving way on their tyres: N·m/rad and N·m·s/rad. */
export function bodyInRoll({ front, rear }: CarByHand) {
  const ends = [front, rear].map((a) => ({ ...axleTakenOut(a, free, 0), damping: a.damping }));
  const sum = (of: (end: (typeof ends)[number]) => number) => ends.reduce((s, e) => s + of(e), 0);
  return {
    stiffness: sum(({ holds, onto, hold }) => holds - onto ** 2 / hold),
    damping: sum(({ damping, onto, hold }) => damping * (1 - onto / hold) ** 2),
  };
}

/** How a car with even sides stands in a steady left turn at no speed in particular. */
export function evenTurn({ front, rear, ...rest }: CarByHand, ay: number): Stands {
  const even = { front: { ...front, leftExcess: 0 }, rear: { ...rear, leftExcess: 0 }, ...rest };
  return standsIn(even, ay, { front: front.mass * g, rear: rear.mass * g });
}

/** N·m about the ground of all weights that lean out with it. */
export function leaningOut(car: CarByHand, stands: Stands): number {
  const of = (a: AxleByHand, { axleRoll }: AxleStands) => {
    const wheels = (1 - a.ownShare) * stands.roll + a.ownShare * axleRoll;
    const body = a.sprung * (a.arm * stands.roll + a.rollCentre * axleRoll);
    return g * (body + a.unsprung * 0.29 * wheels);
  };
  return of(car.front, stands.front) + of(car.rear, stands.rear);
}
