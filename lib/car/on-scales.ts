import { requireInRange } from "../check.js";
import { sumOfWheels, type Wheels } from "../load/wheels.js";
import { parameters } from "../parameters.js";
import type { Car, PlacedMass } from "./car.js";
import { together, unsprungMassesOf } from "./masses.js";

/**
 * The body that a car must have to stand on its scales as it does: what they show, less the wheels
 * and everything else that the car's file puts into it.
 *
 * Four readings fix mass, length and side; the height of the body stays as it is in the file. What
 * they say of cross weight beyond that is in the spring seats, not in the masses.
 *
 * @param readings - kg on the scale under each wheel, level, with everything in the car that its
 * file has
 * @throws Refusal when a reading is below 0, or what is left for the body is out of its range
 */
export function bodyOnScales(car: Car, readings: Wheels<number>): PlacedMass {
  const [whole, rest] = [onScales(car, readings), together(allButBody(car))];
  const { name, min, max } = parameters.sprungMass;
  const mass = requireInRange(name, whole.mass - rest.mass, min, max, "kg");
  const left = (where: "behindFrontAxle" | "leftOfCentre") =>
    (whole.mass * whole[where] - rest.mass * rest[where]) / mass; // moments of what is left
  return {
    mass,
    behindFrontAxle: left("behindFrontAxle"),
    leftOfCentre: left("leftOfCentre"),
    height: car.body.height,
  };
}

/** Mass of the whole car and where it is, from moments about the front axle and the centre line. */
function onScales({ wheelbase, front, rear }: Car, readings: Wheels<number>) {
  for (const [end, { left, right }] of Object.entries(readings)) {
    requireInRange(`${end} left scale`, left, 0, Infinity, "kg");
    requireInRange(`${end} right scale`, right, 0, Infinity, "kg");
  }
  const mass = sumOfWheels(readings);
  const [f, r] = [readings.front, readings.rear];
  const side = ((f.left - f.right) * front.track + (r.left - r.right) * rear.track) / 2;
  return {
    mass,
    behindFrontAxle: ((r.left + r.right) * wheelbase) / mass,
    leftOfCentre: side / mass,
  };
}

function allButBody(car: Car): PlacedMass[] {
  const { driver, passenger, fuel, ballast } = car;
  const inside = [driver, passenger, fuel, ballast].filter((part) => part !== undefined);
  const unsprung = unsprungMassesOf(car);
  return [...inside, unsprung.front, unsprung.rear];
}
