import { CANNOT_STAND } from "../load/distribution.js";
import { leanInRoll, turnInRoll } from "../load/wheels-in-roll.js";
import { Refusal } from "../refusal.js";
import { GRAVITY } from "../units.js";
import {
  axleMasses,
  carMass,
  centreOfGravityHeight,
  type HandlingAxle,
  type HandlingCar,
} from "./handling-car.js";
import { type AxleResponse, type RollResponse, rollResponse } from "./roll-response.js";
import { stopForce, stopRate } from "./stops.js";

/** One wheel as the turn has it. */
export interface WheelStance {
  /** N, at least 0 */
  load: number;
  /** rad, above 0 leaning to the left */
  inclination: number;
  /** rad that the wheel points to the left of its axle's steer angle */
  points: number;
  /** m from rest, above 0 in bump */
  travel: number;
}

/** One axle as the turn has it. */
export interface AxleStance {
  readonly left: WheelStance;
  readonly right: WheelStance;
  /** rad of the body against the road, above 0 right side down */
  roll: number;
  /** rad of the same between body and wheels */
  suspensionRoll: number;
  /** the inner tyre is off the ground */
  lifted: boolean;
}

/** How a car stands in a turn to the left; the same object every time, written anew. */
export interface Stance {
  readonly front: AxleStance;
  readonly rear: AxleStance;
  /** both inner tyres are off the ground: nothing holds the car up */
  tips: boolean;
}

/** What the road asks of a car, in the car's own directions. */
export interface RoadDemand {
  /** m/s² forward, drag included */
  readonly forward: number;
  /** m/s² to the left */
  readonly left: number;
  /** m/s² that press the car on the road */
  readonly pressed: number;
  /** (m/s)² */
  readonly speedSquared: number;
}

/** Finds how a car stands; keeps nothing between calls but the wheels that were in the air. */
export type StanceFinder = (demand: RoadDemand) => Stance;

interface End {
  readonly axle: HandlingAxle;
  readonly mass: number;
  readonly restLoad: number;
  readonly stance: AxleStance;
  /** N on both tyres */
  load: number;
  /** N·m that the tyres move when the inner one has no more to give */
  most: number;
  /** N·m between body and axle from dampers */
  damper: number;
  /** N·m of the same from stops */
  stops: number;
  /** m of both wheels in bump */
  heave: number;
  /** m at the outer and the inner wheel from the middle per rad of suspension roll */
  readonly half: number;
}

const ROUNDS = 6;

/**
 * Loads, lean and steer of the four wheels for what the road asks: axle loads from the balance of
 * moments along the car, roll from `rollEquilibrium`, wheels in the air, stops and dampers included.
 *
 * @param lateralJerk - m/s³ of lateral acceleration to the left: dampers hold the body back
 * @throws Refusal when the springs cannot hold the body up
 */
export function stanceFinder(car: HandlingCar, lateralJerk = 0): StanceFinder {
  const masses = axleMasses(car);
  const lever = (carMass(car) * centreOfGravityHeight(car)) / car.wheelbase;
  const front = endOf(car.front, masses.front);
  const rear = endOf(car.rear, masses.rear);
  const stance: Stance = { front: front.stance, rear: rear.stance, tips: false };
  const respond: Respond = (liftedFront, liftedRear, ay) =>
    rollResponse(car, { front: liftedFront, rear: liftedRear }, ay);
  const onFour = onFourWheels(car);
  if (onFour === undefined) throw new Refusal("falls-over", CANNOT_STAND);
  front.damper = car.front.rollDamping * onFour.front.turn.suspension * lateralJerk;
  rear.damper = car.rear.rollDamping * onFour.rear.turn.suspension * lateralJerk;
  return ({ forward, left, pressed, speedSquared }) => {
    const moved = lever * forward; // ΔF = Fx·h/L – Milliken 1995, ch. 18
    loadEnd(front, pressed, speedSquared, -moved);
    loadEnd(rear, pressed, speedSquared, moved);
    const total = Math.max(0, front.load + rear.load);
    front.load = Math.min(Math.max(0, front.load), total);
    rear.load = Math.max(0, total - front.load);
    settle(front, rear, left, respond, onFour, stance);
    place(front, left);
    place(rear, left);
    return stance;
  };
}

const onFourWheelsOf = new WeakMap<HandlingCar, RollResponse>();

/** How a car rolls with all wheels on the ground: the same in every part of a corner. */
function onFourWheels(car: HandlingCar): RollResponse | undefined {
  const known = onFourWheelsOf.get(car);
  if (known !== undefined) return known;
  const response = rollResponse(car, { front: false, rear: false }, 0);
  if (response !== undefined) onFourWheelsOf.set(car, response);
  return response;
}

