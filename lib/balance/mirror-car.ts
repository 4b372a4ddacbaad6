import type { Sides } from "../load/wheels.js";
import type { HandlingAxle, HandlingCar } from "./handling-car.js";

/**
 * The car seen in a mirror: its left turn is the right turn of the real one.
 *
 * @example
 * mirrorCar(handlingCarOf(demoCar)).front.leftExcessLoad
 * // → -13.05, by hand: 5505.2 N·3.7 kg·m/1560.4 kg·m to the other side
 */
export function mirrorCar(car: HandlingCar): HandlingCar {
  const mirrored = mirrors.get(car) ?? {
    ...car,
    front: mirrorAxle(car.front),
    rear: mirrorAxle(car.rear),
  };
  mirrors.set(car, mirrored);
  return mirrored;
}

/** One mirror image a car: what is known of it is found again. */
const mirrors = new WeakMap<HandlingCar, HandlingCar>();

function mirrorAxle(axle: HandlingAxle): HandlingAxle {
  const { stops } = axle;
  return {
    ...axle,
    pressure: swapped(axle.pressure),
    camber: swapped(axle.camber),
    toe: swapped(axle.toe),
    leftExcessLoad: -axle.leftExcessLoad,
    ...(stops && {
      stops: {
        ...stops,
        bumpLeft: swapped(stops.bumpLeft),
        droopLeft: swapped(stops.droopLeft),
      },
    }),
  };
}

/** What was left is right. */
export function swapped<Value>({ left, right }: Sides<Value>): Sides<Value> {
  return { left: right, right: left };
}
