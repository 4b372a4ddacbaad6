/** The demo car in balance on all four wheels, by plain arithmetic and searches of its own. */

import { type Tyre, type TyreForces, tyreUnder } from "./club-tyre-by-hand.js";
import {
  type AxleByHand,
  asItIs,
  type CarByHand,
  carByHand,
  g,
  height,
  mass,
  mirrored,
  type SetUp,
  wheelbase,
} from "./demo-car-by-hand.js";
import { type AxleStands, type Stands, standsIn } from "./roll-by-hand.js";

/** What the driver does: m/s² along the path, m/s³ to the left. */
export interface Phase {
  readonly gains: number;
  readonly jerk: number;
}
export const braking: Phase = { gains: -4, jerk: 0 };
export const turnIn: Phase = { gains: -1, jerk: 12 };
export const middle: Phase = { gains: 0, jerk: 0 };
export const powerOn: Phase = { gains: 2, jerk: 0 };

const none: TyreForces = { along: 0, across: 0, turning: 0 };
const eased = (asked: number, most: number) =>
  most > 0 ? asked / (1 + (asked / most) ** 6) ** (1 / 6) : 0;

interface Wheel {
  readonly tyre: Tyre | undefined;
  readonly points: number; // rad, to the left
  readonly slipAngle: number;
  readonly y: number;
}

/** Slip at which a wheel pushes as hard as wanted, by halving. */
function slipFor({ tyre, slipAngle }: Wheel, wanted: number): number {
  if (tyre === undefined) return 0;
  let [low, high] = [-tyre.mostSlip, tyre.mostSlip];
  for (let i = 0; i < 44; i++) {
    const slip = (low + high) / 2;
    if (tyre.push(slip, Math.tan(slipAngle)) < wanted) low = slip;
    else high = slip;
  }
  return (low + high) / 2;
}

/** N that a wheel can push (or brake, side −1) at its slip angle. */
const able = ({ tyre, slipAngle }: Wheel, side: number) =>
  tyre === undefined ? 0 : Math.max(0, side * tyre.push(side * tyre.mostSlip, Math.tan(slipAngle)));

/** Brakes ask half of each wheel; an open differential gives both what the weaker one holds. */
function pushesOf(wheels: readonly [Wheel, Wheel], push: number): readonly [number, number] {
  const [left, right] = wheels;
  if (push < 0) return [-eased(-push / 2, able(left, -1)), -eased(-push / 2, able(right, -1))];
  const half = eased(push, 2 * Math.min(able(left, 1), able(right, 1))) / 2;
  return [half, half];
}

interface Path {
  readonly sideSlip: number;
  readonly curvature: number; // 1/m
}

/** Both wheels of an axle that stands so, x ahead of the centre of gravity, steered. */
function wheelsOf(
  a: AxleByHand,
  { inner, outer, between, heave }: AxleStands,
  roll: number,
  { sideSlip, curvature }: Path,
  [x, steer, B]: readonly [number, number, number],
): readonly [Wheel, Wheel] {
  const lean = -roll - ((a.camberGain * a.track) / 2) * between;
  const turn = ((a.toeGain * a.track) / 2) * between - a.gives * a.mass * B;
  const [camber, toe] = [a.camber + a.camberGain * heave, a.toe + a.toeGain * heave];
  const wheel = (load: number, leansLeft: number, points: number, y: number): Wheel => {
    const goes = Math.atan2(Math.sin(sideSlip) + curvature * x, Math.cos(sideSlip) - curvature * y);
    return { tyre: tyreUnder(load, leansLeft), points, slipAngle: points - goes, y };
  };
  return [
    wheel(inner, lean + camber, steer + turn - toe, a.track / 2),
    wheel(outer, lean - camber, steer + turn + toe, -a.track / 2),
  ];
}

