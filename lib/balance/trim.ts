import { requireInRange } from "../check.js";
import type { Sides } from "../load/wheels.js";
import { further, ontoPath, type PathPoint, turnOf } from "./balanced-path.js";
import type { Driving } from "./driving.js";
import type { HandlingCar } from "./handling-car.js";
import { gentleTurn, isWide } from "./hardest-turn-of-car.js";
import {
  countOfPush,
  type HeldNumbers,
  MOST_PUSH,
  type NumberedCar,
  numberedCar,
  pushOfCount,
  SCALES,
} from "./held-numbers.js";
import { mirrorCar } from "./mirror-car.js";
import { mirrorDriving } from "./mirror-driving.js";
import { mirrorTrim } from "./mirror-trim.js";
import type { Trim, WheelAtWork } from "./trimmed-car.js";
import { type WheelForces, type Work, wholeCar } from "./whole-car.js";

/**
 * The steady balance of a car at a speed or round a corner, with a lateral acceleration across and a
 * longitudinal one along its path.
 *
 * Sums of forces along and across the path are what the accelerations ask, the sum of yaw moments is
 * zero. Every wheel has its own place, load, lean, toe, slip angle and push.
 *
 * @param lateralAcceleration - m/s² across the path, above 0 to the left
 * @param start - a trim of a similar car or turn, for a quick start
 * @param work - counts how often the wheels were worked out
 * @returns nothing when the tyres cannot do it, or the car tips over before
 * @throws Refusal when a number is out of range or the springs cannot hold the body up
 * @example
 * trim(handlingCarOf(demoCar), { speed: 20 }, 5).yawRate // → 0.2500, by hand: 5/20
 */
export function trim(
  car: HandlingCar,
  driving: Driving,
  lateralAcceleration: number,
  start?: Trim,
  work?: Work,
): Trim | undefined {
  requireInRange("lateral acceleration", lateralAcceleration, -100, 100, "m/s²");
  if (lateralAcceleration >= 0) return leftTrim(car, driving, lateralAcceleration, start, work);
  const [mirror, facing] = [mirrorCar(car), mirrorDriving(driving)];
  const mirrored = leftTrim(mirror, facing, -lateralAcceleration, start, work);
  return mirrored && mirrorTrim(mirrored);
}

const BY_TURN: HeldNumbers = [0, 0, 0, 1];

function leftTrim(
  car: HandlingCar,
  driving: Driving,
  ay: number,
  start: Trim | undefined,
  work: Work | undefined,
): Trim | undefined {
  const numbered = numberedCar(wholeCar(car, driving, work));
  const turn = ay / SCALES[3];
  const push = driving.longitudinalAcceleration ?? 0;
  const guess: HeldNumbers = start
    ? [start.numbers[0], start.numbers[1], start.numbers[2], turn]
    : [0.2 * turn, 0.2 * turn, countOfPush(push), turn];
  const near = ontoPath(numbered, guess, BY_TURN);
  const sure = near !== undefined && near.tangent[3] > 0 && isInReach(near);
  const point = sure ? near : alongThePath(numbered, push, turn);
  return point && trimOf(numbered, point);
}

/** Whether a driver gets there: some wheel down on each side, slip angles and push within what is sought. */
const isInReach = (point: PathPoint): boolean =>
  !point.tips && !isWide(point) && Math.abs(point.at[2]) <= MOST_PUSH;

const STEP = 0.15;
const SHORTEST_STEP = 1e-3;
const MOST_STEPS = 200;

/** The same found by following the balanced path from a gentle turn, over its tops too. */
function alongThePath(car: NumberedCar, push: number, turn: number): PathPoint | undefined {
  let point = gentleTurn(car, push);
  let step = STEP;
  for (let i = 0; i < MOST_STEPS && point !== undefined; i++) {
    if (point.at[3] >= turn) return atTurn(car, point, turn);
    const next = further(car, point, step);
    if (next === undefined || (next.at[3] < turn && !isInReach(next))) step /= 4;
    else if (next.at[3] >= turn) return atTurn(car, between(point, next, turn), turn);
    else point = next;
    if (step < SHORTEST_STEP) return undefined;
  }
  return undefined;
}

/** Two places of the path mixed so that they turn as hard as is asked. */
function between(from: PathPoint, to: PathPoint, turn: number): Pick<PathPoint, "at"> {
  const share = (turn - from.at[3]) / (to.at[3] - from.at[3]);
  const mixed = from.at.map((value, k) => value + share * ((to.at[k] as number) - value));
  return { at: mixed as HeldNumbers };
}

/** The place on the path at a lateral acceleration, from one that is near. */
function atTurn(car: NumberedCar, { at }: Pick<PathPoint, "at">, turn: number) {
  const found = ontoPath(car, [at[0], at[1], at[2], turn], BY_TURN);
  return found && isInReach(found) ? found : undefined;
}

function trimOf({ whole, at }: NumberedCar, point: PathPoint): Trim {
  at(point.at, [0, 0, 0]);
  const { stance, wheels } = whole;
  const axle = ({ left, right }: Sides<WheelForces>) => ({
    left: atWork(left),
    right: atWork(right),
  });
  return {
    lateralAcceleration: turnOf(point),
    speed: whole.speed,
    steer: whole.steer,
    sideSlip: whole.sideSlip,
    yawRate: whole.yawRate,
    push: pushOfCount(point.at[2]) * whole.mass,
    wheels: { front: axle(wheels.front), rear: axle(wheels.rear) },
    rollAngle: { front: stance.front.roll, rear: stance.rear.roll },
    lifted: { front: stance.front.lifted, rear: stance.rear.lifted },
    numbers: point.at,
  };
}

function atWork(wheel: WheelForces): WheelAtWork {
  const { stance, slipAngle, slip, longitudinalForce, sideForce, aligningMoment } = wheel;
  const { load, inclination, travel } = stance;
  return {
    load,
    inclination,
    slipAngle,
    slip,
    longitudinalForce,
    sideForce,
    aligningMoment,
    travel,
  };
}
