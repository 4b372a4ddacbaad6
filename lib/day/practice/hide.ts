import { standingCar } from "../../balance/standing-car.js";
import type { Car } from "../../car/car.js";
import type { Change } from "../../change/change.js";
import { pick } from "../../random.js";
import { Refusal } from "../../refusal.js";
import { LEAST_FELT_SHIFT } from "../debrief/feel.js";
import { sameLever, sameWay } from "../debrief/tried.js";
import { candidatesFor } from "../plan/propose.js";
import type { PhaseShifts } from "../plan/sheet-row.js";
import { stepCountsFor, timesSteps } from "../plan/step-counts.js";
import type { VenueCorner } from "../plan/venue.js";
import { made, shiftsIn } from "./known-car.js";
import type { HelpLevel } from "./puzzle.js";
import { sizeOfMost } from "./shifts.js";

/** What is hidden in a puzzle. */
export interface Hidden {
  /** One change, or on the last level two. */
  readonly hidden: readonly Change[];
  /** The car as it is now, seats put back. */
  readonly changed: Car;
  /** How far balance moved in this corner, m/s², above 0 towards the front. */
  readonly shifts: PhaseShifts;
}

/** A change in one of its sizes, and about how far it moves balance where it moves it most, m/s². */
export interface Sized {
  readonly change: Change;
  readonly about: number;
}

const known = new WeakMap<Car, Map<number, readonly Sized[]>>();

/**
 * What can be done to a car that is felt in some size, in all the sizes that a hand turns: worked
 * out once for a car and a speed, since it is the same for every puzzle.
 */
export function sizedChanges(car: Car, speed: number): readonly Sized[] {
  const ofCar = known.get(car) ?? new Map<number, readonly Sized[]>();
  const sized = ofCar.get(speed) ?? allSizes(car, speed);
  known.set(car, ofCar.set(speed, sized));
  return sized;
}

/** Somebody who hides a change may go from one end of an adjuster to the other. */
export const WHOLE = 1;

function allSizes(car: Car, speed: number): Sized[] {
  return candidatesFor(standingCar(car), speed).flatMap(({ change, steps, shift }) => {
    const one = timesSteps(change, 1 / steps);
    return stepCountsFor(car, one, WHOLE).map((count) => ({
      change: timesSteps(one, count),
      about: Math.abs(shift / steps) * count,
    }));
  });
}

/** From where to where balance may move, where it moves most, m/s². */
type Strength = readonly [least: number, most: number];

const clear: Strength = [2 * LEAST_FELT_SHIFT, Number.POSITIVE_INFINITY];
const likely: Strength = [1.5 * LEAST_FELT_SHIFT, Number.POSITIVE_INFINITY];
const felt: Strength = [LEAST_FELT_SHIFT, Number.POSITIVE_INFINITY];
const faint: Strength = [0, LEAST_FELT_SHIFT / 2];
const FAINT_SHARE = 1 / 8; // of puzzles with less help: there "cannot tell" may be right

/** Strengths to look for, the first that there is. */
function strengthsFor(level: HelpLevel, random: () => number): Strength[] {
  const isFaint = random() < FAINT_SHARE;
  if (level === 1) return [clear, felt];
  return isFaint && level < 4 ? [faint, likely, felt] : [likely, felt];
}

const within = (shift: number, [least, most]: Strength): boolean => shift >= least && shift < most;

const MOST_TRIES = 30; // of one strength: what is told of a level road may be otherwise in a corner

/** What somebody has at hand who hides something. */
interface Hiding {
  readonly car: Car;
  readonly corner: VenueCorner;
  readonly pool: readonly Sized[];
  readonly random: () => number;
}

/**
 * Something done to a car that moves its balance in a corner as much as a level asks for and breaks
 * no limit; nothing where nothing does.
 */
export function hide(
  car: Car,
  corner: VenueCorner,
  level: HelpLevel,
  random: () => number,
): Hidden | undefined {
  const hiding = { car, corner, pool: sizedChanges(car, corner.speed), random };
  for (const strength of strengthsFor(level, random)) {
    const two = level === 4 ? firstThatFits(hiding, strength, twoOf(hiding)) : undefined;
    const found = two ?? firstThatFits(hiding, strength, oneOf(hiding, strength));
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Tries what is taken until it moves balance as much as it is to; nothing once nothing more is taken. */
function firstThatFits(
  { car, corner }: Hiding,
  strength: Strength,
  taken: () => readonly Change[] | undefined,
): Hidden | undefined {
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const changes = taken();
    if (changes === undefined) return undefined;
    const found = hiddenBy(changes, car, corner);
    if (found && within(sizeOfMost(found.shifts), strength)) return found;
  }
  return undefined;
}

/** Takes one change that is about as strong as it is to be, none of them twice. */
function oneOf({ pool, random }: Hiding, strength: Strength): () => readonly Change[] | undefined {
  let left = pool.filter(({ about }) => within(about, strength));
  return () => {
    const one = pickByLever(left, random);
    left = left.filter((other) => other !== one);
    return one && [one.change];
  };
}

/** Takes two different levers at once, each large enough to be felt by itself. */
function twoOf({ pool, random }: Hiding): () => readonly Change[] | undefined {
  const alone = pool.filter(({ about }) => within(about, felt));
  return () => {
    const first = pickByLever(alone, random)?.change;
    if (first === undefined) return undefined;
    const others = alone.filter(({ change }) => !sameLever(change, first));
    const second = pickByLever(others, random)?.change;
    return second && [first, second];
  };
}

/** Each lever is as likely as any other, however many ways and sizes it has. */
function pickByLever(pool: readonly Sized[], random: () => number): Sized | undefined {
  const lever = pick([...new Set(pool.map(({ change }) => change.lever))], random);
  const ofLever = pool.filter(({ change }) => change.lever === lever);
  const way = pick(ofLever, random);
  return pick(
    ofLever.filter(({ change }) => way !== undefined && sameWay(change, way.change)),
    random,
  );
}

/** What comes of changes one after the other; nothing where they cannot be made or break a limit. */
function hiddenBy(changes: readonly Change[], car: Car, corner: VenueCorner): Hidden | undefined {
  try {
    const changed = changes.reduce((now, change) => {
      const after = made(change, now, car);
      if (after.broken) throw new Refusal("does-not-suit", "It breaks a limit of the class.");
      return after.car;
    }, car);
    return { hidden: changes, changed, shifts: shiftsIn(corner, car, changed) };
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}
