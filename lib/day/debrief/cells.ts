import { type BalanceStart, type CarBalance, carBalance } from "../../balance/car-balance.js";
import { mirrorCar } from "../../balance/mirror-car.js";
import { type PhaseName, phaseNames, phases } from "../../balance/phases.js";
import type { StandingCar } from "../../balance/standing-car.js";
import { type Axles, eachAxle } from "../../load/wheels.js";
import { orUndefined } from "../../refusal.js";
import { levelRoadAccelerationOf, type Venue, type VenueCorner } from "../plan/venue.js";

/** The two wheels of an axle in a corner. */
export interface InnerAndOuter {
  readonly inner: number;
  readonly outer: number;
}

/** What the model says of one part of one corner. */
export interface Cell {
  readonly corner: string;
  readonly phase: PhaseName;
  /** m/s² between the ends at the limit; above 0 the front slides first, below 0 the rear */
  readonly balance: number;
  /** m/s² that the car can do there, on a level road */
  readonly lateralAcceleration: number;
  /** N on each wheel at that limit; the outer wheels are those away from the corner's inside */
  readonly loads: Axles<InnerAndOuter>;
  /** axles whose inner wheel is in the air at that limit */
  readonly lifted: Axles<boolean>;
  /**
   * m/s² that it can do more than the middle of the corner asks for; below 0: too fast for it; left
   * out where the road falls away so much that no level one asks as much
   */
  readonly spare?: number;
  /** where the search for a similar car begins */
  readonly start: BalanceStart;
}

/**
 * Balance in each part of each corner of a venue, at its own speed, direction and grade.
 *
 * @param similar - cells of a similar car at the same venue, for a quick start
 * @throws Refusal when the car cannot stand on its springs
 */
export function cellsOf(
  { handling: left }: StandingCar,
  venue: Venue,
  similar: readonly Cell[] = [],
): Cell[] {
  const right = mirrorCar(left);
  return venue.corners.flatMap((corner, i) =>
    phaseNames.map((phase, j) => {
      const handling = corner.direction === "left" ? left : right;
      const { start } = similar[i * phaseNames.length + j] ?? {};
      return cellOf(corner, phase, carBalance(handling, drivingIn(corner, phase), start));
    }),
  );
}

function drivingIn({ speed, grade = 0 }: VenueCorner, phase: PhaseName) {
  return { ...phases[phase], speed, grade: Math.atan(grade) };
}

function cellOf(corner: VenueCorner, phase: PhaseName, found: CarBalance): Cell {
  const asked = orUndefined(() => levelRoadAccelerationOf(corner));
  return {
    corner: corner.name,
    phase,
    balance: found.understeerMargin,
    lateralAcceleration: found.lateralAcceleration,
    loads: eachAxle(found.wheels, ({ left, right }) => ({ inner: left.load, outer: right.load })),
    lifted: found.lifted,
    ...(asked !== undefined && { spare: found.lateralAcceleration - asked }),
    start: found,
  };
}

/**
 * The same of one part of one corner.
 *
 * @param similar - that cell of a similar car, for a quick start
 */
export function cellIn(
  { handling: left }: StandingCar,
  corner: VenueCorner,
  phase: PhaseName,
  similar?: Cell,
): Cell {
  const handling = corner.direction === "left" ? left : mirrorCar(left);
  return cellOf(corner, phase, carBalance(handling, drivingIn(corner, phase), similar?.start));
}

/** How far a change moves the balance of one part of one corner. */
export interface CellShift {
  readonly corner: string;
  readonly phase: PhaseName;
  /** m/s², above 0 towards the front sliding first */
  readonly shift: number;
}

/** How far balance moved in each cell from one set-up to another. */
export function shiftsOf(before: readonly Cell[], after: readonly Cell[]): CellShift[] {
  return after.map(({ corner, phase, balance }) => {
    const old = before.find((cell) => cell.corner === corner && cell.phase === phase);
    return { corner, phase, shift: old === undefined ? 0 : balance - old.balance };
  });
}
