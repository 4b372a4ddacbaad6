import type { HandlingCar } from "../balance/handling-car.js";
import { requireInRange } from "../check.js";
import { type Matrix, multiply, solveLinear, transpose } from "../linear.js";
import { Refusal } from "../refusal.js";
import { type Motion, motionOf, RELAXATION_LENGTH } from "./motion.js";
import { timeToReach } from "./step-figures.js";

/** What a car answers to a step of steering so small that everything is in proportion. */
export interface SmallStep {
  /**
   * rad/s of steady yaw rate for each rad at the front wheels; below 0 above the critical speed, and
   * 0 where the wheels can hold no turn at all
   */
  readonly yawGain: number;
  /**
   * rad/(m/s²) of steering beyond that of the corner itself: above 0 understeer, below 0 oversteer;
   * Infinity where the wheels can hold no turn
   */
  readonly understeerGradient: number;
  /**
   * s from half the step to 90 % of the steady yaw rate, at least 0; Infinity when the car does not
   * get there within 10 s, as from its critical speed on
   */
  readonly yawResponseTime: number;
}

const STEER_TIME = 0.1; // s from straight ahead to the full angle, as in `stepSteer`
const STEP = 0.01; // s between samples
const LONGEST = 10; // s
const SHARE = 0.9; // of the steady yaw rate – ISO 7401:2011

/**
 * A step of steering near straight ahead, as of ISO 7401: body in roll, springs, bars, dampers, toe,
 * lean and the delay of the tyres as in `drive`, everything in proportion to the steer angle.
 *
 * @param speed - m/s, 0.5 to 200
 * @throws Refusal for a speed out of range
 * @see ISO 7401:2011, step input; Abe, Vehicle Handling Dynamics, ch. 6
 */
export function smallStep(car: HandlingCar, speed: number): SmallStep {
  requireInRange("speed", speed, 0.5, 200, "m/s");
  const { matrix, steered } = linearised(motionOf(car, speed, RELAXATION_LENGTH));
  const yawGain = steadyYawRate(matrix, steered);
  const yawResponseTime = yawGain > 0 ? timeTo90(matrix, steered, yawGain) : Infinity;
  const understeerGradient =
    yawGain === 0 ? Infinity : (1 / yawGain - car.wheelbase / speed) / speed; // δ = L/R + K·ay – Wong, ch. 5
  return { yawGain, understeerGradient, yawResponseTime };
}

const YAW_RATE = 1; // its place among the numbers of a state
/** So small that a tyre's curve is a straight line: m/s, rad/s, rad, rad/s, N, N. */
const SMALL_STATE = [1e-5, 1e-6, 1e-6, 1e-5, 1e-2, 1e-2];
const SMALL_STEER = 1e-6; // rad

/** Yaw rate of the steady turn, 0 = A·x + b·δ, for each rad of steer; 0 where there is none. */
function steadyYawRate(matrix: Matrix, steered: readonly number[]): number {
  try {
    return 0 - (solveLinear(matrix, steered)[YAW_RATE] ?? 0);
  } catch (error) {
    if (error instanceof Refusal) return 0; // no tyre holds anything, or just the critical speed
    throw error;
  }
}

/** How a motion near straight ahead depends on its state and on the steer angle: ẋ = A·x + b·δ. */
function linearised(motion: Motion): { matrix: Matrix; steered: readonly number[] } {
  const still = SMALL_STATE.map(() => 0);
  const before = motion(0, still);
  const slope = (after: readonly number[], by: number) =>
    after.map((value, i) => (value - (before[i] ?? 0)) / by);
  const columns = SMALL_STATE.map((by, j) => {
    const moved = still.map((_, i) => (i === j ? by : 0));
    return slope(motion(0, moved), by);
  });
  return { matrix: transpose(columns), steered: slope(motion(SMALL_STEER, still), SMALL_STEER) };
}

/** Time from half the step until the yaw rate is 90 % of the steady one, s. */
function timeTo90(matrix: Matrix, steered: readonly number[], yawGain: number): number {
  const advance = stepping(matrix, steered);
  const values = [0];
  let numbers = [...steered.map(() => 0), 0, 1 / STEER_TIME]; // state, steer angle, steer rate
  for (let i = 1; i <= LONGEST / STEP; i++) {
    if (i === STEER_TIME / STEP + 1) numbers = [...numbers.slice(0, -1), 0];
    numbers = multiply(advance, numbers);
    values.push((numbers[YAW_RATE] ?? 0) / yawGain);
    if (!((values.at(-1) ?? 0) >= SHARE)) continue;
    return Math.max(0, timeToReach({ step: STEP, values }, SHARE) - STEER_TIME / 2);
  }
  return Infinity;
}

/** The matrix that carries state, steer angle and steer rate on by one sample: exp(M·h). */
function stepping(matrix: Matrix, steered: readonly number[]): Matrix {
  const size = matrix.length + 2;
  const whole = matrix.map((row, i) => [...row, steered[i] ?? 0, 0]);
  const rates = [...whole, unit(size, size - 1), new Array<number>(size).fill(0)];
  return exponential(rates.map((row) => row.map((entry) => entry * STEP)));
}

const HALVINGS = 4; // stable while nothing goes on faster than 4000 times a second

/** e to the power of a matrix, by series and squaring – Golub & Van Loan 2013, ch. 9.3. */
function exponential(matrix: Matrix): Matrix {
  const part = matrix.map((row) => row.map((entry) => entry / 2 ** HALVINGS));
  const series = (column: readonly number[]) =>
    [4, 3, 2, 1].reduce<readonly number[]>((sum, term) => {
      const next = multiply(part, sum);
      return column.map((entry, i) => entry + (next[i] ?? 0) / term);
    }, column);
  let power = transpose(part.map((_, i) => series(unit(part.length, i))));
  for (let i = 0; i < HALVINGS; i++)
    power = transpose(transpose(power).map((column) => multiply(power, column)));
  return power;
}

const unit = (size: number, place: number): number[] =>
  Array.from({ length: size }, (_, i) => (i === place ? 1 : 0));
