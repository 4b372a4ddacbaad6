import type { HandlingCar } from "../../../../lib/balance/handling-car.js";
import type { Felt, Fix, Ride, Three } from "../../../../lib/measure/ride/ride.js";
import { normalFrom, randomFrom } from "../../../../lib/random.js";
import { straightAhead } from "../../../../lib/transient/drive.js";
import { numbersOf, RELAXATION_LENGTH, stateOf } from "../../../../lib/transient/motion.js";
import { whatHappens } from "../../../../lib/transient/moving-car.js";
import { rungeKuttaStep } from "../../../../lib/transient/runge-kutta.js";
import { DEGREE, GRAVITY } from "../../../../lib/units.js";

/** One corner as it is to be driven. */
export interface Turn {
  /** 1 to the left, −1 to the right */
  readonly way: 1 | -1;
  /** m/s */
  readonly speed: number;
  /** m/s² that the driver goes for */
  readonly pull: number;
  /** s at full lock of that corner */
  readonly holds: number;
  /** m/s² of braking into it and driving out of it, at least 0 */
  readonly trails: number;
}

/** What a phone in a simulated car does wrong, and where it lies. */
export interface Phone {
  readonly rate: number;
  /** rows: the device's axes in the car's */
  readonly lies: readonly [Three, Three, Three];
  /** rad/s */
  readonly bias: Three;
  /** s by which speed comes late, and m/s by which it is off */
  readonly late: number;
  readonly speedError: number;
  /** m from the centre of gravity */
  readonly at: Three;
  readonly gyroScale: number;
  readonly dropouts: number;
  readonly shakes: { readonly force: number; readonly turn: number };
  /** −1 for a browser that turns all forces round */
  readonly forceSign: 1 | -1;
  /** how turn rates are handed over */
  readonly order: readonly [number, number, number];
}

/** How the road leans: right side down everywhere, or a plane whose fall line the car first crosses. */
export interface Road {
  /** rad */
  readonly angle: number;
  readonly of: "road" | "plane";
}

/** A moment of a drive as it truly was. */
export interface True {
  readonly time: number;
  /** m/s forward, and to the left */
  readonly speed: number;
  readonly drift: number;
  /** rad to the left */
  readonly heading: number;
  readonly yaw: number;
  readonly yawAcceleration: number;
  /** m/s² of the car along and across the road, without its own weight */
  readonly push: number;
  readonly across: number;
  /** rad of the body against the road, right side down and nose down, and rad/s */
  readonly roll: number;
  readonly rollRate: number;
  readonly pitch: number;
  readonly pitchRate: number;
  /** rad of the road across and along the car */
  readonly falls: number;
  readonly slopes: number;
}

const STEP = 0.01; // s
const BRAKES = 5; // m/s²
const PITCH = 0.0025; // rad/(m/s²) nose down
const TOP = 24; // m/s
const BRAKED = 0.7; // s of a turn in which its driver still brakes
const DRIVEN = 1; // s of it in which they drive out
const RAMP = 0.6; // s from straight to full steering
const PEDAL = 0.12; // s that a pedal and the body take

interface Part {
  readonly until: number;
  readonly push: number;
  readonly steer: (since: number) => number;
  readonly from: number;
}

/** Speed and steering over time: rest, off, corner after corner, rest. */
function planOf(turns: readonly Turn[], wheelbase: number): Part[] {
  const parts: Part[] = [];
  let [from, speed] = [0, 0];
  const add = (lasts: number, push: number, steer: Part["steer"] = () => 0) => {
    parts.push({ from, until: from + lasts, push, steer });
    from += lasts;
    speed += push * lasts;
  };
  add(5, 0);
  for (const turn of turns) {
    add(Math.max(0, TOP - speed) / 3, 3);
    add(0.8, 0);
    add((speed - turn.speed - turn.trails * BRAKED) / BRAKES, -BRAKES);
    if (turn.trails === 0) add(0.7, 0);
    const angle = (turn.way * turn.pull * wheelbase) / turn.speed ** 2;
    const whole = turn.holds + 2 * RAMP;
    const steer = (s: number) => angle * Math.max(0, Math.min(1, s / RAMP, (whole - s) / RAMP));
    add(BRAKED, -turn.trails, steer);
    add(whole - BRAKED - DRIVEN, 0, (s) => steer(s + BRAKED));
    add(DRIVEN, turn.trails, (s) => steer(s + whole - DRIVEN));
    add(1.2, 0);
  }
  add(speed / BRAKES, -BRAKES);
  add(4, 0);
  return parts;
}

