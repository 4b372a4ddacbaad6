import type { PhaseName } from "../../balance/phases.js";
import type { VenueCorner } from "../plan/venue.js";

/** Where the parts of a corner begin and end along the driven line, m from where braking begins. */
export interface CornerPath {
  readonly turnInFrom: number;
  readonly middleFrom: number;
  readonly powerFrom: number;
  readonly end: number;
  /** 1/m at a distance, never below 0 */
  readonly curvature: (distance: number) => number;
}

const BRAKING_TIME = 1.8; // s on the brakes in a straight line
const TURN_IN_TIME = 0.75; // s for the whole lateral acceleration: 9 m/s² at 12 m/s³, as `phases` has it
const UNWIND_TIME = 1.6; // s to let the car run out
const STRAIGHT_TIME = 0.8; // s of straight after it

/**
 * The driven line of a corner that turns by an angle: straight, tighter at an even rate, round,
 * wider at an even rate, straight.
 *
 * @param speed - m/s in the middle
 * @param angle - rad that the car turns in all
 */
export function cornerPath(
  { radius }: VenueCorner,
  speed: number,
  angle: number = Math.PI / 2,
): CornerPath {
  const turnIn = speed * TURN_IN_TIME;
  const unwind = speed * UNWIND_TIME;
  const round = Math.max(0.3 * radius, angle * radius - (turnIn + unwind) / 2);
  const turnInFrom = (speed + BRAKING_TIME * 2) * BRAKING_TIME; // faster there than in the middle
  const middleFrom = turnInFrom + turnIn;
  const powerFrom = middleFrom + round;
  const straightFrom = powerFrom + unwind;
  const curvature = (distance: number) => {
    if (distance <= turnInFrom || distance >= straightFrom) return 0;
    if (distance < middleFrom) return (distance - turnInFrom) / turnIn / radius;
    if (distance < powerFrom) return 1 / radius;
    return (straightFrom - distance) / unwind / radius;
  };
  const end = straightFrom + speed * STRAIGHT_TIME;
  return { turnInFrom, middleFrom, powerFrom, end, curvature };
}

const HARD_BRAKING_SHARE = 0.3; // of turn-in with the brake still fully on

/** Which part of the corner a distance belongs to. */
export function phaseAt({ turnInFrom, middleFrom, powerFrom }: CornerPath, at: number): PhaseName {
  if (at < turnInFrom + HARD_BRAKING_SHARE * (middleFrom - turnInFrom)) return "braking in";
  if (at < middleFrom) return "turn-in";
  return at < powerFrom ? "middle" : "power on";
}

const BRAKING = -4; // m/s², as in `phases`
const POWER = 2; // m/s², as in `phases`

/**
 * What the driver does with the pedals at a distance, m/s².
 *
 * @param effort - share of the usual braking and power, 0–1
 */
export function pedalsAt(path: CornerPath, at: number, effort = 1): number {
  const { turnInFrom, middleFrom, powerFrom, end } = path;
  const released = turnInFrom + HARD_BRAKING_SHARE * (middleFrom - turnInFrom);
  if (at < released) return effort * BRAKING;
  if (at < middleFrom) return (effort * BRAKING * (middleFrom - at)) / (middleFrom - released);
  if (at < powerFrom) return 0;
  return effort * POWER * Math.min(1, (at - powerFrom) / (0.3 * (end - powerFrom)));
}
