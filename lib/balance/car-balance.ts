import type { Axles, Sides, Wheels } from "../load/wheels.js";
import { Refusal } from "../refusal.js";
import type { Driving } from "./driving.js";
import type { HandlingCar } from "./handling-car.js";
import {
  gentleTurn,
  type HardestTurn,
  hardestTurnNear,
  hardestTurnOfCar,
} from "./hardest-turn-of-car.js";
import { type NumberedCar, numberedCar } from "./held-numbers.js";
import { type MostSideForce, mostSideForce, topAtLessPush } from "./most-side-force.js";
import type { AxleStance } from "./stance.js";
import { isFarFromTippingAt, tipsOverAt } from "./stance-in-turn.js";
import { type Work, wholeCar } from "./whole-car.js";

/** How hard a car can turn to the left, and which end would give up first. */
export interface CarBalance {
  /** m/s² across the path: the hardest turn that can be balanced, or where the car tips over */
  readonly lateralAcceleration: number;
  /** the end that gives up first, by the margin; "both" when neither is ahead */
  readonly first: "front" | "rear" | "both";
  /** m/s²: the margin of the state of most side force, above 0 understeer, below 0 oversteer */
  readonly understeerMargin: number;
  /** m/s² across the path in the state of most side force, held or not */
  readonly mostLateralAcceleration: number;
  /** m/s in the hardest turn */
  readonly speed: number;
  /** how its wheels stand in the hardest turn */
  readonly wheels: Wheels<WheelInTurn>;
  /** axles whose inner tyre is off the ground in the hardest turn */
  readonly lifted: Axles<boolean>;
  /** both inner tyres leave the ground before the tyres let go: the margin is then no balance */
  readonly tips: boolean;
  /** m/s² along the path that these figures are for */
  readonly longitudinalAcceleration: number;
  /** whether that is what was asked for: else the car cannot, and this is nearly the most it can */
  readonly given: boolean;
  /** where a similar car's search begins */
  readonly turn: HardestTurn;
  readonly most: MostSideForce;
  /** m/s², the margin of the similar car whose path was last followed from straight running */
  readonly followedAt: number;
}

/** How a wheel stands in a turn. */
export interface WheelInTurn {
  /** N, at least 0 */
  readonly load: number;
  /** m from rest, above 0 in bump */
  readonly travel: number;
}

/** Where to begin the search: the balance of a similar car. */
export type BalanceStart = Pick<CarBalance, "turn" | "most" | "given" | "followedAt">;

/**
 * The balance of the whole car in a left turn: hardest turn and margin.
 *
 * All four wheels together, each with its own load, lean, toe, slip angle and push; accelerations
 * along and across the path; yaw acceleration zero by definition.
 *
 * @param start - the balance of a similar car makes it several times faster
 * @param work - counts how often the wheels were worked out
 * @throws Refusal when a number is out of range, the springs cannot hold the body up, or not even
 * straight on the car can hold its speed
 * @see docs/model.md, "The whole car in balance"
 * @example
 * const round = carBalance(handlingCarOf(demoCar), { cornerRadius: 50 });
 * round.speed ** 2 / 50 - round.lateralAcceleration // → 0.000000, by definition: V² = ay·R
 */
export function carBalance(
  car: HandlingCar,
  driving: Driving,
  start?: BalanceStart,
  work?: Work,
): CarBalance {
  const found = start?.given === false ? undefined : balanceFrom(car, driving, start, work);
  if (found !== undefined) return { ...found, given: true };
  const tried = start?.given !== false;
  if (tried && !driving.longitudinalAcceleration)
    throw new Refusal("cannot-hold-speed", CANNOT_HOLD_SPEED);
  return eased(car, driving, work);
}

const CANNOT_HOLD_SPEED =
  "The car cannot be balanced even straight ahead: its tyres cannot give what air, hill or brakes ask " +
  "(see speed, air and tyre.grip).";

type Found = Omit<CarBalance, "given">;

function balanceFrom(
  car: HandlingCar,
  driving: Driving,
  start: BalanceStart | undefined,
  work: Work | undefined,
): Found | undefined {
  const whole = numberedCar(wholeCar(car, driving, work));
  const near = start && mostSideForce(whole, start.most.at, start.most);
  const known = near && start && isSameWay(near, start) ? start : undefined;
  const nearTurn = known && hardestTurnNear(whole, known.turn);
  const turn = nearTurn ?? hardestTurnOfCar(whole, driving.longitudinalAcceleration ?? 0);
  if (turn === undefined) return undefined;
  const most = findMost(whole, turn, near) ?? mostFromGentle(whole, driving);
  if (most === undefined) return undefined;
  const followedAt = nearTurn && known ? known.followedAt : most.margin;
  return { ...foundOf(car, whole, driving, turn, most), followedAt };
}