/** What a road's slope is to a car on it. */
function slopeOf({ angle, of }: Road, heading: number) {
  if (of === "road") return { falls: angle, slopes: 0 };
  return { falls: angle * Math.cos(heading), slopes: angle * Math.sin(heading) };
}

/** One step of the moving car on a road that leans. */
function stepped(car: HandlingCar, speed: number, steer: number, falls: number, state: number[]) {
  const pace = speed / RELAXATION_LENGTH;
  const motion = (_: number, numbers: readonly number[]) => {
    const at = stateOf(numbers);
    const what = whatHappens(car, speed, steer, at);
    return [
      what.lateralAcceleration - GRAVITY * Math.sin(falls) - speed * at.yawRate,
      what.yawAcceleration,
      at.rollRate,
      what.rollAcceleration,
      pace * (what.settledSideForce.front - at.sideForce.front),
      pace * (what.settledSideForce.rear - at.sideForce.rear),
    ];
  };
  return rungeKuttaStep(motion, 0, state, STEP);
}

/** A drive of the library's moving car through turns, with rest before and after. */
export function trueDrive(car: HandlingCar, turns: readonly Turn[], road: Road): True[] {
  const parts = planOf(turns, car.wheelbase);
  const found: True[] = [];
  let numbers = numbersOf(straightAhead);
  let [speed, heading, push, i] = [0, 0, 0, 0];
  for (let time = 0; time <= (parts.at(-1)?.until ?? 0); time += STEP) {
    while (i < parts.length - 1 && time >= (parts[i]?.until ?? 0)) i++;
    const { push: asked = 0, steer = () => 0, from = 0 } = parts[i] ?? {};
    const wanted = speed <= 0 && asked < 0 ? 0 : asked;
    const pushRate = (wanted - push) / PEDAL;
    const { falls, slopes } = slopeOf(road, heading);
    const angle = steer(time - from);
    const driven = Math.max(speed, 3); // the model knows no crawling
    const state = stateOf(numbers);
    const moves = speed > 0.2;
    const what = whatHappens(car, driven, angle, state);
    found.push({
      ...{ time, speed, heading, push, falls, slopes },
      drift: moves ? state.lateralSpeed : 0,
      yaw: moves ? state.yawRate : 0,
      yawAcceleration: moves ? what.yawAcceleration : 0,
      across: moves ? what.lateralAcceleration : GRAVITY * Math.sin(falls),
      roll: state.rollAngle,
      rollRate: moves ? state.rollRate : 0,
      pitch: -PITCH * push,
      pitchRate: -PITCH * pushRate,
    });
    if (moves) {
      numbers = stepped(car, driven, angle, falls, numbers);
      heading += state.yawRate * STEP;
    }
    push += pushRate * STEP;
    speed = Math.max(0, speed + push * STEP);
  }
  return found;
}

/** m/s² across the road that turn the car, a steady turn taken for granted. */
export const turningOf = ({ speed, yaw }: True): number => speed * yaw;

/** Specific force and turn rates of a body at a place in it, along its own axes. */
function feltAt(at: True, [x, y]: Three, road: Road): { force: Three; turn: Three } {
  const { yaw, yawAcceleration, falls, slopes, roll, pitch } = at;
  const level: Three = [
    at.push - yaw * at.drift - yaw ** 2 * x - yawAcceleration * y + GRAVITY * Math.sin(slopes),
    at.across - yaw ** 2 * y + yawAcceleration * x,
    GRAVITY * Math.cos(falls) * Math.cos(slopes),
  ];
  const tilt = roll + (road.of === "road" ? falls : 0); // a road that leans all along turns with the car
  const turn: Three = [
    at.rollRate - yaw * Math.sin(pitch),
    at.pitchRate * Math.cos(roll) + yaw * Math.cos(pitch) * Math.sin(tilt),
    yaw * Math.cos(pitch) * Math.cos(tilt) - at.pitchRate * Math.sin(roll),
  ];
  return { force: leant(level, roll, pitch), turn };
}

/** A force along the road's axes as a body has it that leans to the right and dives. */
function leant([x, y, z]: Three, roll: number, pitch: number): Three {
  const [c, s] = [Math.cos(pitch), Math.sin(pitch)];
  const [along, up] = [x * c - z * s, x * s + z * c];
  return [
    along,
    y * Math.cos(roll) + up * Math.sin(roll),
    up * Math.cos(roll) - y * Math.sin(roll),
  ];
}