function endOf(axle: HandlingAxle, mass: number): End {
  const wheel = (): WheelStance => ({ load: 0, inclination: 0, points: 0, travel: 0 });
  return {
    axle,
    mass,
    restLoad: mass * GRAVITY,
    stance: { left: wheel(), right: wheel(), roll: 0, suspensionRoll: 0, lifted: false },
    load: 0,
    most: 0,
    damper: 0,
    stops: 0,
    heave: 0,
    half: axle.track / 2,
  };
}

function loadEnd(end: End, pressed: number, speedSquared: number, moved: number): void {
  end.load = end.mass * pressed + end.axle.downforceFactor * speedSquared + moved;
}

/** N on the left tyre before the turn moves any. */
function innerAtRest({ load, axle }: End): number {
  return Math.min(load, Math.max(0, load / 2 + axle.leftExcessLoad));
}

type Respond = (
  liftedFront: boolean,
  liftedRear: boolean,
  lifting: number,
) => RollResponse | undefined;

/** Roll of the body and moments of the axles, with the wheels that stay down and the stops they meet. */
function settle(
  front: End,
  rear: End,
  ay: number,
  respond: Respond,
  onFour: RollResponse,
  stance: Stance,
): void {
  front.most = innerAtRest(front) * front.axle.track;
  rear.most = innerAtRest(rear) * rear.axle.track;
  let liftedFront = false;
  let liftedRear = false;
  let response: RollResponse = onFour;
  stance.tips = false;
  for (let round = 0; round < ROUNDS; round++) {
    meetStops(front, rear, ay, response);
    const usedFront: number = liftedFront
      ? 0
      : momentAt(front, rear, ay, response.front) / front.most;
    const usedRear: number = liftedRear ? 0 : momentAt(front, rear, ay, response.rear) / rear.most;
    if (!(usedFront > 1 || usedRear > 1)) break;
    const next = usedRear > usedFront ? "rear" : "front";
    const second = liftedFront || liftedRear;
    const after = second ? undefined : respond(next === "front", next === "rear", ay);
    if (after === undefined) {
      stance.tips = true;
      liftedFront = liftedRear = true;
      break;
    }
    response = after;
    liftedFront = next === "front";
    liftedRear = next === "rear";
  }
  finish(front, front, rear, ay, response.front, liftedFront);
  finish(rear, front, rear, ay, response.rear, liftedRear);
}

/** N·m that the tyres of an axle move. */
function momentAt(front: End, rear: End, ay: number, at: AxleResponse): number {
  return (
    ay * at.turn.moment +
    (front.damper + front.stops) * at.extraFront.moment +
    (rear.damper + rear.stops) * at.extraRear.moment +
    front.most * at.givenFront.moment +
    rear.most * at.givenRear.moment
  );
}

/** rad between body and wheels of an axle. */
function suspensionAt(front: End, rear: End, ay: number, at: AxleResponse): number {
  return (
    ay * at.turn.suspension +
    (front.damper + front.stops) * at.extraFront.suspension +
    (rear.damper + rear.stops) * at.extraRear.suspension +
    front.most * at.givenFront.suspension +
    rear.most * at.givenRear.suspension
  );
}

/** rad of the body against the road at an axle. */
function bodyAt(front: End, rear: End, ay: number, at: AxleResponse): number {
  return (
    ay * at.turn.body +
    (front.damper + front.stops) * at.extraFront.body +
    (rear.damper + rear.stops) * at.extraRear.body +
    front.most * at.givenFront.body +
    rear.most * at.givenRear.body
  );
}

const STOP_ROUNDS = 80;
const STOP_TOLERANCE = 1e-12; // rad

/**
 * Moments of the stops that the wheels run into, if they do: Newton steps on both suspension angles,
 * halved until less is left over – Nocedal & Wright 2006, ch. 11.
 */
