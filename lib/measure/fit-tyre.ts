import { requireInRange } from "../check.js";
import { Refusal } from "../refusal.js";
import { clubTyreCoefficients } from "../tyre/club-tyre.js";
import { slipAngleRange } from "../tyre/magic-formula-61.js";
import type { MagicFormula61Coefficients } from "../tyre/magic-formula-61-coefficients.js";
import { sideForce61 } from "../tyre/magic-formula-61-side.js";
import { dataOfTyre, type TyreData } from "../tyre/tyre-data.js";
import { leastSquares } from "./least-squares.js";
import type { Measured } from "./measured.js";
import { forFew } from "./repeats.js";

/** The side force of an upright tyre at one load and slip angle. */
export interface TyreReading {
  /** N */
  readonly load: number;
  /** rad; with the sign of the force, or both without */
  readonly slipAngle: number;
  /** N */
  readonly sideForce: number;
}

/** The club tyre with three numbers of its own, as readings give them. */
export interface FittedTyre {
  /** Friction of the peak at the load of the tyre's data, without unit. */
  readonly peak: Measured;
  /** How much that falls for each N more, 1/N. */
  readonly fallWithLoad: Measured;
  /** Cornering stiffness at the load of the tyre's data, N/rad. */
  readonly stiffness: Measured;
  /** Load that peak and stiffness are for, N. */
  readonly load: number;
  /** What each reading is off from the fitted tyre, N. */
  readonly residuals: readonly number[];
  /** Standard deviation of one reading about it, N. */
  readonly scatter: number;
  /** The fitted tyre, measured as far as the readings go. */
  readonly data: TyreData;
}

const LEAST_READINGS = 6;
export const MOST_READINGS = 2000;

/** The three numbers as coefficients: friction, its change over the nominal load, stiffness. */
type Numbers = readonly [PDY1: number, PDY2: number, PKY1: number];
const club = clubTyreCoefficients;
const start: Numbers = [club.PDY1, club.PDY2, club.PKY1];

/**
 * The club tyre's peak, its fall with load and its cornering stiffness that fit a table of side forces
 * best, at the nominal pressure and upright. All else stays the club tyre's.
 *
 * Gauss and Newton's steps by orthogonal decomposition, each shortened until it brings the forces
 * nearer. The spreads are those that the scatter about the fit gives, widened for few readings.
 *
 * @throws Refusal for a reading out of range, for too few, and for readings that do not fix the numbers
 * @see Björck, Numerical Methods for Least Squares Problems, 1996, ch. 9.2
 */
export function fitTyre(given: readonly TyreReading[]): FittedTyre {
  const readings = given.map(checked);
  if (readings.length < LEAST_READINGS || readings.length > MOST_READINGS)
    throw new Refusal(
      "not-determined",
      `There are ${readings.length} readings but must be from ${LEAST_READINGS} to ${MOST_READINGS}.`,
    );
  const best = bestNumbers(readings);
  const residuals = residualsOf(best, readings);
  const freedom = readings.length - best.length;
  const scatter = Math.sqrt(sumOfSquares(residuals) / freedom);
  const step = stepFrom(best, readings, Math.max(scatter, LEAST_SCATTER));
  const widened = step.map(({ spread }) => spread * forFew(freedom));
  const spread = (i: number) => widened[i] ?? 0;
  const [PDY1, PDY2, PKY1] = best;
  const stiffness = -PKY1 * club.FNOMIN * atNominal;
  return {
    peak: { value: PDY1, spread: spread(0) },
    fallWithLoad: { value: -PDY2 / club.FNOMIN, spread: spread(1) / club.FNOMIN },
    stiffness: { value: stiffness, spread: spread(2) * club.FNOMIN * atNominal },
    ...{ load: club.FNOMIN, residuals, scatter, data: dataFor(best, readings) },
  };
}

/** sin(PKY4·atan(1/PKY2)): the bend of stiffness with load, at the nominal load. */
const atNominal = Math.sin(club.PKY4 * Math.atan(1 / club.PKY2)); // – Pacejka 2012, eq. 4.E25