/** What a phone would have written down of a drive. */
export function asAPhoneFelt(drive: readonly True[], road: Road, phone: Phone, seed: number): Ride {
  const random = randomFrom(seed);
  const chance = () => normalFrom(random);
  const turned = (v: Three): Three =>
    phone.lies.map((axis) => axis[0] * v[0] + axis[1] * v[1] + axis[2] * v[2]) as unknown as Three;
  const steps = (value: number, step: number) => Math.round(value / step) * step;
  const samples: Felt[] = [];
  const end = drive.at(-1)?.time ?? 0;
  const gaps = Array.from({ length: phone.dropouts }, () => {
    const from = 6 + random() * (end - 12);
    return [from, from + 0.1 + 0.4 * random()] as const;
  });
  for (let time = 0; time < end - 0.01; time += 1 / phone.rate) {
    if (gaps.some(([a, b]) => time > a && time < b)) continue;
    const at = drive[Math.round(time / STEP)];
    if (!at) continue;
    const felt = feltAt(at, phone.at, road);
    const force = turned(felt.force).map(
      (one) => phone.forceSign * steps(one + phone.shakes.force * chance(), 0.1),
    );
    const turn = turned(felt.turn).map((one, i) =>
      steps(
        one * phone.gyroScale + (phone.bias[i] ?? 0) + phone.shakes.turn * chance(),
        0.1 * DEGREE,
      ),
    );
    samples.push({
      time: 100 + time,
      force: force as unknown as Three,
      turn: phone.order.map((from) => turn[from]) as unknown as Three,
    });
  }
  const fixes: Fix[] = [];
  const [x, y] = phone.at;
  for (let time = 0.3; time < end; time += 1) {
    const at = drive[Math.max(0, Math.round((time - phone.late) / STEP))];
    if (!at) continue;
    const [along, across] = [at.speed - at.yaw * y, at.drift + at.yaw * x];
    const speed = Math.max(0, Math.hypot(along, across) + phone.speedError * chance());
    const course = -at.heading - Math.atan2(across, Math.max(along, 1)) + 0.02 * chance();
    fixes.push({ time: 100 + time, speed, ...(at.speed > 2 && { course }) });
  }
  return { felt: samples, fixes };
}

/** A phone that lies any way, with faults as phones have them. */
export function anyPhone(seed: number): Phone {
  const random = randomFrom(seed);
  const chance = () => normalFrom(random);
  const q = [chance(), chance(), chance(), chance()];
  const size = Math.hypot(...q);
  const [w, x, y, z] = q.map((one) => one / size) as [number, number, number, number];
  const lies = [
    [1 - 2 * (y * y + z * z), 2 * (x * y - w * z), 2 * (x * z + w * y)],
    [2 * (x * y + w * z), 1 - 2 * (x * x + z * z), 2 * (y * z - w * x)],
    [2 * (x * z - w * y), 2 * (y * z + w * x), 1 - 2 * (x * x + y * y)],
  ] as const;
  const within = (least: number, most: number) => least + (most - least) * random();
  return {
    rate: within(25, 100),
    lies,
    bias: [within(-1, 1) * DEGREE, within(-1, 1) * DEGREE, within(-1, 1) * DEGREE],
    late: random(),
    speedError: 0.3,
    at: [within(-0.5, 1), within(-0.5, 0.5), within(0, 0.5)],
    gyroScale: 1 + 0.003 * chance(),
    dropouts: 5,
    shakes: { force: 0.2, turn: 0.2 * DEGREE },
    forceSign: random() < 0.5 ? 1 : -1,
    order: random() < 0.7 ? [0, 1, 2] : [2, 0, 1],
  };
}

/** Ten turns to both sides, as a driver would take them on a closed place. */
export function tenTurns(seed: number, count = 10): Turn[] {
  const random = randomFrom(seed);
  return Array.from({ length: count }, (_, i) => {
    const pull = 4 + 2.5 * random();
    const speed = 11 + 5 * random();
    return {
      way: i % 2 === 0 ? 1 : -1,
      speed,
      pull,
      holds: 2.5 + 1.5 * random(),
      trails: seed % 2 === 0 ? 2 : 0,
    };
  });
}

/** A road that leans by a degree to either side. */
export const leaningRoad = (seed: number): Road => ({
  angle: (seed % 2 === 0 ? 1 : -1) * DEGREE,
  of: seed % 4 < 2 ? "road" : "plane",
});
