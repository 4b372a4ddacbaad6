import { DEGREE, GRAVITY } from "../../units.js";
import { type AtRest, atRest } from "./at-rest.js";
import { type CornerSteps, cornersIn, peakOf, secondsOf } from "./corners.js";
import { evenly, integral, meanOver, type Row, STEP, type Stretch, smooth } from "./evenly.js";
import { type InCar, inCar } from "./in-car.js";
import { FEWEST } from "./lateness.js";
import { type Mounting, mountingOf } from "./mounting.js";
import { type Ride, requireRide } from "./ride.js";
import {
  balanceRoll,
  integratedRoll,
  pitchGradientOf,
  type SteadyRoll,
  turningIn,
} from "./roll.js";
import { type RollGradient, rollGradient } from "./roll-gradient.js";
import { type Speed, speedOf } from "./speed.js";

/** What is known of one corner of a ride. */
export interface RideCorner {
  /** s since the start of the ride */
  readonly begins: number;
  readonly ends: number;
  readonly way: "left" | "right";
  /** rad that the car turned, above 0 */
  readonly turned: number;
  /** m/s where the corner begins; nothing without satellites */
  readonly entrySpeed?: number;
  /** m/s² to the inside, half-second mean: the hardest moment */
  readonly peak: number;
  /** share of `turned` that lay behind the car in the middle of its hardest part, 0–1 */
  readonly hardestAt: number;
  /** m, least radius of the path; nothing without satellites */
  readonly radius?: number;
  /** m/s² to the inside in the steady part; nothing where there was none */
  readonly steady?: number;
  /** rad/s, the most while it leaned over */
  readonly rollRate: number;
  /** rad in the steady part, right side down above 0, by the balance of accelerations and by roll rate */
  readonly roll: { readonly balance?: number; readonly integrated?: number };
}

/** What a ride tells. */
export interface RideFacts {
  readonly mounting: Mounting;
  readonly rest: Pick<AtRest, "gravity" | "bias" | "duration">;
  readonly corners: readonly RideCorner[];
  /** s by which satellites were late, and m/s by which they scattered; nothing without them */
  readonly satellites?: Pick<Speed, "lag" | "scatter">;
  /** Whether their speeds go with nothing that was felt: too late by far, or of another drive. */
  readonly speedsLeftOut: boolean;
  /** Nothing where fewer than three corners tell it. */
  readonly rollGradient?: RollGradient;
}

/** A corner with all that its roll was read from. */
interface Read extends CornerSteps {
  readonly balance?: SteadyRoll;
  readonly integrated?: SteadyRoll;
}

/**
 * What a ride tells: how the phone lay, its corners, and the roll gradient of the car.
 *
 * @throws Refusal for a ride that cannot be worked with, without rest, straight braking or turns
 */
export function rideFacts(ride: Ride): RideFacts {
  const even = evenly(requireRide(ride));
  const rest = atRest(even);
  const mounting = mountingOf(even, rest, ride.fixes);
  const car = inCar(even, mounting);
  const speed = speedOf(car, ride.fixes);
  const reads = readCorners(car, speed);
  const gradient = gradientOf(car, reads, speed);
  const { gravity, bias, duration } = rest;
  return {
    ...{ mounting, rest: { gravity, bias, duration } },
    corners: cornerFacts(car, reads, speed, gradient),
    ...(speed && { satellites: { lag: speed.lag, scatter: speed.scatter } }),
    speedsLeftOut: speed === undefined && ride.fixes.length >= FEWEST,
    ...(gradient && { rollGradient: gradient }),
  };
}

const knownIn = (speed: Speed | undefined, { from, to }: Stretch): Speed | undefined =>
  speed?.known(from) && speed.known(to - 1) ? speed : undefined;

function readCorners(car: InCar, speed: Speed | undefined): Read[] {
  const pitch = pitchGradientOf(car);
  return cornersIn(car).map((corner) => {
    const { steady } = corner;
    const integrated = integratedRoll(car, corner, pitch);
    const known = steady && knownIn(speed, steady);
    const balance = known && balanceRoll(car, known, steady);
    return { ...corner, ...(balance && { balance }), ...(integrated && { integrated }) };
  });
}

/** rad by which the roll of one corner may be off by itself: common practice, no source. */
const OF_ONE = 0.03 * DEGREE;

