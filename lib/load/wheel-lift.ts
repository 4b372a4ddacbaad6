import { axleLoads, type CarInRoll } from "./car-in-roll.js";
import { type AxleHeld, type RollEquilibrium, rollEquilibrium } from "./roll-equilibrium.js";
import { type Axles, eachAxle } from "./wheels.js";

/**
 * Which tyre of each axle is off the ground: 0 none, 1 the inner one, −1 the outer one, as happens to
 * a body that hangs far below its roll centre.
 */
export type Lifted = Axles<-1 | 0 | 1>;

type End = "front" | "rear";

/** A body in balance, and the wheels it has lifted. */
export interface Rolled extends RollEquilibrium {
  readonly lifted: Lifted;
  /** m/s² that it is in balance with: less than was asked for when both inner wheels are up */
  readonly lateralAcceleration: number;
}

/** All four wheels on the ground. */
const NO_WHEEL: Lifted = { front: 0, rear: 0 };

/**
 * The body in balance in a left turn, once the wheels that cannot stay down have left the ground.
 *
 * With a wheel of both axles up there is no balance: then angles are the last ones that there are,
 * and moments all that the axles have.
 *
 * @param inner - N on the inner tyre of each axle before the turn; half the axle's load when left out
 * @param halvings - how finely the last balance before tipping is found
 * @returns nothing when the springs cannot hold the body on four wheels
 */
export function rolledInTurn(
  car: CarInRoll,
  ay: number,
  inner: Axles<number> = eachAxle(axleLoads(car), (load) => load / 2),
  halvings = 20,
): Rolled | undefined {
  const most = eachAxle(inner, (load, end) => load * car[end].track); // N·m with nothing left inside
  const onFour = rolled(car, ay, most, NO_WHEEL);
  const first = onFour && firstToLift(onFour, most);
  if (first === undefined) return onFour;
  const onThree = rolled(car, ay, most, first.lifted);
  if (onThree !== undefined && firstToLift(onThree, most) === undefined) return onThree;
  const before = rolled(car, ay / first.used, most, NO_WHEEL);
  return before && lastBalance(car, most, { before, lifted: first.lifted, ay, halvings });
}

/**
 * The last balance between the first lift and a turn too hard, with a tyre of both axles up: the
 * turn in which the other axle has used all it has, by false position with the weight of an end that
 * stays halved (Dahlquist & Björck 1974, Numerical Methods, ch. 6.2), by halves where there is no balance.
 */
function lastBalance(
  car: CarInRoll,
  most: Axles<number>,
  { before, lifted, ay, halvings }: Search,
): Rolled {
  const close = ay * 2 ** -halvings;
  let [last, tips] = [before, ay];
  let [spare, over] = [1 - usedOf({ ...before, lifted }, most), Number.NaN];
  let signs: Lifted = { front: lifted.front || 1, rear: lifted.rear || 1 };
  let moved: "last" | "tips" | undefined;
  for (let i = 0; i < 2 * halvings && tips - last.lateralAcceleration > close; i++) {
    const width = tips - last.lateralAcceleration;
    const share = over > 0 ? spare / (spare + over) : 0.5;
    const margin = Math.min(0.25, close / (2 * width));
    const at = last.lateralAcceleration + width * Math.min(1 - margin, Math.max(margin, share));
    const state = rolled(car, at, most, lifted);
    const next = state && firstToLift(state, most);
    if (next !== undefined) signs = next.lifted;
    if (state !== undefined && next === undefined) {
      [last, spare] = [state, 1 - usedOf(state, most)];
      if (moved === "last") over /= 2;
      moved = "last";
    } else {
      [tips, over] = [at, next === undefined ? Number.NaN : next.used - 1];
      if (moved === "tips") spare /= 2;
      moved = "tips";
    }
  }
  return {
    ...last,
    lifted: signs,
    moment: eachAxle(most, (all, end) => signs[end] * all),
  };
}

/** How much of what it has the axle with both wheels down has used. */
function usedOf({ moment, lifted }: Rolled, most: Axles<number>): number {
  const end = lifted.front === 0 ? "front" : "rear";
  return Math.abs(moment[end]) / most[end];
}

/** Where the last balance is sought. */
interface Search {
  /** as the first wheel lifts */
  readonly before: Rolled;
  readonly lifted: Lifted;
  /** m/s², too hard a turn */
  readonly ay: number;
  readonly halvings: number;
}

function rolled(
  car: CarInRoll,
  ay: number,
  most: Axles<number>,
  lifted: Lifted,
): Rolled | undefined {
  const held = eachAxle(
    lifted,
    (sign, end): AxleHeld =>
      sign === 0 ? { extra: 0 } : { extra: 0, given: sign * most[end], lifting: ay },
  );
  const balance = rollEquilibrium(car, ay, held);
  return balance && { ...balance, lifted, lateralAcceleration: ay };
}

/** The axle of which a tyre leaves the ground next as the turn tightens, if any does. */
function firstToLift({ moment, lifted }: Rolled, most: Axles<number>) {
  const used = eachAxle(moment, (value, end) =>
    lifted[end] === 0 && value !== 0 ? Math.abs(value) / most[end] : 0,
  );
  if (!(used.front > 1 || used.rear > 1)) return undefined;
  const end: End = used.rear > 1 && !(used.front > used.rear) ? "rear" : "front";
  const sign: 1 | -1 = moment[end] > 0 ? 1 : -1;
  return { used: used[end], lifted: { ...lifted, [end]: sign } };
}

/** How far each axle with a wheel in the air has gone up, m. */
export function riseOf(car: CarInRoll, { tyres, lifted, moment }: Rolled): Axles<number> {
  return eachAxle(lifted, (sign, end) => {
    const { track, tyreRollStiffness = Infinity } = car[end];
    return sign * (track / 2) * (sign === 0 ? 0 : tyres[end] - moment[end] / tyreRollStiffness);
  });
}
