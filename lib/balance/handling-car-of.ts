import { isBeamAxle, meanOf, wheelRateOf } from "../car/axle.js";
import { carInRoll } from "../car/axle-loads.js";
import type { Axle, Car } from "../car/car.js";
import { complianceSteerOf } from "../car/compliance-steer.js";
import { differentialOf } from "../car/differential.js";
import { frontShareOf, totalMassOf } from "../car/masses.js";
import { stopsOf } from "../car/stops.js";
import { tyreCoefficientsOf } from "../car/tyres.js";
import type { AxleInRoll } from "../load/car-in-roll.js";
import type { Sides } from "../load/wheels.js";
import { Refusal } from "../refusal.js";
import { type Rest, restOf } from "../statics/rest.js";
import { axleRollDamping } from "./axle-roll-damping.js";
import type { HandlingAxle, HandlingCar } from "./handling-car.js";
import type { WheelStops } from "./stops.js";

/**
 * How a car stands and what holds it, ready to be driven.
 *
 * Heights, wheel loads, camber and toe are those at rest after seats, pressures and masses have
 * moved the body; roll centres move with it.
 *
 * @param measured - the car whose file gave the heights, as for `restOf`; the car itself when left out
 * @param rest - how it stands, where that is at hand
 * @throws Refusal when the car cannot stand on its springs
 * @example
 * handlingCarOf(demoCar).front.rollStiffness
 * // → 42705.8, by hand: ½·60 000·0.65²·1.44² + 22 000·(0.6·1.44)²
 */
export function handlingCarOf(
  car: Car,
  measured: Car = car,
  rest: Rest = restOf(car, measured),
): HandlingCar {
  const roll = carInRoll(car);
  const sprungHeight = roll.sprungHeight + rest.heave;
  if (sprungHeight < 0) throw new Refusal("cannot-stand", onTheGround(sprungHeight));
  return {
    ...roll,
    sprungHeight,
    wheelbase: car.wheelbase,
    ...inertias(car),
    brakeFrontShare: car.brakeFrontShare,
    driveFrontShare: car.driveFrontShare,
    dragFactor: car.air?.drag ?? 0,
    front: handlingAxle(car.front, roll.front, rest, "front", car.air?.frontDownforce ?? 0),
    rear: handlingAxle(car.rear, roll.rear, rest, "rear", car.air?.rearDownforce ?? 0),
  };
}

const onTheGround = (height: number) =>
  `The body comes down on its springs until its centre of gravity is ${height.toFixed(3)} m above the ` +
  "ground, but must be at least 0 m: see the heights of the masses and spring.seatTurns.";

const FARTHEST_ROLL_CENTRE = 2; // m

const rollCentreGone = (end: string, height: number) =>
  `The ${end} roll centre comes to ${height.toFixed(3)} m above the ground as the car settles on its ` +
  `springs, but must be from -${FARTHEST_ROLL_CENTRE} to ${FARTHEST_ROLL_CENTRE} m: see ${end}.geometry.rollCentreMigration and spring.seatTurns.`;

function handlingAxle(
  axle: Axle,
  inRoll: AxleInRoll,
  rest: Rest,
  end: "front" | "rear",
  downforceFactor: number,
): HandlingAxle {
  const { geometry } = axle;
  const load = rest.load[end];
  const moved = meanOf(rest.travel[end]) * (geometry.rollCentreMigration ?? 0);
  const rollCentreHeight = inRoll.rollCentreHeight + moved;
  if (Math.abs(rollCentreHeight) > FARTHEST_ROLL_CENTRE)
    throw new Refusal("cannot-stand", rollCentreGone(end, rollCentreHeight));
  return {
    ...inRoll,
    rollCentreHeight,
    tyre: tyreCoefficientsOf(axle),
    pressure: axle.tyre.pressure,
    leftExcessLoad: (load.left - load.right) / 2,
    camber: rest.camber[end],
    toe: rest.toe[end],
    independent: !isBeamAxle(axle),
    camberGain: geometry.camberGain ?? 0,
    toeGain: geometry.toeGain ?? 0,
    rollSteer: geometry.rollSteer ?? 0,
    complianceSteer: complianceSteerOf(axle, end),
    differential: differentialOf(axle),
    stops: stopsLeft(axle, rest.travel[end]),
    wheelRate: wheelRateOf(axle),
    rollDamping: axleRollDamping(axle),
    downforceFactor,
  };
}

/** Free travel of each wheel from where it rests, and the stops behind it. */
function stopsLeft(axle: Axle, travel: Sides<number>): WheelStops {
  const { bumpTravel, droopTravel, bumpStop, droopStop } = stopsOf(axle);
  return {
    bumpLeft: { left: bumpTravel - travel.left, right: bumpTravel - travel.right },
    droopLeft: { left: droopTravel + travel.left, right: droopTravel + travel.right },
    bumpStop,
    droopStop,
  };
}

/**
 * Yaw inertia of the car and roll inertia of its body, kg·m².
 *
 * Without figures in the file: yaw m·a·b and a radius of gyration in roll of 0.43 of the track
 * – common practice, no source.
 */
function inertias(car: Car): { yawInertia: number; rollInertia: number } {
  const total = totalMassOf(car);
  const share = frontShareOf(total, car.wheelbase);
  const track = (car.front.track + car.rear.track) / 2;
  const yaw = total.mass * car.wheelbase ** 2 * share * (1 - share);
  const roll = total.mass * (0.43 * track) ** 2;
  const wheels = (car.front.unsprungMass + car.rear.unsprungMass) * (track / 2) ** 2;
  const whole = car.inertia?.roll ?? roll;
  return {
    yawInertia: car.inertia?.yaw ?? yaw,
    rollInertia: Math.max(whole / 3, whole - wheels), // the body without the wheels
  };
}