function gradientOf(car: InCar, reads: readonly Read[], speed: Speed | undefined) {
  const integrated = reads.flatMap(({ integrated: one }) =>
    one ? { ...one, spread: OF_ONE } : [],
  );
  const balance = reads.flatMap(({ balance: one, steady }) => {
    if (!one || !steady || !speed) return [];
    const yaw = Math.abs(meanOver(car.yawRate, steady.from, steady.to));
    const readings = Math.max(1, secondsOf(steady) + 1); // one a second, and the line reaches beyond
    return { ...one, spread: (speed.scatter * yaw) / Math.sqrt(readings) / GRAVITY + 1e-5 };
  });
  return rollGradient(balance, integrated);
}

/** What the phone feels across, freed of its own lean and of the roll: acceleration over the road. */
function accelerationOf(car: InCar, gradient: RollGradient | undefined): Row {
  const leans = GRAVITY * (gradient?.lean?.value ?? 0);
  const byRoll = 1 + GRAVITY * (gradient?.value ?? USUAL_GRADIENT);
  return smooth(car.across, 0.5).map((value) => (value - leans) / byRoll);
}

/** rad/(m/s²), where a ride tells none: common practice, no source. */
const USUAL_GRADIENT = (3 * DEGREE) / GRAVITY;

function cornerFacts(
  car: InCar,
  reads: readonly Read[],
  speed: Speed | undefined,
  gradient: RollGradient | undefined,
): RideCorner[] {
  const across = accelerationOf(car, gradient);
  const heading = integral(car.yawRate);
  const rollRate = smooth(car.rollRate, 0.1);
  const lean = gradient?.lean?.value ?? 0;
  return reads.map((read) => {
    const { from, to, way, steady, balance, integrated } = read;
    const known = knownIn(speed, read);
    const turned = Math.abs((heading[to - 1] ?? 0) - (heading[from] ?? 0));
    return {
      ...{ begins: from * STEP, ends: to * STEP, turned },
      way: way > 0 ? "left" : "right",
      ...(known && { entrySpeed: known.at[from] ?? 0, radius: radiusOf(car, known, read) }),
      ...hardestOf(across, heading, read),
      ...(steady && { steady: way * steadyOf(car, across, steady, known) }),
      rollRate: peakOf(rollRate, Math.max(0, from - 15), to, way),
      roll: {
        ...(balance && { balance: balance.roll - lean }),
        ...(integrated && { integrated: wholeRoll(integrated, car, steady, lean) }),
      },
    };
  });
}

/** Roll from no force on: straights beside a corner are never quite straight. */
function wholeRoll(
  { roll, felt }: SteadyRoll,
  car: InCar,
  steady: Stretch | undefined,
  lean: number,
): number {
  if (steady === undefined) return roll;
  return (roll / felt) * (meanOver(car.across, steady.from, steady.to) - GRAVITY * lean);
}

/** How hard at the most, and the middle of where it was nearly as hard, as a share of the angle turned. */
function hardestOf(across: Row, heading: Row, { from, to, way }: CornerSteps) {
  const peak = peakOf(across, from, to, way);
  let [sum, count] = [0, 0];
  for (let i = from; i < to; i++) {
    if (way * (across[i] ?? 0) < NEARLY * peak) continue;
    sum += heading[i] ?? 0;
    count += 1;
  }
  const [begins, ends] = [heading[from] ?? 0, heading[to - 1] ?? 0];
  return { peak, hardestAt: (sum / count - begins) / (ends - begins) };
}

const NEARLY = 0.9; // share of the peak: of a long even turn the very highest step is chance

function radiusOf(car: InCar, speed: Speed, { from, to, way }: CornerSteps): number {
  const yaw = smooth(car.yawRate, 0.5);
  let least = Infinity;
  for (let i = from; i < to; i++) {
    const turning = way * (yaw[i] ?? 0);
    if (turning > 0.05) least = Math.min(least, (speed.at[i] ?? 0) / turning);
  }
  return least;
}

/** m/s² in the steady part: what is felt, and speed times yaw rate where speed is known, by their doubts. */
function steadyOf(car: InCar, across: Row, steady: Stretch, speed: Speed | undefined): number {
  const felt = meanOver(across, steady.from, steady.to);
  if (speed === undefined) return felt;
  const turning = turningIn(car, speed, steady);
  const doubt = (speed.scatter * Math.abs(turning / (speed.at[steady.from] ?? 1))) ** 2;
  const ofTurning = doubt / (secondsOf(steady) + 1);
  const ofFelt = (GRAVITY * LEANS) ** 2;
  return (felt * ofTurning + turning * ofFelt) / (ofTurning + ofFelt);
}

/** rad by which a road leans more or less from corner to corner: common practice, no source. */
const LEANS = 0.5 * DEGREE;
