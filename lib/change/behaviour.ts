import type { HandlingCar } from "../balance/handling-car.js";
import { mirrorCar } from "../balance/mirror-car.js";
import {
  type PhaseBalances,
  type PhaseName,
  phaseBalances,
  phaseNames,
} from "../balance/phases.js";
import type { StandingCar } from "../balance/standing-car.js";
import { type CarFigures, figuresOf, USUAL_SPEED } from "./figures.js";

/** Balance and grip in one part of a corner, mean of left and right corners. */
export interface PhaseFigures {
  /** m/s² that the rear can do more than the front: above 0 understeer, below 0 oversteer */
  readonly understeerMargin: number;
  /** m/s² that the car can do */
  readonly lateralAcceleration: number;
}

/** What a car does, as far as a set-up change can move it. */
export interface Behaviour {
  readonly phases: Readonly<Record<PhaseName, PhaseFigures>>;
  readonly figures: CarFigures;
}

/** Balances of left and of right corners, from which those of a similar car are found quickly. */
export interface BothCorners {
  readonly left: PhaseBalances;
  readonly right: PhaseBalances;
}

/**
 * Balances of a car in left and right corners at a speed, m/s.
 *
 * @example
 * cornersOf(handlingCarOf(demoCar), 25).left.middle.tips
 * // → false, its tyres let go well before the 13.0 m/s² of the mechanics engine
 */
export function cornersOf(handling: HandlingCar, speed: number, start?: BothCorners): BothCorners {
  const left = phaseBalances(handling, speed, start?.left);
  return { left, right: phaseBalances(mirrorCar(handling), speed, start?.right ?? left) };
}

/**
 * Balance in each part of a corner, and all else that a change may move.
 *
 * @param speed - m/s
 * @param start - corners of a similar car, for a quick start
 * @throws Refusal when the car cannot stand on its springs
 */
export function behaviourOf(
  standing: StandingCar,
  speed = USUAL_SPEED,
  start?: BothCorners,
): Behaviour {
  const corners = cornersOf(standing.handling, speed, start);
  return behaviourFrom(corners, figuresOf(standing, speed));
}

/** The same from balances and figures that are at hand. */
export function behaviourFrom(corners: BothCorners, figures: CarFigures): Behaviour {
  return { phases: phasesFrom(corners), figures };
}

/**
 * Balance and grip in each part of a corner, mean of left and right ones.
 *
 * @example
 * phasesFrom(cornersOf(handlingCarOf(demoCar), 25)).middle.understeerMargin
 * // → 0.8, the independent solution of the tests: 0.84
 */
export function phasesFrom({ left, right }: BothCorners): Behaviour["phases"] {
  const phase = (name: PhaseName): PhaseFigures => ({
    understeerMargin: (left[name].understeerMargin + right[name].understeerMargin) / 2,
    lateralAcceleration: (left[name].lateralAcceleration + right[name].lateralAcceleration) / 2,
  });
  return forEachPhase(phase);
}

/**
 * The parts of a left or right corner in which a car tips over before its tyres let go. Its limit is
 * then where it tips, and its margin between the ends is no balance.
 */
export function tipsIn({ left, right }: BothCorners): PhaseName[] {
  return phaseNames.filter((name) => left[name].tips || right[name].tips);
}

function forEachPhase<T>(work: (name: PhaseName) => T): Record<PhaseName, T> {
  return Object.fromEntries(phaseNames.map((name) => [name, work(name)])) as Record<PhaseName, T>;
}

/** A tree of numbers minus another of the same form; what did not move is 0, without end or not. */
export function differenceOf<T extends object>(after: T, before: T): T {
  const entries = Object.entries(after).map(([name, value]) => {
    const old = (before as Record<string, unknown>)[name];
    if (typeof value === "number") return [name, value === old ? 0 : value - Number(old)];
    return [name, differenceOf(value, old as typeof value)];
  });
  return Object.fromEntries(entries) as T;
}
