import type { CarInRoll } from "../load/car-in-roll.js";
import { type AxleHeld, rollEquilibrium } from "../load/roll-equilibrium.js";
import { type Axles, eachAxle } from "../load/wheels.js";

/** A quantity that grows in a straight line with lateral acceleration: offset + slope·ay. */
export interface Line {
  readonly offset: number;
  /** per m/s² */
  readonly slope: number;
}

/** Load moved from left to right tyre (N) and roll angle (rad), as lines in lateral acceleration. */
export interface TransferLines {
  readonly transfer: Axles<Line>;
  readonly rollAngle: Axles<Line>;
  /** rad of it that the tyres give */
  readonly tyreAngle: Axles<Line>;
}

/**
 * Load transfer of both axles as straight lines, while the same wheels stay on the ground.
 *
 * The same balance as `distributeLoadTransfer`, solved once for all lateral accelerations.
 *
 * @param given - N that the inner tyre of each axle has to give before it leaves the ground
 * @param lifted - axles whose inner tyre is off the ground: they have moved all they have
 * @param lifting - m/s² near which the lines hold for a lifted axle, as `AxleHeld` has it
 * @returns nothing when the springs cannot hold the body
 * @see Milliken 1995, ch. 18
 */
export function transferLines(
  car: CarInRoll,
  given: Axles<number>,
  lifted: Axles<boolean>,
  lifting = 0,
): TransferLines | undefined {
  const held = eachAxle(
    lifted,
    (up, end): AxleHeld =>
      up ? { extra: 0, given: given[end] * car[end].track, lifting } : { extra: 0 },
  );
  const [atZero, atOne] = [rollEquilibrium(car, 0, held), rollEquilibrium(car, 1, held)];
  if (atZero === undefined || atOne === undefined) return undefined;
  const lines = (what: "body" | "tyres" | "moment") =>
    eachAxle(atZero[what], (zero, end): Line => ({ offset: zero, slope: atOne[what][end] - zero }));
  const moments = lines("moment");
  const transfer = eachAxle(moments, ({ offset, slope }, end): Line => {
    const { track } = car[end];
    return { offset: offset / track, slope: slope / track };
  });
  return { transfer, rollAngle: lines("body"), tyreAngle: lines("tyres") };
}