const LEAST_SCATTER = 1e-6; // N: readings without any still have rounding

function checked({ load, slipAngle, sideForce }: TyreReading): TyreReading {
  const { minimum, maximum } = slipAngleRange;
  return {
    load: requireInRange("load", load, 50, 20e3, "N"),
    slipAngle: requireInRange("slip angle", slipAngle, minimum, maximum, "rad"),
    sideForce: requireInRange("side force", sideForce, -50e3, 50e3, "N"),
  };
}

const withNumbers = ([PDY1, PDY2, PKY1]: Numbers): MagicFormula61Coefficients => ({
  ...club,
  ...{ PDY1, PDY2, PKY1 },
});

function forceOf(numbers: Numbers, { load, slipAngle }: TyreReading): number {
  return sideForce61(withNumbers(numbers), slipAngle, load, club.NOMPRES, 0);
}

const residualsOf = (numbers: Numbers, readings: readonly TyreReading[]): number[] =>
  readings.map((reading) => reading.sideForce - forceOf(numbers, reading));

const sumOfSquares = (values: readonly number[]): number =>
  values.reduce((sum, one) => sum + one ** 2, 0);

function bestNumbers(readings: readonly TyreReading[]): Numbers {
  let now = start;
  let off = sumOfSquares(residualsOf(now, readings));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const step = stepFrom(now, readings, 1).map(({ value }) => value);
    const next = nearer(now, step, readings, off);
    if (next === undefined) return now;
    const gained = off - next.off;
    [now, off] = [next.numbers, next.off];
    if (gained <= 1e-12 * off) return now;
  }
  throw notATyre();
}

const MOST_ROUNDS = 60;

const notATyre = () =>
  new Refusal(
    "not-determined",
    "These readings are not those of a tyre whose grip falls with load: no numbers fit them.",
  );

/** The longest part of a step that brings the forces nearer and leaves a tyre; nothing where none does. */
function nearer(
  now: Numbers,
  step: readonly number[],
  readings: readonly TyreReading[],
  off: number,
) {
  for (let part = 1; part > 1e-6; part /= 2) {
    const numbers = now.map((value, i) => value + part * (step[i] ?? 0)) as unknown as Numbers;
    if (!isTyre(numbers, readings)) continue;
    const left = sumOfSquares(residualsOf(numbers, readings));
    if (left < off) return { numbers, off: left };
  }
  return undefined;
}

/** Friction above zero at every load read, and a force against slip. */
function isTyre([PDY1, PDY2, PKY1]: Numbers, readings: readonly TyreReading[]): boolean {
  const loads = readings.map(({ load }) => load);
  const friction = [Math.min(...loads), Math.max(...loads), club.FNOMIN].map(
    (load) => PDY1 + (PDY2 * (load - club.FNOMIN)) / club.FNOMIN,
  );
  return friction.every((one) => one > 0.05 && one < 5) && PKY1 < -0.5 && PKY1 > -200;
}

/** The step to the numbers that would fit best if forces went in straight lines, with their spreads. */
function stepFrom(
  now: Numbers,
  readings: readonly TyreReading[],
  spread: number,
): readonly Measured[] {
  const design = readings.map((reading) =>
    now.map((value, i) => {
      const by = 1e-5 * Math.max(1, Math.abs(value));
      const moved = (sign: number) =>
        forceOf(
          now.map((one, j) => (i === j ? one + sign * by : one)) as unknown as Numbers,
          reading,
        );
      return (moved(1) - moved(-1)) / (2 * by);
    }),
  );
  const values = residualsOf(now, readings).map((value) => ({ value, spread }));
  return leastSquares(design, values).found;
}

function dataFor(numbers: Numbers, readings: readonly TyreReading[]): TyreData {
  const loads = readings.map(({ load }) => load);
  const data = dataOfTyre(withNumbers(numbers));
  return { ...data, FZMIN: Math.min(...loads), FZMAX: Math.max(...loads) };
}
