import { requireInRange } from "../check.js";
import type { AxleInRoll, CarInRoll } from "../load/car-in-roll.js";
import { requireCarInRoll } from "../load/car-in-roll.js";
import { type Axles, eachAxle, type Sides } from "../load/wheels.js";
import type { MagicFormula61Coefficients } from "../tyre/magic-formula-61-coefficients.js";
import type { AxleDifferential } from "./differential.js";
import { requireStops, type WheelStops } from "./stops.js";

/** One axle with its tyres and how they stand. */
export interface HandlingAxle extends AxleInRoll {
  readonly tyre: MagicFormula61Coefficients;
  /** Pa above atmosphere, warm */
  readonly pressure: Sides<number>;
  /** N that the left tyre carries at rest above half the load of the axle; 0 for even scales */
  readonly leftExcessLoad: number;
  /** rad at rest, above 0 when the top leans away from the car */
  readonly camber: Sides<number>;
  /** rad at rest, above 0 toe-in */
  readonly toe: Sides<number>;
  /** wheels that lean with the body, not upright on a beam */
  readonly independent: boolean;
  /** rad of camber for each m of bump travel; on a beam, of both wheels together */
  readonly camberGain: number;
  /** rad of toe-in for each m of bump travel; on a beam, of both wheels together */
  readonly toeGain: number;
  /** rad that a beam turns to the left for each rad of roll on it, right side down; else not used */
  readonly rollSteer: number;
  /** rad that both wheels give way out of the turn for each N of the axle's side force */
  readonly complianceSteer: number;
  /** how drive is shared between its wheels; open when left out */
  readonly differential?: AxleDifferential;
  /** what its wheels run into at the ends of their travel; nothing when left out */
  readonly stops?: WheelStops;
  /** N/m at each wheel, without tyre */
  readonly wheelRate: number;
  /** N·m·s/rad of both dampers in roll */
  readonly rollDamping: number;
  /** N/(m/s)² of downforce on this axle; 0 for none */
  readonly downforceFactor: number;
}

/** All that decides how a car corners, brakes and drives on a smooth road. */
export interface HandlingCar extends CarInRoll<HandlingAxle> {
  /** m */
  readonly wheelbase: number;
  /** kg·m² of the whole car about the vertical */
  readonly yawInertia: number;
  /** kg·m² of the body about a lengthwise axis through its centre of gravity */
  readonly rollInertia: number;
  /** share of the braking force at the front axle, 0–1 */
  readonly brakeFrontShare: number;
  /** share of the driving force at the front axle, 0–1 */
  readonly driveFrontShare: number;
  /** N/(m/s)² of air drag; 0 for none */
  readonly dragFactor: number;
}

/**
 * Mass of the whole car, kg.
 *
 * @example
 * carMass(handlingCarOf(demoCar)) // → 1080, by hand: 810 + 80 + 30 + 75 + 85
 */
export function carMass(car: HandlingCar): number {
  return car.sprungMass + car.front.unsprungMass + car.rear.unsprungMass;
}

/** Mass that each axle holds in a turn, kg: it carries the same share of weight and side force. */
export function axleMasses(car: HandlingCar): Axles<number> {
  const front = car.sprungMass * car.sprungFrontShare + car.front.unsprungMass;
  return { front, rear: carMass(car) - front };
}

/** Height of the centre of gravity of the whole car, m. */
export function centreOfGravityHeight(car: HandlingCar): number {
  const { sprungMass, sprungHeight, front, rear } = car;
  const unsprung =
    front.unsprungMass * front.unsprungHeight + rear.unsprungMass * rear.unsprungHeight;
  return (sprungMass * sprungHeight + unsprung) / carMass(car);
}

/** Distance of each axle from the centre of gravity, m, both above zero. */
export function axleDistances(car: HandlingCar): Axles<number> {
  const { front, rear } = axleMasses(car);
  const L = car.wheelbase;
  return { front: (L * rear) / (front + rear), rear: (L * front) / (front + rear) };
}

/**
 * Checks the numbers of a car and passes it through.
 *
 * @throws Refusal naming the first number out of its range
 */
export function requireHandlingCar(car: HandlingCar): HandlingCar {
  requireCarInRoll(car);
  requireInRange("wheelbase", car.wheelbase, 0.5, 10, "m");
  requireInRange("yaw inertia", car.yawInertia, 10, 1e5, "kg·m²");
  requireInRange("roll inertia", car.rollInertia, 1, 1e5, "kg·m²");
  requireInRange("front brake share", car.brakeFrontShare, 0, 1);
  requireInRange("front drive share", car.driveFrontShare, 0, 1);
  requireInRange("drag factor", car.dragFactor, 0, 100, "N/(m/s)²");
  eachAxle(car, requireHandlingAxle);
  return car;
}

function requireHandlingAxle(axle: HandlingAxle, end: "front" | "rear"): void {
  for (const side of ["left", "right"] as const) {
    requireInRange(`${end} ${side} pressure`, axle.pressure[side], 1e3, 1e6, "Pa");
    requireInRange(`${end} ${side} camber`, axle.camber[side], -0.5, 0.5, "rad");
    requireInRange(`${end} ${side} toe`, axle.toe[side], -0.5, 0.5, "rad");
  }
  requireInRange(`${end} left excess load`, axle.leftExcessLoad, -1e4, 1e4, "N");
  requireInRange(`${end} camber gain`, axle.camberGain, -10, 10, "rad/m");
  requireInRange(`${end} toe gain`, axle.toeGain, -10, 10, "rad/m");
  requireInRange(`${end} roll steer`, axle.rollSteer, -10, 10);
  requireInRange(`${end} compliance steer`, axle.complianceSteer, -1e-4, 1e-4, "rad/N");
  if (axle.stops !== undefined) requireStops(end, axle.stops);
  requireInRange(`${end} wheel rate`, axle.wheelRate, 1e3, Infinity, "N/m");
  requireInRange(`${end} roll damping`, axle.rollDamping, 0, 1e6, "N·m·s/rad");
  requireInRange(`${end} downforce factor`, axle.downforceFactor, -100, 1000, "N/(m/s)²");
}
