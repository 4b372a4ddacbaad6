import { isFarFromTipping, tippingAcceleration } from "../load/tipping.js";
import { GRAVITY } from "../units.js";
import { type Driving, requireDriving } from "./driving.js";
import { carMass, type HandlingCar } from "./handling-car.js";
import { type RoadDemand, type Stance, stanceFinder } from "./stance.js";

/**
 * How a car stands in a left turn, its path along its own axis: loads, lean, steer and travel of
 * every wheel, without asking whether its tyres can hold the turn.
 *
 * @param lateralAcceleration - m/s² to the left, at least 0
 * @throws Refusal for a number out of range, and when the springs cannot hold the body
 * @example
 * stanceInTurn(handlingCarOf(demoCar), { speed: 25 }, 9).front.roll / DEGREE
 * // → 4.0, the mechanics engine: 3.99°
 */
export function stanceInTurn(
  car: HandlingCar,
  driving: Driving,
  lateralAcceleration: number,
): Stance {
  return standing(car, driving)(lateralAcceleration);
}

const HARDEST = 100; // m/s², far beyond any car on wheels

/**
 * Lateral acceleration to the left at which both inner wheels are off the ground, m/s²: on springs,
 * tyres, dampers and stops, or sooner where side force at the outer wheels lifts the body.
 */
export function tipsOverAt(car: HandlingCar, driving: Driving): number {
  const stands = standing(car, driving);
  const { front, rear } = stands(0);
  const lifted = tippingAcceleration(car, { front: front.left.load, rear: rear.left.load });
  if (!stands(HARDEST).tips) return lifted;
  let [low, high] = [0, HARDEST];
  while (high - low > 1e-9) {
    const middle = (low + high) / 2;
    if (stands(middle).tips) high = middle;
    else low = middle;
  }
  return Math.min(low, lifted);
}

/** Whether a turn to the left is far from tipping a car over: quicker than `tipsOverAt`. */
export function isFarFromTippingAt(
  car: HandlingCar,
  driving: Driving,
  lateralAcceleration: number,
): boolean {
  const stands = standing(car, driving);
  const { front, rear } = stands(0);
  const inner = { front: front.left.load, rear: rear.left.load };
  return (
    !stands(1.25 * lateralAcceleration).tips && isFarFromTipping(car, inner, lateralAcceleration)
  );
}

function standing(car: HandlingCar, driving: Driving): (ay: number) => Stance {
  const find = stanceFinder(car, requireDriving(driving).lateralJerk);
  return (ay) => find(levelDemand(car, driving, ay));
}

/** What a level road asks of a car that goes where it points. */
function levelDemand(car: HandlingCar, driving: Driving, ay: number): RoadDemand {
  const { cornerRadius, speed, longitudinalAcceleration = 0 } = driving;
  const speedSquared = cornerRadius === undefined ? speed ** 2 : ay * cornerRadius;
  const drag = (car.dragFactor * speedSquared) / carMass(car);
  return { forward: longitudinalAcceleration + drag, left: ay, pressed: GRAVITY, speedSquared };
}
