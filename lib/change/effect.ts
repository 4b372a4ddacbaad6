import type { PhaseName } from "../balance/phases.js";
import { type StandingCar, standingCar } from "../balance/standing-car.js";
import { meanOf } from "../car/axle.js";
import type { Car } from "../car/car.js";
import { type FixedRule, ruleAgainst } from "../car/class-rules.js";
import { eachAxle, type Wheels } from "../load/wheels.js";
import { orUndefined } from "../refusal.js";
import { type Margin, marginsOf } from "../statics/margins.js";
import { turnsBack } from "../statics/put-back.js";
import type { Rest } from "../statics/rest.js";
import { withTurns } from "../statics/seat-turns.js";
import { seatRange } from "./adjuster.js";
import { applyChange } from "./apply.js";
import {
  type Behaviour,
  type BothCorners,
  behaviourFrom,
  cornersOf,
  differenceOf,
  tipsIn,
} from "./behaviour.js";
import type { Change } from "./change.js";
import { type Eased, easedIn } from "./eased.js";
import { figuresOf, USUAL_SPEED } from "./figures.js";
import { type NearTipping, nearTippingIn } from "./near-tipping.js";
import { newlyOnStops, type OnStop, onStops } from "./on-stops.js";
import { type Trade, tradesOf } from "./trade.js";

/** The car after a change, as it stands, and what the change did to it. */
export interface Effect extends StandingCar {
  /** How much everything moved, after minus before. */
  readonly moved: Behaviour;
  /** Limits of the class that hold before and not after. */
  readonly broken: readonly Margin[];
  /** Parts of a corner in which the car now tips over, as `tipsIn` says: no balance to speak of. */
  readonly tips: readonly PhaseName[];
  /** Parts of a corner in which it now tips over or comes near to it. */
  readonly nearTipping: readonly NearTipping[];
  /** Parts of a corner in which balance gets better and the car slower. */
  readonly trades: readonly Trade[];
  /** Wheels that are on a stop now and were not before. */
  readonly onStops: readonly OnStop[];
  /** Parts of a corner in which the car now cannot brake or drive as hard as is usual. */
  readonly eased: readonly Eased[];
}

/** What a change does alone, and with the seats turned so that the car stands as before. */
export interface EffectWithPutBack extends Effect {
  /** Left out where nothing is to be put back, or the seats cannot do it. */
  readonly putBack?: Effect & { readonly turns: Wheels<number> };
  /** Where the seats could, and the class does not let them. */
  readonly keptFromPutBack?: SeatRule;
}

/** What the class says against turning the seats: a rule that forbids it, or a limit that they would break. */
export type SeatRule =
  | { readonly code: "fixed"; readonly rule: FixedRule }
  | { readonly code: "limit"; readonly margin: Margin };

/** The car that changes start from, as it stands, and what it does. */
export interface Baseline extends StandingCar {
  readonly speed: number;
  readonly behaviour: Behaviour;
  readonly corners: BothCorners;
  /** How far it is inside the limits of its class. */
  readonly margins: readonly Margin[];
  readonly tips: readonly PhaseName[];
  readonly nearTipping: readonly NearTipping[];
  readonly onStops: readonly OnStop[];
  readonly eased: readonly Eased[];
}

/**
 * Where changes start from: the car with what it does at a speed, m/s.
 *
 * @param start - corners of a similar car, for a quick start
 * @example
 * baselineOf(standingCar(demoCar)).tips // → []
 */
export function baselineOf(
  standing: StandingCar,
  speed = USUAL_SPEED,
  start?: BothCorners,
): Baseline {
  const corners = cornersOf(standing.handling, speed, start);
  // Effects begin where this ends: what a change leaves alone stays the same to the last digit.
  return { ...baselineFrom(standing, speed, corners), corners };
}

/** The same, found from the balances of a similar car. */
function baselineFrom(standing: StandingCar, speed: number, start: BothCorners): Baseline {
  const { car, measured, rest, handling } = standing;
  const corners = cornersOf(handling, speed, start);
  const behaviour = behaviourFrom(corners, figuresOf(standing, speed));
  return {
    ...{ car, measured, rest, handling, speed, behaviour, corners },
    margins: marginsOf(standing),
    tips: tipsIn(corners),
    nearTipping: nearTippingIn(handling, speed, corners),
    onStops: onStops(handling, corners),
    eased: easedIn(corners),
  };
}

/**
 * What a change does: balance in each part of a corner and all else that moves.
 *
 * @throws Refusal when the change cannot be made, or the changed car cannot stand
 * @example
 * const stiffer = { lever: "barPosition", end: "front", by: 1 };
 * effectOf(stiffer, baselineOf(standingCar(demoCar))).moved.phases.middle.understeerMargin > 0
 * // → true, common practice: towards understeer
 */
export function effectOf(change: Change, before: Baseline): EffectWithPutBack {
  const effect = standingEffectOf(change, before);
  for (const one of [effect, effect.putBack]) void one?.moved; // refused here, not later
  return effect;
}

