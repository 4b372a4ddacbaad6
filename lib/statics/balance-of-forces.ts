import type { Car } from "../car/car.js";
import { sprungMassOf } from "../car/masses.js";
import { solveStable } from "../linear.js";
import { Refusal } from "../refusal.js";
import { GRAVITY } from "../units.js";
import { bodyRow, endsOf, type Position, wheelRow } from "./position.js";
import type { Elastic } from "./springs-of-car.js";

const CANNOT_STAND =
  "The car cannot stand on its springs: they are too soft for its weight, or set too unevenly " +
  "(see spring and bar of both axles, and the heights of the masses).";
const MOST_ROUNDS = 12;
const ROUNDING = 1e-12; // m

/** How far something elastic is deflected in a position, m; 0 for a tyre in the air. */
export function deflection(elastic: Elastic, position: Position): number {
  const free = freeDeflection(elastic, position);
  return elastic.pushesOnly ? Math.max(0, free) : free;
}

/** The same, below zero for a tyre above the road. */
function freeDeflection({ atStart, row }: Elastic, position: Position): number {
  return row.reduce((sum, share, i) => sum + share * (position[i] ?? 0), atStart);
}

/** Weights of body and wheels as forces along the seven changes, N and N·m. */
export function weightsOf(car: Car): number[] {
  const sprung = sprungMassOf(car);
  const forces = bodyRow(car, sprung.behindFrontAxle, sprung.leftOfCentre).map(
    (arm) => -sprung.mass * GRAVITY * arm,
  );
  for (const end of endsOf(car)) {
    const share = (car[end.name].unsprungMass * GRAVITY) / 2;
    wheelRow(end, share, share).forEach((weight, i) => {
      forces[i] = (forces[i] ?? 0) - weight;
    });
  }
  return forces;
}

/**
 * The position in which all forces balance.
 *
 * Linear while the same wheels stand on the ground, so each round solves seven equations and then
 * moves one wheel that is on the wrong side of the road: off it, or back onto it. Forces that only
 * balance in a car lying over are no rest: there small angles say nothing.
 *
 * @throws Refusal when the car cannot stand on its springs
 */
export function restingPosition(
  elastics: readonly Elastic[],
  weights: readonly number[],
): Position {
  const inTheAir = new Set<Elastic>();
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const holding = elastics.filter((one) => !inTheAir.has(one));
    const position = solveStable(
      stiffnessMatrix(holding),
      startingForces(holding, weights),
      CANNOT_STAND,
    );
    const wrong = worstMistake(elastics, inTheAir, position);
    if (!position.every(Number.isFinite)) break;
    if (wrong === undefined && isUpright(position)) return position;
    if (wrong === undefined) break;
    if (!inTheAir.delete(wrong)) inTheAir.add(wrong);
  }
  throw new Refusal("cannot-stand", CANNOT_STAND);
}

const MOST_LEAN = 0.5; // rad, far beyond any car on its wheels and beyond small angles

const isUpright = ([, pitch = 0, roll = 0]: readonly number[]): boolean =>
  Math.abs(pitch) < MOST_LEAN && Math.abs(roll) < MOST_LEAN;

/** The tyre that pulls hardest on the road, or is deepest in it without pushing, if there is one. */
function worstMistake(
  elastics: readonly Elastic[],
  inTheAir: ReadonlySet<Elastic>,
  position: Position,
): Elastic | undefined {
  const mistake = (one: Elastic) => {
    const pressed = freeDeflection(one, position);
    return one.pushesOnly ? (inTheAir.has(one) ? pressed : -pressed) : 0;
  };
  const worst = elastics.reduce((a, b) => (mistake(b) > mistake(a) ? b : a));
  return mistake(worst) > ROUNDING ? worst : undefined;
}

/** K = Σ k·rowᵀ·row. */
function stiffnessMatrix(elastics: readonly Elastic[]): number[][] {
  const matrix = Array.from({ length: 7 }, () => new Array<number>(7).fill(0));
  for (const { stiffness, row } of elastics)
    matrix.forEach((line, i) => {
      const force = stiffness * (row[i] ?? 0);
      if (force !== 0)
        row.forEach((share, j) => {
          line[j] = (line[j] ?? 0) + force * share;
        });
    });
  return matrix;
}

/** Weights and the forces of what is deflected before anything moves. */
function startingForces(elastics: readonly Elastic[], weights: readonly number[]): number[] {
  return weights.map((weight, i) =>
    elastics.reduce(
      (sum, { stiffness, atStart, row }) => sum - stiffness * atStart * (row[i] ?? 0),
      weight,
    ),
  );
}