/** Forces of an axle in the car's axes, and their moment about the centre of gravity. */
function axleSum(wheels: readonly [Wheel, Wheel], push: number, x: number) {
  const pushes = pushesOf(wheels, push);
  const sum = { forward: 0, left: 0, moment: 0 };
  wheels.forEach((wheel, i) => {
    const slip = slipFor(wheel, pushes[i] ?? 0);
    const { along, across, turning } = wheel.tyre?.forces(slip, wheel.slipAngle) ?? none;
    const [cos, sin] = [Math.cos(wheel.points), Math.sin(wheel.points)];
    const [forward, left] = [along * cos - across * sin, along * sin + across * cos];
    sum.forward += forward;
    sum.left += left;
    sum.moment += x * left - wheel.y * forward + turning;
  });
  return sum;
}

/** A car at a speed (m/s) in a phase; asked at slip angles and push, and m/s² across. */
function held(car: CarByHand, phase: Phase, speed: number) {
  const { front, rear } = car;
  const b = (wheelbase * front.mass) / mass;
  const a = wheelbase - b;
  return ([slipFront, slipRear, perMass]: Three, ay: number) => {
    const push = mass * perMass;
    const curvature = ay / speed ** 2;
    const sideSlip = Math.asin(curvature * b * Math.cos(slipRear)) - slipRear;
    const [cos, sin] = [Math.cos(sideSlip), Math.sin(sideSlip)];
    const forward = phase.gains * cos - ay * sin;
    const B = phase.gains * sin + ay * cos;
    const moved = (mass * forward * height) / wheelbase;
    const loads = { front: front.mass * g - moved, rear: rear.mass * g + moved };
    const at: Stands = standsIn(car, B, loads, phase.jerk);
    const steer = slipFront + Math.atan2(sin + curvature * a, cos);
    const path = { sideSlip, curvature };
    const atFront = push < 0 ? push * car.brakes : 0;
    const wheels = [
      wheelsOf(front, at.front, at.roll, path, [a, steer, B]),
      wheelsOf(rear, at.rear, at.roll, path, [-b, 0, B]),
    ] as const;
    const F = axleSum(wheels[0], atFront, a);
    const R = axleSum(wheels[1], push - atFront, -b);
    const [X, Y] = [F.forward + R.forward, F.left + R.left];
    return {
      along: (X * cos + Y * sin) / mass - phase.gains,
      across: (Y * cos - X * sin) / mass - ay,
      outward: (-(F.moment + R.moment) * wheelbase) / (mass * a * b),
    };
  };
}

type Three = readonly [front: number, rear: number, push: number]; // rad, rad, N/kg

/**
 * Lateral acceleration that goes with a front slip angle and one other number, by Newton's method on
 * differences. The other number is the rear slip angle, and the push follows; or, where the inner
 * driven wheel has hardly more to give, the push, and the rear slip angle follows.
 */
function settler(car: CarByHand, phase: Phase, speed: number, given: "rear" | "push") {
  const of = held(car, phase, speed);
  const start = [8.5, given === "rear" ? phase.gains + 0.8 : 0.1] as const;
  let [ay, last] = start;
  return (front: number, other: number) => {
    const at = (follows: number): Three =>
      given === "rear" ? [front, other, follows] : [front, follows, other];
    const longest = given === "rear" ? 0.5 : 0.03;
    for (let i = 0; i < 30; i++) {
      const now = of(at(last), ay);
      if (Math.abs(now.along) + Math.abs(now.across) < 1e-9) return { ay, outward: now.outward };
      const [more, harder] = [of(at(last), ay + 1e-4), of(at(last + 1e-5), ay)];
      const [p, q] = [(more.across - now.across) / 1e-4, (harder.across - now.across) / 1e-5];
      const [r, s] = [(more.along - now.along) / 1e-4, (harder.along - now.along) / 1e-5];
      const det = p * s - q * r;
      const step = (now.along * p - now.across * r) / det;
      ay -= Math.max(-1, Math.min(1, (now.across * s - now.along * q) / det));
      last -= Math.max(-longest, Math.min(longest, step));
    }
    [ay, last] = start;
    return { ay: 0, outward: 0 }; // nothing gives the push that is asked for
  };
}

