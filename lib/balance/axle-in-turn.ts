import type { Axles } from "../load/wheels.js";
import { leanInRoll, turnInRoll } from "../load/wheels-in-roll.js";
import type { MagicFormula61Coefficients } from "../tyre/magic-formula-61-coefficients.js";
import { GRAVITY } from "../units.js";
import { damperTransfer } from "./damper-transfer.js";
import { axleLoadsWhenDriving, type Driving, longitudinalForces } from "./driving.js";
import { axleMasses, type HandlingAxle, type HandlingCar } from "./handling-car.js";
import { type Line, transferLines } from "./transfer-line.js";

/** One tyre of an axle in a left turn, as straight lines in lateral acceleration. */
export interface TyreInTurn {
  /** N */
  readonly load: Line;
  /** rad, above 0 leaning to the left */
  readonly inclination: Line;
  /** rad that toe adds to the slip angle of the axle */
  readonly toe: Line;
  /** Pa above atmosphere, inside the tyre's range */
  readonly pressure: number;
}

/** One axle in a left turn: all that decides how much side force it can give. */
export interface AxleInTurn {
  readonly tyre: MagicFormula61Coefficients;
  /** kg that this axle must hold in the turn */
  readonly mass: number;
  /** N that both tyres push with, below 0 braking */
  readonly push: number;
  /** left tyre */
  readonly inner: TyreInTurn;
  /** right tyre */
  readonly outer: TyreInTurn;
}

/** Both axles, and how far the straight lines hold. */
export interface AxlesInTurn extends Axles<AxleInTurn> {
  /** m/s² at which another inner tyre leaves the ground; Infinity when none does */
  readonly holdsUpTo: number;
  /** the axle whose tyre that is */
  readonly liftsNext: "front" | "rear";
  readonly lifted: Axles<boolean>;
  readonly rollAngle: Axles<Line>;
  /** of the axle on its tyres */
  readonly tyreAngle: Axles<Line>;
}

const allDown = { front: false, rear: false };

/**
 * Both axles of a car in a left turn, with every wheel's load, lean and toe as lines in ay.
 *
 * @param lifted - axles whose inner tyre is off the ground; none when left out
 * @param lifting - m/s² at which the lines are exact once one is
 * @returns nothing when the springs cannot hold the body
 */
export function axlesInTurn(
  car: HandlingCar,
  driving: Driving,
  lifted: Axles<boolean> = allDown,
  lifting = 0,
): AxlesInTurn | undefined {
  const masses = axleMasses(car);
  const loads = axleLoadsWhenDriving(car, driving);
  const push = longitudinalForces(car, driving);
  const innerFront = innerAtRest(car.front, loads.front);
  const innerRear = innerAtRest(car.rear, loads.rear);
  const lines = transferLines(car, { front: innerFront, rear: innerRear }, lifted, lifting);
  if (lines === undefined) return undefined;
  const { transfer, rollAngle, tyreAngle } = lines;
  const anyLifted = lifted.front || lifted.rear;
  const jerk = anyLifted ? 0 : (driving.lateralJerk ?? 0); // a lifted axle has nothing left to move
  const extra = damperTransfer(car, lines, jerk);
  const front = axleInTurn(
    car.front,
    masses.front,
    push.front,
    innerFront,
    loads.front - innerFront,
    { offset: transfer.front.offset + extra.front, slope: transfer.front.slope },
    rollAngle.front,
    tyreAngle.front,
  );
  const rear = axleInTurn(
    car.rear,
    masses.rear,
    push.rear,
    innerRear,
    loads.rear - innerRear,
    { offset: transfer.rear.offset + extra.rear, slope: transfer.rear.slope },
    rollAngle.rear,
    tyreAngle.rear,
  );
  const liftFront = lifted.front ? Infinity : liftsAt(front);
  const liftRear = lifted.rear ? Infinity : liftsAt(rear);
  const liftsNext = liftFront < liftRear ? "front" : "rear";
  return {
    front,
    rear,
    lifted,
    rollAngle,
    tyreAngle,
    liftsNext,
    holdsUpTo: Math.min(liftFront, liftRear),
  };
}

/** Load of the left tyre before the turn, N, not below zero. */
function innerAtRest(axle: HandlingAxle, load: number): number {
  return Math.min(load, Math.max(0, load / 2 + axle.leftExcessLoad));
}

function axleInTurn(
  axle: HandlingAxle,
  mass: number,
  push: number,
  innerLoad: number,
  outerLoad: number,
  transfer: Line,
  roll: Line,
  tyres: Line,
): AxleInTurn {
  const heave = (innerLoad + outerLoad - mass * GRAVITY) / (2 * axle.wheelRate); // m of bump, both
  const travel = { offset: roll.offset - tyres.offset, slope: roll.slope - tyres.slope };
  const lean = {
    offset: leanInRoll(axle, roll.offset, travel.offset),
    slope: leanInRoll(axle, roll.slope, travel.slope),
  };
  const steer = {
    offset: turnInRoll(axle, travel.offset),
    slope: turnInRoll(axle, travel.slope),
  };
  const camberMoved = axle.camberGain * heave;
  const toeMoved = axle.toeGain * heave;
  return {
    tyre: axle.tyre,
    mass,
    push,
    inner: {
      load: { offset: innerLoad - transfer.offset, slope: -transfer.slope },
      inclination: turned(axle.camber.left + camberMoved, lean),
      toe: turned(-axle.toe.left - toeMoved, steer),
      pressure: validPressure(axle.tyre, axle.pressure.left),
    },
    outer: {
      load: { offset: outerLoad + transfer.offset, slope: transfer.slope },
      inclination: turned(-axle.camber.right - camberMoved, lean),
      toe: turned(axle.toe.right + toeMoved, steer),
      pressure: validPressure(axle.tyre, axle.pressure.right),
    },
  };
}

/** An angle of the wheel that changes with roll, as a line in lateral acceleration. */
function turned(atRest: number, { offset, slope }: Line): Line {
  return { offset: atRest + offset, slope };
}

function validPressure({ valid }: MagicFormula61Coefficients, pressure: number): number {
  return Math.min(valid.pressure.maximum, Math.max(valid.pressure.minimum, pressure));
}

/** Lateral acceleration at which the inner tyre leaves the ground, m/s². */
function liftsAt({ inner: { load } }: AxleInTurn): number {
  return load.slope < 0 ? Math.max(0, -load.offset / load.slope) : Infinity;
}
