import type { Car } from "../car/car.js";
import { bodyOnScales } from "../car/on-scales.js";
import { sumOfWheels, type Wheels } from "../load/wheels.js";
import type { Measured } from "./measured.js";
import { type Propagated, throughCar } from "./through.js";

/** What four scales say of a whole car and of its body. */
export type FourScales = Readonly<
  Record<
    | "mass"
    | "frontShare"
    | "leftShare"
    | "crossShare"
    | "behindFrontAxle"
    | "leftOfCentre"
    | "bodyMass"
    | "bodyBehindFrontAxle"
    | "bodyLeftOfCentre",
    Propagated
  >
>;

const bears = (path: string) =>
  /^(wheelbase|(front|rear)\.(track|unsprungMass)|(driver|passenger|fuel|ballast)\.(mass|behindFrontAxle|leftOfCentre))$/.test(
    path,
  );

/**
 * Mass, where it is, and cross weight of a car on four level scales, and the body that it must have:
 * kg, m, and shares 0–1, each with its spread from those of scales, tape and everything in the car.
 *
 * Cross weight is the share on the right front and the left rear wheel.
 *
 * @param readings - kg under each wheel, with everything in the car that its file has
 * @throws Refusal when a reading is below 0, or what is left for the body is out of its range
 */
export function onFourScales(car: Car, { front, rear }: Wheels<Measured>): FourScales {
  const inputs = {
    frontLeft: front.left,
    frontRight: front.right,
    rearLeft: rear.left,
    rearRight: rear.right,
  };
  return throughCar(car, inputs, bears, (car, read) => {
    const { frontLeft: fl, frontRight: fr, rearLeft: rl, rearRight: rr } = read;
    const readings = { front: { left: fl, right: fr }, rear: { left: rl, right: rr } };
    const mass = sumOfWheels(readings);
    const side = ((fl - fr) * car.front.track + (rl - rr) * car.rear.track) / 2;
    const body = bodyOnScales(car, readings);
    return {
      mass,
      frontShare: (fl + fr) / mass,
      leftShare: (fl + rl) / mass,
      crossShare: (fr + rl) / mass,
      behindFrontAxle: ((rl + rr) * car.wheelbase) / mass, // moments about the front axle
      leftOfCentre: side / mass,
      bodyMass: body.mass,
      bodyBehindFrontAxle: body.behindFrontAxle,
      bodyLeftOfCentre: body.leftOfCentre,
    };
  });
}
