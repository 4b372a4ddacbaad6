import { type AxlesInTurn, axlesInTurn } from "./axle-in-turn.js";
import type { Driving } from "./driving.js";
import type { HandlingCar } from "./handling-car.js";

/**
 * Both axles as they are in a left turn of some lateral acceleration, wheels in the air included.
 *
 * @throws RangeError when the springs cannot hold the body, or the car tips over
 */
export function axlesAt(
  car: HandlingCar,
  driving: Driving,
  lateralAcceleration: number,
): AxlesInTurn {
  const onFour = onFourWheels(car, driving);
  if (lateralAcceleration <= onFour.holdsUpTo) return onFour;
  const onThree = onThreeWheels(car, driving, onFour, lateralAcceleration);
  if (onThree !== undefined && lateralAcceleration <= onThree.holdsUpTo) return onThree;
  const tips = tipsOverAt(car, driving);
  const [asked, most] = [rounded(lateralAcceleration), rounded(tips)];
  throw new RangeError(
    `lateral acceleration is ${asked} m/s² but the car tips over at ${most} m/s².`,
  );
}

/** m/s² as a sentence shows it, to the last digit that means something. */
const rounded = (acceleration: number): number => Number(acceleration.toFixed(3));

const MOST = 1e3; // m/s², harder than any turn

/** Lateral acceleration to the left at which both inner wheels are off the ground, m/s². */
export function tipsOverAt(car: HandlingCar, driving: Driving): number {
  const onFour = onFourWheels(car, driving);
  let [stands, tips] = [onFour.holdsUpTo, Math.min(MOST, 2 * onFour.holdsUpTo)];
  if (!(stands < tips)) return stands;
  for (let i = 0; i < 50; i++) {
    const middle = (stands + tips) / 2;
    const onThree = onThreeWheels(car, driving, onFour, middle);
    if (onThree !== undefined && middle <= onThree.holdsUpTo) stands = middle;
    else tips = middle;
  }
  return stands;
}

/** @throws RangeError when the springs cannot hold the body */
export function onFourWheels(car: HandlingCar, driving: Driving): AxlesInTurn {
  const axles = axlesInTurn(car, driving);
  if (axles === undefined)
    throw new RangeError(
      "roll stiffness of the two axles together must be greater than sprung mass × gravity × " +
        "height above the roll axis, or the body falls over at rest.",
    );
  return axles;
}

/** The same car once the next inner wheel is off the ground; nothing when it then falls over. */
export function onThreeWheels(
  car: HandlingCar,
  driving: Driving,
  { liftsNext }: AxlesInTurn,
  lateralAcceleration: number,
): AxlesInTurn | undefined {
  const lifted = { front: liftsNext === "front", rear: liftsNext === "rear" };
  return axlesInTurn(car, driving, lifted, lateralAcceleration);
}
