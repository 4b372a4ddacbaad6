import type { Axles, Sides } from "../load/wheels.js";
import { momentWith, newWheel, prepareWheel, sideOf } from "../tyre/prepared-wheel.js";
import { GRAVITY } from "../units.js";
import { type PushingWheel, pushingWheel, shareOverAxle, type Tie } from "./axle-pushes.js";
import { lockOnOverrun, lockUnderPower } from "./differential.js";
import { type Driving, requireDriving } from "./driving.js";
import { axleDistances, carMass, type HandlingCar } from "./handling-car.js";
import {
  type AxleStance,
  type Stance,
  type StanceFinder,
  stanceFinder,
  type WheelStance,
} from "./stance.js";

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
  /** the wheels of a driven axle are tied to each other: its differential is no open one */
  readonly tied: boolean;
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

/** A count of what was worked out, kept by whoever asks. */
export interface Work {
  /** times that all four wheels were worked out */
  done: number;
}

const ENGINE_BRAKING = 0.06 * GRAVITY; // m/s² of the whole car – common practice, no source

/**
 * The four-wheel balance of a car on a path: every wheel in its place with its own load, lean, toe,
 * slip angle and push, accelerations along and across the path, yaw acceleration zero.
 *
 * @param count - counts each call of `hold`
 * @throws Refusal when a number is out of range or the springs cannot hold the body up
 * @see docs/model.md, "The whole car in balance"
 */
export function wholeCar(car: HandlingCar, driving: Driving, count?: Work): WholeCar {
  const parts = partsOf(car, requireDriving(driving));
  const { mass, front, rear, road, stance } = parts;
  const leftOver: LeftOver = { along: 0, across: 0, outward: 0 };
  const perMoment = -car.wheelbase / (mass * front.x * -rear.x);
  const placed = { rear: Number.NaN, lateralAcceleration: Number.NaN };
  const whole: WholeCar = {
    mass,
    tied: [front.tie, rear.tie].some((tie) => tie.underPower > 0 || tie.onOverrun > 0),
    wheels: { front: front.wheels, rear: rear.wheels },
    stance,
    leftOver,
    steer: 0,
    sideSlip: 0,
    speed: 0,
    yawRate: 0,
    hold(held) {
      if (count !== undefined) count.done++;
      if (held.rear !== placed.rear || held.lateralAcceleration !== placed.lateralAcceleration) {
        place(parts, whole, held.rear, held.lateralAcceleration);
        placed.rear = held.rear;
        placed.lateralAcceleration = held.lateralAcceleration;
      }
      whole.steer = pushWheels(parts, held);
      const forward = front.forward + rear.forward;
      const left = front.left + rear.left;
      leftOver.along = (forward * road.cos + left * road.sin) / mass - road.along;
      leftOver.across = (left * road.cos - forward * road.sin) / mass - road.across;
      leftOver.outward = (front.moment + rear.moment) * perMoment;
      return leftOver;
    },
  };
  return whole;
}

/** A car and the road it is on, made once. */
interface Parts {
  readonly car: HandlingCar;
  readonly driving: Driving;
  readonly mass: number;
  readonly front: AxleAtWork;
  readonly rear: AxleAtWork;
  readonly stance: Stance;
  readonly findStance: StanceFinder;
  readonly demand: { forward: number; left: number; pressed: number; speedSquared: number };
  readonly road: Road;
  /** N/kg of air drag for each (m/s)² */
  readonly drag: number;
  /** m/s² of the weight along the path and into the road, and how the road leans */
  readonly alongGrade: number;
  readonly downGrade: number;
  readonly cosBank: number;
  readonly sinBank: number;
}

function partsOf(car: HandlingCar, driving: Driving): Parts {
  const { lateralJerk = 0, grade = 0, bank = 0 } = driving;
  const mass = carMass(car);
  const { front: a, rear: b } = axleDistances(car);
  const findStance = stanceFinder(car, lateralJerk);
  const demand = { forward: 0, left: 0, pressed: 0, speedSquared: 0 };
  const stance = findStance({ ...demand, pressed: GRAVITY });
  return {
    ...{ car, driving, mass, stance, findStance, demand },
    front: axleOf(car, "front", stance.front, a, mass),
    rear: axleOf(car, "rear", stance.rear, -b, mass),
    road: { curvature: 0, along: 0, across: 0, cos: 1, sin: 0, front: 0 },
    drag: car.dragFactor / mass,
    alongGrade: GRAVITY * Math.sin(grade),
    downGrade: GRAVITY * Math.cos(grade),
    cosBank: Math.cos(bank),
    sinBank: Math.sin(bank),
  };
}

