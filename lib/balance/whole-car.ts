import type { Axles, Sides } from "../load/wheels.js";
import { momentWith, newWheel, prepareWheel, pushOf, sideOf } from "../tyre/prepared-wheel.js";
import { GRAVITY } from "../units.js";
import { type PushingWheel, pushingWheel, shareOverAxle, type Tie } from "./axle-pushes.js";
import { lockOnOverrun, lockUnderPower } from "./differential.js";
import { type Driving, requireDriving } from "./driving.js";
import { axleDistances, carMass, type HandlingCar } from "./handling-car.js";
import { type AxleStance, type Stance, stanceFinder, type WheelStance } from "./stance.js";

/** Where a car is held, and what is asked of it. */
export interface Held {
  /** rad of the slip angle of the front axle, toe apart, above 0 makes a force to the left */
  front: number;
  /** the same of the rear axle */
  rear: number;
  /** N/kg that brakes or drive are asked for, above 0 driving */
  push: number;
  /** m/s² across the path, above 0 to the left */
  lateralAcceleration: number;
}

/** What is left over when a car is held so: all zero on a balanced path. */
export interface LeftOver {
  /** m/s² that its tyres push along the path beyond what is asked */
  along: number;
  /** m/s² that they push across the path beyond what is asked, above 0 to the left */
  across: number;
  /** −N·L/(m·a·b), m/s², of the yaw moment N they make: above 0 turns the car out of the corner */
  outward: number;
}

/** One wheel as it was last worked out. */
export interface WheelForces extends PushingWheel {
  readonly stance: WheelStance;
  /** rad to the left of straight ahead */
  points: number;
  /** rad, above 0 makes a force to the left */
  slipAngle: number;
  /** N along the wheel */
  longitudinalForce: number;
  /** N across the wheel, above 0 to the left */
  sideForce: number;
  /** N·m about its vertical, above 0 turns it to the left */
  aligningMoment: number;
}

/** A car whose four wheels are worked out together. */
export interface WholeCar {
  /** kg */
  readonly mass: number;
  readonly wheels: Axles<Sides<WheelForces>>;
  readonly stance: Stance;
  readonly leftOver: LeftOver;
  /** rad, as last worked out */
  steer: number;
  sideSlip: number;
  /** m/s */
  speed: number;
  /** rad/s */
  yawRate: number;
  /** Works out all four wheels; the answer stands in this object until the next call. */
  readonly hold: (held: Held) => LeftOver;
}

const ENGINE_BRAKING = 0.06 * GRAVITY; // m/s² of the whole car – common practice, no source

/**
 * The four-wheel balance of a car on a path: every wheel in its place with its own load, lean, toe,
 * slip angle and push, accelerations along and across the path, yaw acceleration zero.
 *
 * @throws RangeError when a number is out of range or the springs cannot hold the body up
 * @see docs/model.md, "The whole car in balance"
 */
export function wholeCar(car: HandlingCar, driving: Driving): WholeCar {
  requireDriving(driving);
  const { longitudinalAcceleration = 0, lateralJerk = 0, grade = 0, bank = 0 } = driving;
  const mass = carMass(car);
  const { front: a, rear: b } = axleDistances(car);
  const findStance = stanceFinder(car, lateralJerk);
  const demand = { forward: 0, left: 0, pressed: 0, speedSquared: 0 };
  const stance = findStance({ ...demand, pressed: GRAVITY });
  const front = axleOf(car, "front", stance.front, a, mass);
  const rear = axleOf(car, "rear", stance.rear, -b, mass);
  const leftOver: LeftOver = { along: 0, across: 0, outward: 0 };
  const perMoment = -car.wheelbase / (mass * a * b);
  const drag = car.dragFactor / mass;
  const [alongGrade, downGrade] = [GRAVITY * Math.sin(grade), GRAVITY * Math.cos(grade)];
  const [cosBank, sinBank] = [Math.cos(bank), Math.sin(bank)];
  const whole: WholeCar = {
    mass,
    wheels: { front: front.wheels, rear: rear.wheels },
    stance,
    leftOver,
    steer: 0,
    sideSlip: 0,
    speed: 0,
    yawRate: 0,
    hold(held) {
      const ay = held.lateralAcceleration;
      const { cornerRadius, speed } = driving;
      const speedSquared =
        cornerRadius === undefined ? speed * speed : Math.max(0, ay * cornerRadius);
      const curvature = cornerRadius === undefined ? ay / speedSquared : 1 / cornerRadius;
      const along = longitudinalAcceleration + alongGrade + drag * speedSquared;
      const across = ay * cosBank - GRAVITY * sinBank;
      const sideSlip = sideSlipFor(held.rear, curvature * b);
      const [cos, sin] = [Math.cos(sideSlip), Math.sin(sideSlip)];
      const steer = held.front + Math.atan2(sin + curvature * a, cos);
      demand.forward = along * cos - across * sin;
      demand.left = along * sin + across * cos;
      demand.pressed = downGrade * cosBank + ay * sinBank;
      demand.speedSquared = speedSquared;
      findStance(demand);
      const push = held.push * mass;
      const inFront = push * (push < 0 ? car.brakeFrontShare : car.driveFrontShare);
      const sums = [0, 0, 0] as Sums;
      addAxle(sums, front, steer, sin, cos, curvature, inFront);
      addAxle(sums, rear, 0, sin, cos, curvature, push - inFront);
      const [forward, left, moment] = sums;
      leftOver.along = (forward * cos + left * sin) / mass - along;
      leftOver.across = (left * cos - forward * sin) / mass - across;
      leftOver.outward = moment * perMoment;
      whole.steer = steer;
      whole.sideSlip = sideSlip;
      whole.speed = Math.sqrt(speedSquared);
      whole.yawRate = whole.speed * curvature;
      return leftOver;
    },
  };
  return whole;
}