/**
 * The state of most side force, from a similar car's where that is at hand: where nearly all the push
 * there is is asked for, a top at less push can be higher.
 */
function findMost(whole: NumberedCar, turn: HardestTurn, near: MostSideForce | undefined) {
  if (near === undefined) return mostSideForce(whole, turn.point.at);
  const less = topAtLessPush(whole, near);
  return less !== undefined && less.lateralAcceleration > near.lateralAcceleration ? less : near;
}

/** The same from a gentle turn, where the hardest one is at an edge: about to tip, say. */
function mostFromGentle(whole: NumberedCar, { longitudinalAcceleration = 0 }: Driving) {
  const gentle = gentleTurn(whole, longitudinalAcceleration);
  return gentle && mostSideForce(whole, gentle.at);
}

const NEUTRAL = 0.25; // m/s² of margin

/**
 * Whether a car's balanced path ends as a similar car's does. Near a neutral one the path forks: one
 * branch where the front slides and one where the rear does, and straight running leads to only one.
 * Many small steps together go no further than one.
 */
function isSameWay({ margin }: MostSideForce, { followedAt }: BalanceStart): boolean {
  if (Math.abs(margin - followedAt) < NEUTRAL) return true;
  return margin * followedAt > 0 && Math.min(Math.abs(margin), Math.abs(followedAt)) > NEUTRAL;
}

function foundOf(
  car: HandlingCar,
  { whole, at }: NumberedCar,
  driving: Driving,
  turn: HardestTurn,
  most: MostSideForce,
): Omit<Found, "followedAt"> {
  at(turn.point.at, [0, 0, 0]);
  const { front, rear } = whole.stance;
  const { margin } = most;
  const far =
    !(front.lifted || rear.lifted) || isFarFromTippingAt(car, driving, turn.lateralAcceleration);
  const tip = far ? Infinity : tipsOverAt(car, driving);
  return {
    lateralAcceleration: Math.min(tip, turn.lateralAcceleration),
    first: Math.abs(margin) < 1e-6 ? "both" : margin > 0 ? "front" : "rear",
    understeerMargin: margin,
    mostLateralAcceleration: most.lateralAcceleration,
    speed: whole.speed,
    wheels: { front: wheelsOf(front), rear: wheelsOf(rear) },
    lifted: { front: front.lifted, rear: rear.lifted },
    tips: turn.point.tips || turn.lateralAcceleration >= tip,
    longitudinalAcceleration: driving.longitudinalAcceleration ?? 0,
    turn,
    most,
  };
}

function wheelsOf({ left, right }: AxleStance): Sides<WheelInTurn> {
  return {
    left: { load: left.load, travel: left.travel },
    right: { load: right.load, travel: right.travel },
  };
}

const SPARE = 0.98; // of the most: at the most itself there is nothing left to turn with
const FEWER = 0.9; // of that, where even so nothing is found
const MOST_TRIES = 12;

/** The balance with all that was asked, or else with nearly the most that the car can brake or drive. */
function eased(car: HandlingCar, driving: Driving, work: Work | undefined): CarBalance {
  const asked = driving.longitudinalAcceleration ?? 0;
  const driven = (share: number): Driving => ({
    ...driving,
    longitudinalAcceleration: share * asked,
  });
  let share = asked === 0 ? 0 : mostAble(car, driven, work);
  for (let i = 0; i < MOST_TRIES && share > 0.01; i++, share *= FEWER) {
    const found = balanceFrom(car, driven(share), undefined, work);
    if (found !== undefined) return { ...found, given: share === 1 };
    if (share === 1) share = SPARE;
  }
  const found = balanceFrom(car, driven(0), undefined, work);
  if (found === undefined) throw new Refusal("cannot-hold-speed", CANNOT_HOLD_SPEED);
  return { ...found, given: asked === 0 };
}

/** The share of what is asked with which a car can still turn gently: 1, or a little less than the most. */
function mostAble(
  car: HandlingCar,
  driven: (share: number) => Driving,
  work: Work | undefined,
): number {
  const able = (share: number): boolean => {
    const driving = driven(share);
    const whole = numberedCar(wholeCar(car, driving, work));
    return gentleTurn(whole, driving.longitudinalAcceleration ?? 0) !== undefined;
  };
  if (able(1)) return 1;
  let [low, high] = [0, 1];
  for (let i = 0; i < 12; i++) {
    const middle = (low + high) / 2;
    if (able(middle)) low = middle;
    else high = middle;
  }
  return SPARE * low;
}