/** The path under the car and how it stands there: all that slip angle of the front and push leave alone. */
function place(parts: Parts, whole: WholeCar, slipAngle: number, ay: number): void {
  const { driving, road, demand, front, rear, cosBank, sinBank } = parts;
  const { cornerRadius, speed, longitudinalAcceleration = 0 } = driving;
  const speedSquared = cornerRadius === undefined ? speed * speed : Math.max(0, ay * cornerRadius);
  road.curvature = cornerRadius === undefined ? ay / speedSquared : 1 / cornerRadius;
  road.along = longitudinalAcceleration + parts.alongGrade + parts.drag * speedSquared;
  road.across = ay * cosBank - GRAVITY * sinBank;
  const sideSlip = sideSlipFor(slipAngle, road.curvature * -rear.x);
  road.cos = Math.cos(sideSlip);
  road.sin = Math.sin(sideSlip);
  road.front = Math.atan2(road.sin + road.curvature * front.x, road.cos);
  demand.forward = road.along * road.cos - road.across * road.sin;
  demand.left = road.along * road.sin + road.across * road.cos;
  demand.pressed = parts.downGrade * cosBank + ay * sinBank;
  demand.speedSquared = speedSquared;
  parts.findStance(demand);
  prepareAxle(front);
  prepareAxle(rear);
  whole.sideSlip = sideSlip;
  whole.speed = Math.sqrt(speedSquared);
  whole.yawRate = whole.speed * road.curvature;
}

/** Works out the wheels of axles that are not as they were; the steer angle, rad. */
function pushWheels({ car, mass, front, rear, road }: Parts, held: Held): number {
  const push = held.push * mass;
  const inFront = push * (push < 0 ? car.brakeFrontShare : car.driveFrontShare);
  const steer = held.front + road.front;
  if (steer !== front.steer || inFront !== front.push) work(front, road, steer, inFront);
  if (push - inFront !== rear.push) work(rear, road, 0, push - inFront);
  return steer;
}

/** The path under a car, and where it points on it. */
interface Road {
  /** 1/m */
  curvature: number;
  /** m/s² that are asked for along and across it */
  along: number;
  across: number;
  /** of the side-slip angle */
  cos: number;
  sin: number;
  /** rad to the left in which the middle of the front axle goes */
  front: number;
}

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
  /** rad and N that it was last worked out for; none since it was prepared */
  steer: number;
  push: number;
  /** N, N and N·m about the centre of gravity that both its wheels make */
  forward: number;
  left: number;
  moment: number;
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
    steer: Number.NaN,
    push: Number.NaN,
    forward: 0,
    left: 0,
    moment: 0,
  };
}

/** Takes up load, lean and pressure of both wheels of an axle. */
function prepareAxle(axle: AxleAtWork): void {
  const { left, right } = axle.wheels;
  const { tyre, pressure } = axle.car;
  prepareWheel(left.wheel, tyre, left.stance.load, pressure.left, left.stance.inclination);
  prepareWheel(right.wheel, tyre, right.stance.load, pressure.right, right.stance.inclination);
  axle.steer = axle.push = Number.NaN;
}

/** What both wheels of an axle do to the car at a steer angle and a push. */
function work(axle: AxleAtWork, road: Road, steer: number, push: number): void {
  const { left, right } = axle.wheels;
  if (steer !== axle.steer) {
    const across = road.sin + road.curvature * axle.x; // v + ω × r, as shares of the car's speed
    turnWheel(left, steer, across, road.cos - road.curvature * axle.half);
    turnWheel(right, steer, across, road.cos + road.curvature * axle.half);
  }
  shareOverAxle(left, right, push, axle.tie);
  axle.forward = axle.left = axle.moment = 0;
  addWheel(axle, left, axle.half);
  addWheel(axle, right, -axle.half);
  axle.steer = steer;
  axle.push = push;
}

function turnWheel(wheel: WheelForces, steer: number, across: number, forward: number): void {
  wheel.points = steer + wheel.stance.points;
  wheel.slipAngle = wheel.points - Math.atan2(across, forward);
  wheel.tanAlpha = Math.tan(wheel.slipAngle);
  const speed = Math.sqrt(across * across + forward * forward);
  wheel.rolling = speed / Math.sqrt(1 + wheel.tanAlpha * wheel.tanAlpha);
}

function addWheel(axle: AxleAtWork, wheel: WheelForces, y: number): void {
  const { wheel: tyre, slip, push, tanAlpha, points } = wheel;
  const side = sideOf(tyre, slip, tanAlpha);
  const moment = momentWith(tyre, slip, tanAlpha, push, side);
  wheel.longitudinalForce = push;
  wheel.sideForce = side;
  wheel.aligningMoment = moment;
  const cos = Math.cos(points);
  const sin = Math.sin(points);
  const forward = push * cos - side * sin;
  const left = push * sin + side * cos;
  axle.forward += forward;
  axle.left += left;
  axle.moment += axle.x * left - y * forward + moment; // r × F
}
