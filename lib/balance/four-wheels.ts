import type { Axles, Sides, Wheels } from "../load/wheels.js";
import { slipAngleRange } from "../tyre/magic-formula-61.js";
import type { MagicFormula61Coefficients } from "../tyre/magic-formula-61-coefficients.js";
import { clampTo } from "../tyre/valid-range.js";
import type { AxleInTurn, AxlesInTurn, TyreInTurn } from "./axle-in-turn.js";
import { axleDistances, type HandlingCar } from "./handling-car.js";
import { mostPush, pushWith, type RollingTyre } from "./rolling-tyre.js";
import { sharePush } from "./share-push.js";

/** How a car moves over the road, and what its wheels do. */
export interface Motion {
  /** m/s */
  readonly speed: number;
  /** rad from where the car points to where it goes, above 0 when it goes to the left (ISO 8855) */
  readonly sideSlip: number;
  /** rad/s, above 0 turning to the left */
  readonly yawRate: number;
  /** rad of both front wheels without toe, above 0 to the left */
  readonly steer: number;
  /** N that the wheels of each axle push with, below 0 braking; less when they cannot */
  readonly push: Axles<number>;
  /** m/s² that moves the loads, above 0 to the left */
  readonly lateralAcceleration: number;
}

/** One wheel at work. */
export interface WheelAtWork {
  /** N */
  readonly load: number;
  /** rad, above 0 leaning to the left */
  readonly inclination: number;
  /** rad, above 0 makes a force to the left */
  readonly slipAngle: number;
  /** wheel speed above road speed as a share of road speed, above 0 driving */
  readonly slip: number;
  /** N along the wheel, above 0 driving */
  readonly longitudinalForce: number;
  /** N across the wheel, above 0 to the left */
  readonly sideForce: number;
}

/** All four wheels and what they do to the car. */
export interface CarForces {
  readonly wheels: Wheels<WheelAtWork>;
  /** N forward */
  readonly longitudinal: number;
  /** N to the left */
  readonly side: number;
  /** N·m about the centre of gravity, above 0 turning the nose to the left */
  readonly yawMoment: number;
}

/** Forces of the four tyres of a car in some motion, with every wheel in its own place. */
export function carForces(car: HandlingCar, axles: AxlesInTurn, motion: Motion): CarForces {
  const at = axleDistances(car);
  const front = axleAtWork(
    axles.front,
    motion,
    at.front,
    car.front.track,
    motion.steer,
    motion.push.front,
  );
  const rear = axleAtWork(axles.rear, motion, -at.rear, car.rear.track, 0, motion.push.rear);
  return {
    wheels: { front: front.wheels, rear: rear.wheels },
    longitudinal: front.longitudinal + rear.longitudinal,
    side: front.side + rear.side,
    yawMoment: front.yawMoment + rear.yawMoment,
  };
}

function axleAtWork(
  axle: AxleInTurn,
  motion: Motion,
  x: number,
  track: number,
  steer: number,
  push: number,
) {
  const [inner, outer] = [
    rolling(axle.tyre, axle.inner, motion, x, track / 2, steer),
    rolling(axle.tyre, axle.outer, motion, x, -track / 2, steer),
  ];
  const each = sharePush(push, { left: mostPush(inner.tyre), right: mostPush(outer.tyre) });
  const left = atWork(inner, each.left, x, track / 2);
  const right = atWork(outer, each.right, x, -track / 2);
  return {
    wheels: { left: left.wheel, right: right.wheel } satisfies Sides<WheelAtWork>,
    longitudinal: left.longitudinal + right.longitudinal,
    side: left.side + right.side,
    yawMoment: left.yawMoment + right.yawMoment,
  };
}

/** A wheel in its place before it is driven or braked, and where it points. */
function rolling(
  coefficients: MagicFormula61Coefficients,
  { load, inclination, toe, pressure }: TyreInTurn,
  motion: Motion,
  x: number,
  y: number,
  steer: number,
): { tyre: RollingTyre; points: number } {
  const ay = motion.lateralAcceleration;
  const points = steer + toe.offset + toe.slope * ay;
  const forward = motion.speed * Math.cos(motion.sideSlip) - motion.yawRate * y; // v + ω × r
  const left = motion.speed * Math.sin(motion.sideSlip) + motion.yawRate * x;
  const { valid } = coefficients;
  const tyre = {
    coefficients,
    load: clampTo(valid.load, load.offset + load.slope * ay),
    pressure,
    inclination: clampTo(valid.inclination, inclination.offset + inclination.slope * ay),
    slipAngle: clampTo(slipAngleRange, points - Math.atan2(left, forward)),
  };
  return { tyre, points };
}

/** What a wheel does to the car when it pushes with a force, in the directions of the car. */
function atWork(
  { tyre, points }: { tyre: RollingTyre; points: number },
  push: number,
  x: number,
  y: number,
) {
  const { slip, force } = pushWith(tyre, push);
  const [cos, sin] = [Math.cos(points), Math.sin(points)];
  const longitudinal = force.longitudinal * cos - force.side * sin;
  const side = force.longitudinal * sin + force.side * cos;
  const { load, inclination, slipAngle } = tyre;
  return {
    wheel: {
      load,
      inclination,
      slipAngle,
      slip,
      longitudinalForce: force.longitudinal,
      sideForce: force.side,
    } satisfies WheelAtWork,
    longitudinal,
    side,
    yawMoment: x * side - y * longitudinal, // r × F
  };
}
