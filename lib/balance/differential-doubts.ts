import type { Car } from "../car/car.js";
import { carBalance } from "./car-balance.js";
import type { AxleDifferential } from "./differential.js";
import type { HandlingCar } from "./handling-car.js";
import { type PhaseBalances, type PhaseName, phases } from "./phases.js";

/** A driven axle whose differential its file does not name: figures take it as open. */
export interface DifferentialDoubt {
  readonly end: "front" | "rear";
  /** What other kinds would move, each in the middle of a left corner and with power on. */
  readonly shifts: readonly DifferentialShift[];
  /** m/s² from which such a shift is told */
  readonly least: number;
}

export interface DifferentialShift {
  readonly instead: Exclude<AxleDifferential, { kind: "open" }>;
  readonly phase: PhaseName;
  /** m/s² of the margin, that kind less open: above 0 towards understeer */
  readonly shift: number;
}

/** m/s² of the margin from which another differential is worth a word. */
const LEAST_DIFFERENTIAL_SHIFT = 0.05;

/** Locks of a limited-slip differential where nothing is known – common practice, no source. */
const USUAL_LOCKS = { power: 0.4, overrun: 0.2 } as const;

const others: readonly DifferentialShift["instead"][] = [
  { kind: "limited-slip", ...USUAL_LOCKS },
  { kind: "locked" },
];
const told = ["middle", "power on"] as const satisfies readonly PhaseName[];

/**
 * Driven axles whose differential is not known, and what another kind than the open one assumed
 * would do; shifts below `LEAST_DIFFERENTIAL_SHIFT` are left out.
 *
 * @param speed - m/s
 * @param open - balances of the car as its figures take it
 * @throws Refusal as `carBalance`
 */
export function differentialDoubts(
  car: Car,
  handling: HandlingCar,
  speed: number,
  open: PhaseBalances,
): DifferentialDoubt[] {
  return (["front", "rear"] as const)
    .filter((end) => car[end].differential === undefined && isDriven(car, end))
    .map((end) => {
      const shifts = shiftsAt(handling, end, speed, open);
      return { end, shifts, least: LEAST_DIFFERENTIAL_SHIFT };
    });
}

const isDriven = ({ driveFrontShare }: Car, end: "front" | "rear"): boolean =>
  (end === "front" ? driveFrontShare : 1 - driveFrontShare) > 0;

function shiftsAt(
  handling: HandlingCar,
  end: "front" | "rear",
  speed: number,
  open: PhaseBalances,
): DifferentialShift[] {
  return others.flatMap((instead) => {
    const other = { ...handling, [end]: { ...handling[end], differential: instead } };
    return told.flatMap((phase): DifferentialShift[] => {
      const before = open[phase];
      const after = carBalance(other, { speed, ...phases[phase] }, before);
      if (before.tips || after.tips || before.given !== after.given) return [];
      const shift = after.understeerMargin - before.understeerMargin;
      return Math.abs(shift) < LEAST_DIFFERENTIAL_SHIFT ? [] : [{ instead, phase, shift }];
    });
  });
}
