import { Refusal } from "../../refusal.js";
import { GRAVITY } from "../../units.js";
import type { Grade, SpeedClass } from "../log/report.js";

/** How even the road of a corner is. */
export const surfaces = ["smooth", "some bumps", "rough"] as const;
export type Surface = (typeof surfaces)[number];

/** A corner as it is driven. */
export interface VenueCorner {
  readonly name: string;
  readonly direction: "left" | "right";
  /** m of the driven line */
  readonly radius: number;
  /** m/s in its middle */
  readonly speed: number;
  /** Rise over distance in the direction of travel; above 0 uphill, level when left out. */
  readonly grade?: number;
  /** rad that the road leans; above 0 into the turn, level when left out */
  readonly banking?: number;
  readonly surface?: Surface;
}

/** A place to drive: its corners in the order in which they come. */
export interface Venue {
  readonly name: string;
  readonly notes?: string;
  readonly corners: readonly VenueCorner[];
}

/**
 * Acceleration towards the middle of the turn, m/s², never below 0: v²/R.
 *
 * @example
 * lateralAccelerationOf({ speed: 20, radius: 50 }) // → 8, by hand: 20²/50
 */
export function lateralAccelerationOf({ speed, radius }: VenueCorner): number {
  return speed ** 2 / radius;
}

/**
 * Lateral acceleration on a level road that would ask the tyres for the same share of their load,
 * m/s²; below 0 when the banking alone more than holds the car.
 *
 * Along the leaning road the tyres hold m(v²/R·cos β − g·sin β), pressed on it with
 * m(g·cos β + v²/R·sin β) – balance of forces. A road that falls away so much that nothing presses the
 * car on it has no level one that asks as much.
 *
 * @throws Refusal when the corner is driven so fast off its camber that the car leaves the road
 * @example
 * levelRoadAccelerationOf({ speed: 20, radius: 50 }) // → 8, by hand: 20²/50, without banking
 */
export function levelRoadAccelerationOf(corner: VenueCorner): number {
  const inward = lateralAccelerationOf(corner);
  const { banking = 0 } = corner;
  const side = inward * Math.cos(banking) - GRAVITY * Math.sin(banking);
  const pressed = GRAVITY * Math.cos(banking) + inward * Math.sin(banking);
  if (!(pressed > LEAST_PRESSED)) throw offTheRoad(corner);
  return (GRAVITY * side) / pressed;
}

const LEAST_PRESSED = 0.1; // m/s², a hundredth of the weight: less holds no car on a road

function offTheRoad(corner: VenueCorner): Refusal {
  const { name, speed, radius, banking = 0 } = corner;
  const inward = lateralAccelerationOf(corner);
  const least =
    Math.asin(LEAST_PRESSED / Math.hypot(GRAVITY, inward)) - Math.atan(GRAVITY / inward);
  return new Refusal(
    "no-level-equal",
    `${name} is driven at ${speed} m/s round ${radius} m, and its banking is ${banking} rad but must be ` +
      `at least ${least.toFixed(3)} rad: a road that falls away more does not hold a car so fast.`,
    { field: "banking", value: banking, least, most: Math.PI / 2, unit: "rad" },
  );
}

/** Speeds between slow, medium and fast corners, m/s: 70 and 110 km/h – common practice, no source. */
const SPEED_CLASS_BOUNDS = { medium: 70 / 3.6, fast: 110 / 3.6 } as const;

/**
 * How drivers would call the speed of a corner.
 *
 * @example
 * speedClassOf({ speed: 10 }) // → "slow"
 */
export function speedClassOf({ speed }: VenueCorner): SpeedClass {
  if (speed < SPEED_CLASS_BOUNDS.medium) return "slow";
  return speed < SPEED_CLASS_BOUNDS.fast ? "medium" : "fast";
}

/** Rise over distance from which a driver speaks of a hill: 2 % – common practice, no source. */
export const LEAST_GRADE = 0.02;

/** How drivers would call the grade of a corner. */
export function gradeOf({ grade = 0 }: VenueCorner): Grade {
  if (Math.abs(grade) < LEAST_GRADE) return "level";
  return grade > 0 ? "uphill" : "downhill";
}

/**
 * The corner of that name.
 *
 * @example
 * cornerNamed(exampleVenue, "Long Left").direction // → "left"
 */
export function cornerNamed(venue: Venue, name: string | undefined): VenueCorner | undefined {
  return venue.corners.find((corner) => corner.name === name);
}

/** Speed at which a venue as a whole is judged, m/s: mean of its corners. */
export function venueSpeed({ corners }: Venue): number {
  return corners.reduce((sum, { speed }) => sum + speed, 0) / corners.length;
}