function meetStops(front: End, rear: End, ay: number, response: RollResponse): void {
  front.stops = rear.stops = 0;
  front.heave = freeHeave(front);
  rear.heave = freeHeave(rear);
  let pf = suspensionAt(front, rear, ay, response.front);
  let pr = suspensionAt(front, rear, ay, response.rear);
  if (!touches(front, pf) && !touches(rear, pr)) return;
  const freeFront = pf;
  const freeRear = pr;
  const { extraFront: ff, extraRear: fr } = response.front;
  const { extraFront: rf, extraRear: rr } = response.rear;
  let [fromFront, fromRear, least] = [pf, pr, Infinity];
  let [stepFront, stepRear, share] = [0, 0, 1];
  for (let i = 0; i < STOP_ROUNDS; i++) {
    const kf = pressStops(front, pf);
    const kr = pressStops(rear, pr);
    const ef = freeFront + ff.suspension * front.stops + fr.suspension * rear.stops - pf;
    const er = freeRear + rf.suspension * front.stops + rr.suspension * rear.stops - pr;
    const left = Math.abs(ef) + Math.abs(er);
    if (left < STOP_TOLERANCE) return;
    if (left < least) {
      const [a, b] = [1 - ff.suspension * kf, -fr.suspension * kr];
      const [c, d] = [-rf.suspension * kf, 1 - rr.suspension * kr];
      const determinant = a * d - b * c;
      [fromFront, fromRear, least, share] = [pf, pr, left, 1];
      [stepFront, stepRear] = [(ef * d - er * b) / determinant, (er * a - ef * c) / determinant];
    } else share /= 2;
    pf = fromFront + share * stepFront;
    pr = fromRear + share * stepRear;
  }
}

/** m that both wheels of an axle move in bump from rest, before any stop. */
function freeHeave({ load, restLoad, axle }: End): number {
  return (load - restLoad) / (2 * axle.wheelRate);
}

function touches({ axle: { stops }, heave, half }: End, roll: number): boolean {
  if (stops === undefined) return false;
  const inner = heave - half * roll;
  const outer = heave + half * roll;
  return (
    outer > stops.bumpLeft.right ||
    inner > stops.bumpLeft.left ||
    -outer > stops.droopLeft.right ||
    -inner > stops.droopLeft.left
  );
}

/** Heave and moment of an axle whose wheels may be on their stops, at a roll; N·m/rad of that moment. */
function pressStops(end: End, roll: number): number {
  const { axle, half, load, restLoad } = end;
  const { stops, wheelRate } = axle;
  if (stops === undefined) return 0;
  const { bumpLeft, droopLeft } = stops;
  let rate = 0;
  let low = -Infinity;
  let high = Infinity;
  for (let i = 0; i < STOP_ROUNDS; i++) {
    const inner = end.heave - half * roll;
    const outer = end.heave + half * roll;
    const pushInner = stopForce(inner, bumpLeft.left, droopLeft.left, stops);
    const pushOuter = stopForce(outer, bumpLeft.right, droopLeft.right, stops);
    const rateInner = stopRate(inner, bumpLeft.left, droopLeft.left, stops);
    const rateOuter = stopRate(outer, bumpLeft.right, droopLeft.right, stops);
    const both = 2 * wheelRate + rateInner + rateOuter;
    end.stops = (pushOuter - pushInner) * half;
    const heaves = (half * (rateInner - rateOuter)) / both; // m per rad
    rate = half * (rateOuter * (half + heaves) + rateInner * (half - heaves));
    const step = (load - restLoad - 2 * wheelRate * end.heave - pushInner - pushOuter) / both;
    if (Math.abs(step) < STOP_TOLERANCE) break;
    if (step > 0) low = end.heave;
    else high = end.heave;
    const next = end.heave + step;
    if (next === end.heave) break; // finer than a number can say
    end.heave = next > low && next < high ? next : (low + high) / 2;
  }
  return rate;
}

/** Writes down how an axle stands. */
function finish(
  end: End,
  front: End,
  rear: End,
  ay: number,
  at: AxleResponse,
  lifted: boolean,
): void {
  const { stance, axle, load } = end;
  const inner = innerAtRest(end);
  const moved = lifted ? inner : momentAt(front, rear, ay, at) / axle.track;
  const suspension = suspensionAt(front, rear, ay, at);
  stance.left.load = Math.min(load, Math.max(0, inner - moved));
  stance.right.load = load - stance.left.load;
  stance.left.travel = end.heave - end.half * suspension;
  stance.right.travel = end.heave + end.half * suspension;
  stance.roll = bodyAt(front, rear, ay, at);
  stance.suspensionRoll = suspension;
  stance.lifted = lifted;
}

/** Leans and turns the wheels of an axle as the body has them. */
function place({ stance, axle, heave, mass }: End, ay: number): void {
  const { roll, suspensionRoll } = stance;
  const { camberGain, toeGain } = axle;
  const lean = leanInRoll(axle, roll, suspensionRoll);
  const way = turnInRoll(axle, suspensionRoll) - axle.complianceSteer * mass * ay; // side force of the axle: m·ay
  const camberMoved = camberGain * heave;
  const toeMoved = toeGain * heave;
  stance.left.inclination = axle.camber.left + camberMoved + lean;
  stance.right.inclination = lean - axle.camber.right - camberMoved;
  stance.left.points = way - axle.toe.left - toeMoved;
  stance.right.points = way + axle.toe.right + toeMoved;
}