/** N forward, N to the left, N·m to the left about the centre of gravity. */
type Sums = [number, number, number];

/** β with which the rear axle, b behind, has a slip angle: sin(β + α) = c·b·cos α. */
function sideSlipFor(slipAngle: number, curvatureTimesDistance: number): number {
  const sine = curvatureTimesDistance * Math.cos(slipAngle);
  return Math.asin(Math.min(1, Math.max(-1, sine))) - slipAngle;
}

interface AxleAtWork {
  readonly x: number;
  readonly half: number;
  readonly tie: Tie;
  readonly wheels: Sides<WheelForces>;
  readonly car: HandlingCar["front"];
}

function axleOf(
  car: HandlingCar,
  end: "front" | "rear",
  stance: AxleStance,
  x: number,
  mass: number,
): AxleAtWork {
  const axle = car[end];
  const share = end === "front" ? car.driveFrontShare : 1 - car.driveFrontShare;
  const wheel = (of: WheelStance): WheelForces => ({
    ...pushingWheel(newWheel()),
    stance: of,
    points: 0,
    slipAngle: 0,
    longitudinalForce: 0,
    sideForce: 0,
    aligningMoment: 0,
  });
  const driven = share > 0;
  return {
    x,
    half: axle.track / 2,
    tie: {
      underPower: driven ? lockUnderPower(axle.differential) : 0,
      onOverrun: driven ? lockOnOverrun(axle.differential) : 0,
      engine: ENGINE_BRAKING * mass * share,
    },
    wheels: { left: wheel(stance.left), right: wheel(stance.right) },
    car: axle,
  };
}

/** Adds what the wheels of an axle do to the car. */
function addAxle(
  sums: Sums,
  axle: AxleAtWork,
  steer: number,
  sin: number,
  cos: number,
  curvature: number,
  push: number,
): void {
  const { left, right } = axle.wheels;
  const { tyre, pressure } = axle.car;
  const across = sin + curvature * axle.x; // v + ω × r, as shares of the car's speed
  turnWheel(left, tyre, pressure.left, steer, across, cos - curvature * axle.half);
  turnWheel(right, tyre, pressure.right, steer, across, cos + curvature * axle.half);
  shareOverAxle(left, right, push, axle.tie);
  addWheel(sums, left, axle.x, axle.half);
  addWheel(sums, right, axle.x, -axle.half);
}

function turnWheel(
  wheel: WheelForces,
  tyre: HandlingCar["front"]["tyre"],
  pressure: number,
  steer: number,
  across: number,
  forward: number,
): void {
  const { load, inclination, points } = wheel.stance;
  prepareWheel(wheel.wheel, tyre, load, pressure, inclination);
  wheel.points = steer + points;
  wheel.slipAngle = wheel.points - Math.atan2(across, forward);
  wheel.tanAlpha = Math.tan(wheel.slipAngle);
  wheel.rolling = Math.hypot(across, forward) * Math.cos(wheel.slipAngle);
}

function addWheel(sums: Sums, wheel: WheelForces, x: number, y: number): void {
  const { wheel: tyre, slip, tanAlpha, points } = wheel;
  const push = pushOf(tyre, slip, tanAlpha);
  const side = sideOf(tyre, slip, tanAlpha);
  const moment = momentWith(tyre, slip, tanAlpha, push, side);
  wheel.longitudinalForce = push;
  wheel.sideForce = side;
  wheel.aligningMoment = moment;
  const [cos, sin] = [Math.cos(points), Math.sin(points)];
  const forward = push * cos - side * sin;
  const left = push * sin + side * cos;
  sums[0] += forward;
  sums[1] += left;
  sums[2] += x * left - y * forward + moment; // r × F
}
