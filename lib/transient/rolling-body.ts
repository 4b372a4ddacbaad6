import { axleDistances, carMass, type HandlingCar } from "../balance/handling-car.js";
import { type AxleStiffness, axleStiffness } from "../load/axle-stiffness.js";
import { sprungMassOnAxles } from "../load/car-in-roll.js";
import type { Axles } from "../load/wheels.js";

/** One end of a body in roll, its axle following on its tyres at once. */
export interface RollingEnd {
  readonly stiff: AxleStiffness;
  /** rad that the axle gives for each rad of the body */
  readonly gives: number;
  /** N·m·s/rad of the dampers, between body and axle */
  readonly damping: number;
  /** m/s² that the wheels' mass leans with for each rad/s² of the body: height times lean */
  readonly wheelSwing: number;
}

/** A body on springs, dampers and tyres: all that its roll motion depends on. */
export interface RollingBody extends Axles<RollingEnd> {
  /** kg·m: moment on the body for each m/s² to the left, and side force for each rad/s² back */
  readonly lever: number;
  /** kg·m²: the same times how far forward it is, front ahead, rear behind */
  readonly yawLever: number;
  /** kg·m² about the roll axis */
  readonly inertia: number;
  /** N·m·s/rad */
  readonly damping: number;
  /** N·m/rad, less what leaning weight takes */
  readonly stiffness: number;
}

/** The body of a car on its roll axis; its chassis does not twist. */
export function rollingBody(car: HandlingCar): RollingBody {
  const sprung = sprungMassOnAxles(car);
  const at = axleDistances(car);
  const front = rollingEnd(car, "front", sprung.front);
  const rear = rollingEnd(car, "rear", sprung.rear);
  const [leverFront, leverRear] = [front.stiff.bodyLever, rear.stiff.bodyLever];
  return {
    front,
    rear,
    lever: leverFront + leverRear,
    yawLever: leverFront * at.front - leverRear * at.rear,
    inertia:
      car.rollInertia + swingOf(car, "front", sprung.front) + swingOf(car, "rear", sprung.rear),
    damping: dampingOf(front) + dampingOf(rear),
    stiffness: stiffnessOf(front) + stiffnessOf(rear),
  };
}

function rollingEnd(car: HandlingCar, end: "front" | "rear", sprungMass: number): RollingEnd {
  const axle = car[end];
  const tyres = axle.tyreRollStiffness ?? Infinity;
  const stiff = axleStiffness(axle, sprungMass, car.sprungHeight, tyres);
  return {
    stiff,
    gives: stiff.coupling / stiff.hold,
    damping: axle.rollDamping,
    wheelSwing: (1 - (axle.ownForceShare ?? 1)) * axle.unsprungHeight,
  };
}

/** What swings with the body at one end, kg·m²: Σ ms·d² and the wheels that lean with it. */
function swingOf(car: HandlingCar, end: "front" | "rear", sprungMass: number): number {
  const { rollCentreHeight, ownForceShare = 1, unsprungMass, unsprungHeight } = car[end];
  const wheels = unsprungMass * ((1 - ownForceShare) * unsprungHeight) ** 2;
  return sprungMass * (car.sprungHeight - rollCentreHeight) ** 2 + wheels;
}

/** N·m·s/rad at the body: a damper moves as far as the suspension does, and acts as much less. */
function dampingOf({ damping, gives }: RollingEnd): number {
  return damping * (1 - gives) ** 2;
}

/** N·m/rad at the body, with the axle giving way. */
function stiffnessOf({ stiff: { own, coupling }, gives }: RollingEnd): number {
  return own - coupling * gives;
}

/** The least mass that a rolling body shakes, kg·m²: the car gives way under it. */
export function freeRollInertia(car: HandlingCar, { lever, inertia }: RollingBody): number {
  return inertia - lever ** 2 / carMass(car);
}
