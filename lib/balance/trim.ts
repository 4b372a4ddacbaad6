import { requireInRange } from "../check.js";
import type { Axles } from "../load/wheels.js";
import { GRAVITY } from "../units.js";
import { type Driving, longitudinalDemand, requireDriving, sharePushOverAxles } from "./driving.js";
import { type CarForces, carForces, type Motion } from "./four-wheels.js";
import { carMass, type HandlingCar } from "./handling-car.js";
import { axlesAt } from "./loads-in-turn.js";
import { mirrorCar } from "./mirror-car.js";
import { mirrorDriving } from "./mirror-driving.js";
import { mirrorTrim } from "./mirror-trim.js";
import { newton } from "./newton.js";
import { trimStart } from "./trim-start.js";

/** A car in steady balance: what the driver and each wheel must do for this motion. */
export interface Trim extends CarForces {
  /** m/s² across the car, above 0 to the left */
  readonly lateralAcceleration: number;
  /** rad of both front wheels without toe, above 0 to the left */
  readonly steer: number;
  /** rad from where the car points to where it goes, above 0 to the left (ISO 8855) */
  readonly sideSlip: number;
  /** rad/s, above 0 to the left */
  readonly yawRate: number;
  /** N that the wheels of each axle push with, below 0 braking */
  readonly push: Axles<number>;
  /** rad at each axle, above 0 right side down */
  readonly rollAngle: Axles<number>;
  /** axles whose inner tyre is off the ground */
  readonly lifted: Axles<boolean>;
}

/**
 * The steady balance of a car at a speed, a lateral and a longitudinal acceleration.
 *
 * Sum of forces = mass × acceleration along and across the car, sum of yaw moments = 0, and brakes
 * or drive share their force between the axles as they are built. Every wheel has its own place,
 * load, lean, toe and slip angle; both wheels of an axle push alike while both can: `sharePush`.
 *
 * @param lateralAcceleration - m/s² across the car, above 0 to the left
 * @param start - a trim of a similar car or turn, for a quick start
 * @returns nothing when the tyres cannot do it
 * @throws RangeError when a number is out of range or the car tips over
 */
export function trim(
  car: HandlingCar,
  driving: Driving,
  lateralAcceleration: number,
  start?: Trim,
): Trim | undefined {
  requireDriving(driving);
  requireInRange("lateral acceleration", lateralAcceleration, -100, 100, "m/s²");
  if (lateralAcceleration >= 0) return leftTrim(car, driving, lateralAcceleration, start);
  const mirrored = leftTrim(
    mirrorCar(car),
    mirrorDriving(driving),
    -lateralAcceleration,
    start && mirrorTrim(start),
  );
  return mirrored && mirrorTrim(mirrored);
}

function leftTrim(
  car: HandlingCar,
  driving: Driving,
  ay: number,
  start: Trim | undefined,
): Trim | undefined {
  const axles = axlesAt(car, driving, ay);
  const mass = carMass(car);
  const weight = mass * GRAVITY;
  const along = longitudinalDemand(car, driving);
  const motionOf = ([sideSlip = 0, steer = 0, push = 0]: readonly number[]): Motion => ({
    speed: driving.speed,
    sideSlip,
    steer,
    push: sharePushOverAxles(car, push * weight),
    yawRate: yawRateFor(driving, ay, sideSlip),
    lateralAcceleration: ay,
  });
  const residuals = (unknowns: readonly number[]) => {
    const { longitudinal, side, yawMoment } = carForces(car, axles, motionOf(unknowns));
    return [
      (longitudinal - along) / weight, // ΣFx = m·ax + drag
      (side - mass * ay) / weight, // ΣFy = m·ay
      yawMoment / (weight * car.wheelbase), // ΣMz = 0
    ];
  };
  const from = start ? [start.sideSlip, start.steer] : trimStart(car, axles, driving, ay);
  const push = start ? (start.push.front + start.push.rear) / weight : along / weight;
  const found = newton(residuals, [...from, push], [1e-7, 1e-7, 1e-7]);
  if (found === undefined) return undefined;
  const motion = motionOf(found);
  const { offset: f0, slope: f1 } = axles.rollAngle.front;
  const { offset: r0, slope: r1 } = axles.rollAngle.rear;
  return {
    ...carForces(car, axles, motion),
    lateralAcceleration: ay,
    steer: motion.steer,
    sideSlip: motion.sideSlip,
    yawRate: motion.yawRate,
    push: motion.push,
    rollAngle: { front: f0 + f1 * ay, rear: r0 + r1 * ay },
    lifted: axles.lifted,
  };
}

/** Yaw rate of steady turning, rad/s: acceleration across the path over speed. */
function yawRateFor(driving: Driving, ay: number, sideSlip: number): number {
  const ax = driving.longitudinalAcceleration ?? 0;
  return (ay * Math.cos(sideSlip) - ax * Math.sin(sideSlip)) / driving.speed; // r = an/v
}