/**
 * The same, whose corners are driven once something of them is asked for: `moved`, `tips` and all
 * others but `broken` may be refused then.
 */
export function standingEffectOf(change: Change, before: Baseline): EffectWithPutBack {
  const known = effects.get(before) ?? new Map<string, EffectWithPutBack>();
  effects.set(before, known);
  const key = JSON.stringify(change);
  const effect = known.get(key) ?? workOut(change, before);
  known.set(key, effect);
  return effect;
}

/** What is known of each baseline: plan, diagnosis and practice ask for one change many times. */
const effects = new WeakMap<Baseline, Map<string, EffectWithPutBack>>();

function workOut(change: Change, before: Baseline): EffectWithPutBack {
  const changed = standingCar(applyChange(before.car, change), before.measured);
  const effect = effectOn(changed, before);
  if (change.lever === "seatTurns" || !stanceMoved(changed.rest, before.rest)) return effect;
  return Object.assign(effect, putBackOf(changed, before));
}

function putBackOf(
  changed: StandingCar,
  before: Baseline,
): Pick<EffectWithPutBack, "putBack" | "keptFromPutBack"> {
  const rule = ruleAgainst(changed.car, "seatTurns");
  if (rule !== undefined) return { keptFromPutBack: { code: "fixed", rule } };
  const putBack = putBackEffect(changed, before);
  const margin = putBack?.broken.find(({ parameter }) => parameter === "seatTurns");
  if (margin !== undefined) return { keptFromPutBack: { code: "limit", margin } };
  return putBack === undefined ? {} : { putBack };
}

/**
 * How the changed car stands, at once; what it does in corners is worked out when it is first asked
 * for: a search through many changes asks that of few.
 */
function effectOn(changed: StandingCar, before: Baseline): Effect {
  const { car, measured, rest, handling } = changed;
  const broken = newlyBroken(marginsOf(changed), before);
  let driven: ReturnType<typeof inCorners> | undefined;
  const known = () => {
    driven ??= inCorners(changed, before);
    return driven;
  };
  return {
    ...{ car, measured, rest, handling, broken },
    get moved() {
      return known().moved;
    },
    get tips() {
      return known().tips;
    },
    get nearTipping() {
      return known().nearTipping;
    },
    get trades() {
      return known().trades;
    },
    get onStops() {
      return known().onStops;
    },
    get eased() {
      return known().eased;
    },
  };
}

/** What the changed car does in corners, and what the change did to it there. */
function inCorners(changed: StandingCar, before: Baseline) {
  const after = baselineFrom(changed, before.speed, before.corners);
  const { tips, nearTipping, eased } = after;
  return {
    ...{ tips, nearTipping, eased },
    moved: differenceOf(after.behaviour, before.behaviour),
    trades: tradesOf(before.behaviour, after.behaviour, [...before.tips, ...tips]),
    onStops: newlyOnStops(after.onStops, before.onStops),
  };
}

const SEEN_HEIGHT = 0.5e-3; // m
const SEEN_CROSS_WEIGHT = 1e-3; // share

function stanceMoved(after: Rest, before: Rest): boolean {
  const height = eachAxle(after.rideHeight, (now, end) =>
    Math.abs(meanOf(now) - meanOf(before.rideHeight[end])),
  );
  const most = Math.max(height.front, height.rear);
  return most > SEEN_HEIGHT || Math.abs(after.crossShare - before.crossShare) > SEEN_CROSS_WEIGHT;
}

function putBackEffect(changed: StandingCar, before: Baseline): EffectWithPutBack["putBack"] {
  const back = carPutBack(changed, before);
  return back && Object.assign(effectOn(back.standing, before), { turns: back.turns });
}

/** The car with its seats turned back to where another stood, if it has seats that reach that far. */
export function carPutBack(
  changed: StandingCar,
  before: StandingCar,
): { standing: StandingCar; turns: Wheels<number> } | undefined {
  return orUndefined(() => {
    const { roundedTurns: turns } = turnsBack(changed, before.rest); // refused: a wheel in the air, or nothing to turn
    const standing = standingCar(withTurns(changed.car, turns), changed.measured);
    if (!seatsReach(standing.car)) return undefined;
    return standing.rest && { standing, turns }; // refused: it cannot stand so
  });
}

function seatsReach(car: Car): boolean {
  const { front, rear } = eachAxle(car, ({ spring }, end) => {
    const range = seatRange(car, end);
    if (range === undefined) return false;
    const { left, right } = spring.seatTurns;
    return Math.min(left, right) >= range.min && Math.max(left, right) <= range.max;
  });
  return front && rear;
}

function newlyBroken(after: readonly Margin[], { margins }: Baseline): Margin[] {
  const wasBroken = (now: Margin) =>
    margins.some((then) => then.margin < 0 && sameLimit(then, now));
  return after.filter((now) => now.margin < 0 && !wasBroken(now));
}

function sameLimit(a: Margin, b: Margin): boolean {
  const same = a.parameter === b.parameter && a.where === b.where && a.kind === b.kind;
  return same && a.limit === b.limit;
}