/** Where a function of one number is greatest, by the golden section. */
function greatest(of: (x: number) => number, from: number, to: number, steps: number): number {
  const part = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  let [a, b] = [high - part * (high - low), low + part * (high - low)];
  let [fa, fb] = [of(a), of(b)];
  for (let i = 0; i < steps; i++)
    if (fa > fb) {
      [high, b, fb] = [b, a, fa];
      a = high - part * (high - low);
      fa = of(a);
    } else {
      [low, a, fa] = [a, b, fb];
      b = low + part * (high - low);
      fb = of(b);
    }
  return (low + high) / 2;
}

/** Two numbers at which a function is greatest: near it one by one, then by a fitted paraboloid. */
function greatestOfTwo(of: (x: number, y: number) => number, from: readonly [number, number]) {
  let [x, y] = from;
  for (const width of [0.4, 0.15]) {
    const atY = y;
    x = greatest((moved) => of(moved, atY), x * (1 - width), x * (1 + width), 4);
    y = greatest((moved) => of(x, moved), y * (1 - width), y * (1 + width), 4);
  }
  for (const part of [0.03, 0.015, 0.004]) {
    const [h, k] = [part * x, part * y];
    const here = of(x, y);
    const [x1, x2, y1, y2] = [of(x + h, y), of(x - h, y), of(x, y + k), of(x, y - k)];
    const [dx, dy] = [(x1 - x2) / 2 / h, (y1 - y2) / 2 / k];
    const [xx, yy] = [(x1 - 2 * here + x2) / h ** 2, (y1 - 2 * here + y2) / k ** 2];
    const xy = (of(x + h, y + k) - x1 - y1 + here) / h / k;
    const det = xx * yy - xy ** 2;
    x -= (dx * yy - dy * xy) / det;
    y -= (dy * xx - dx * xy) / det;
  }
  return [x, y] as const;
}

const hardest = 20; // N/kg: as much as the wheels can, whatever they can

/**
 * The state of most side force: both slip angles free, or, on the edge of what the inner driven
 * wheel can push, the front one.
 */
function mostOf(car: CarByHand, phase: Phase, speed: number) {
  const onEdge = settler(car, phase, speed, "push");
  const front = greatest((x) => onEdge(x, hardest).ay, 0.05, 0.25, 18);
  const edge = phase.gains < -2 ? { ay: 0, outward: 0 } : onEdge(front, hardest);
  const within = settler(car, phase, speed, "rear");
  const inside = within(...greatestOfTwo((x, y) => within(x, y).ay, [0.13, 0.13]));
  return inside.ay > edge.ay ? inside : edge;
}

/** Margin in a left turn (yaw-moment method), m/s²: above 0 the front gives up first. */
function marginLeft(car: CarByHand, phase: Phase, speed: number): number {
  return mostOf(car, phase, speed).outward;
}

const known = new Map<string, number>();
function once(key: string, work: () => number): number {
  const value = known.get(key) ?? work();
  known.set(key, value);
  return value;
}

/** The mean of a left and a right turn. */
const bothWays = (of: typeof marginLeft, set: Partial<SetUp>, phase: Phase, speed: number) =>
  once(JSON.stringify([of.name, set, phase, speed]), () => {
    const car = carByHand({ ...asItIs, ...set });
    return (of(car, phase, speed) + of(mirrored(car), phase, speed)) / 2;
  });

const usualSpeed = 25;
export const margin = (set: Partial<SetUp>, phase: Phase, speed = usualSpeed) =>
  bothWays(marginLeft, set, phase, speed);
/** What a change does to the margin. */
export const shift = (set: Partial<SetUp>, phase: Phase) => margin(set, phase) - margin({}, phase);
/** How the car as set stands in a left turn, its path along its own axis. */
export function stance(set: Partial<SetUp>, ay: number, phase: Phase = middle): Stands {
  const car = carByHand({ ...asItIs, ...set });
  const moved = (mass * phase.gains * height) / wheelbase;
  const loads = { front: car.front.mass * g - moved, rear: car.rear.mass * g + moved };
  return standsIn(car, ay, loads, phase.jerk);
}
