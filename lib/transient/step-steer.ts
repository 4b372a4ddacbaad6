import type { HandlingCar } from "../balance/handling-car.js";
import { trim } from "../balance/trim.js";
import { requireInRange } from "../check.js";
import { Refusal } from "../refusal.js";
import { drive, type Moment } from "./drive.js";
import { type StepFigures, stepFigures } from "./step-figures.js";

/** A step of steering and what came of it. */
export interface StepSteer {
  readonly moments: readonly Moment[];
  /** s at which the steer angle passed half its step: zero of all response times */
  readonly zero: number;
  readonly yawRate: StepFigures;
  readonly lateralAcceleration: StepFigures;
  readonly rollAngle: StepFigures;
  /** rad, in the steady turn at the end (ISO 8855) */
  readonly sideSlip: number;
  /** rad·s: peak time of yaw rate × side-slip at the end, without sign – ISO 7401 */
  readonly tbFactor: number;
}

/** What is steered, how fast and into which turn. */
export interface StepSteerTest {
  /** m/s; 27.8 (100 km/h) when left out – ISO 7401 */
  readonly speed?: number;
  /** m/s² of the turn it leads to; 4 when left out – ISO 7401 */
  readonly lateralAcceleration?: number;
  /** s from straight ahead to the full angle; 0.1 when left out */
  readonly steerTime?: number;
  /** s after the start; 3 when left out */
  readonly duration?: number;
}

const BEFORE = 0.1; // s straight ahead before the step

/**
 * Turns the steering of a car to the angle of a steady turn and watches how it gets there.
 *
 * @throws Refusal when the car cannot hold that turn, or a number is out of range
 * @see ISO 7401:2011, step input
 */
export function stepSteer(car: HandlingCar, test: StepSteerTest = {}): StepSteer {
  const { speed = 100 / 3.6, lateralAcceleration = 4, steerTime = 0.1, duration = 3 } = test;
  requireInRange("steer time", steerTime, 0.001, 2, "s");
  requireInRange("duration", duration, 1, 30, "s");
  requireInRange("lateral acceleration", lateralAcceleration, 0.1, 50, "m/s²");
  const turn = trim(car, { speed }, lateralAcceleration);
  if (turn === undefined)
    throw new Refusal(
      "critical-speed",
      `lateral acceleration is ${lateralAcceleration} m/s² but this car cannot hold that turn.`,
    );
  const share = (time: number) => Math.min(1, Math.max(0, (time - BEFORE) / steerTime));
  const steer = (time: number) => turn.steer * share(time);
  const moments = drive(car, { speed, duration, steer });
  return { moments, ...figuresOf(moments, BEFORE + steerTime / 2, speed) };
}

function figuresOf(moments: readonly Moment[], zero: number, speed: number) {
  const step = (moments[1]?.time ?? 0) - (moments[0]?.time ?? 0);
  const first = Math.round(zero / step);
  const after = moments.slice(first);
  const figures = (value: (moment: Moment) => number) =>
    stepFigures({ step, values: after.map(value) });
  const yawRate = figures((moment) => moment.yawRate);
  const sideSlip = Math.atan2(after.at(-1)?.lateralSpeed ?? 0, speed);
  return {
    zero: first * step,
    yawRate,
    lateralAcceleration: figures((moment) => moment.lateralAcceleration),
    rollAngle: figures((moment) => moment.rollAngle),
    sideSlip,
    tbFactor: Math.abs(yawRate.peakTime * sideSlip),
  };
}
