import { tyreStiffnessOf, wheelRateOf } from "../car/axle.js";
import type { Car } from "../car/car.js";
import { axleWeightsOf, frontShareOf, totalMassOf } from "../car/masses.js";
import { requireQuantity } from "../check.js";
import type { Axles } from "../load/wheels.js";
import { GRAVITY } from "../units.js";
import type { Measured } from "./measured.js";
import { type Propagated, throughCar } from "./through.js";

/** A car with one axle raised, the wheels of the other on scales, brakes off. */
export interface RaisedAxle {
  /** Which axle is raised. */
  readonly raised: "front" | "rear";
  /** kg on both scales together, level. */
  readonly level: Measured;
  /** kg on the same scales with the other axle raised. */
  readonly lifted: Measured;
  /** m by which the axle is raised against the level. */
  readonly rise: Measured;
  /** What that was measured at: the wheels' centres, or the ground under the tyres. */
  readonly at: "hubs" | "tyres";
  /** m above the ground of the wheels' centres, level. */
  readonly hubs: Axles<Measured>;
  /** Whether the suspension was held, so that springs could not move. */
  readonly locked: boolean;
}

/** Height of the centre of gravity of a car, and of its body. */
export interface RaisedHeight {
  /** m above the ground, of the whole car */
  readonly height: Propagated;
  /** m above the ground, of the body alone */
  readonly bodyHeight: Propagated;
  /** m by which the height would be told too great if springs were taken as held; 0 where they are */
  readonly springs: number;
  /** m by which the height would be told too great if tyres were taken as stiff; 0 measured at hubs */
  readonly tyres: number;
}

const LEAST_RISE = 0.02; // m
const bears = (path: string) =>
  /^(wheelbase|body\.mass|(driver|passenger|fuel|ballast)\.(mass|height)|tyre\.stiffness|(front|rear)\.(unsprungMass|unsprungHeight|spring\.(rate|motionRatio)|tyre\.stiffness))$/.test(
    path,
  );

/**
 * Height of the centre of gravity from the load that goes back when one axle is raised.
 *
 * With the wheels free to roll, moments about the axle that stays down give
 * (h − h_hubs)·W·tan θ = ΔF·L. Springs that are not held let the body pitch by ΔF·(1/2kf + 1/2kr)/L
 * more than its wheels; tyres lower that axle and lift the raised one by as much with their own rates.
 * Both are worked out from the car and taken off; given of each counts as doubt.
 *
 * @param car - mass, masses in it and rates as its file has them
 * @throws Refusal when a number is out of its range, or nothing went back
 * @see Milliken 1995, ch. 18.2 (from memory), for held springs and stiff tyres
 */
export function heightByRaisedAxle(car: Car, reading: RaisedAxle): RaisedHeight {
  const { raised, level, lifted, rise, hubs } = reading;
  const { wheelbase } = car;
  requireQuantity("rise", "length", rise.value, LEAST_RISE, wheelbase / 2);
  const down = axleWeightsOf(car)[raised === "front" ? "rear" : "front"] / GRAVITY;
  requireQuantity("load with one axle raised", "mass", lifted.value, level.value, 3 * down);
  const inputs = {
    level,
    lifted,
    rise,
    frontHub: hubs.front,
    rearHub: hubs.rear,
    given: ALL_OF_IT,
  };
  const told = throughCar(car, inputs, bears, (car, values) => heightsOf(car, reading, values));
  const { given, ...read } = valuesIn(inputs);
  const least = (share: number, tyres: number) =>
    heightsOf(car, reading, { ...read, given: share }, tyres).height;
  return {
    height: told.height,
    bodyHeight: told.bodyHeight,
    springs: reading.locked ? 0 : least(0, 1) - least(given, 1),
    tyres: reading.at === "hubs" ? 0 : least(1, 0) - least(1, 1),
  };
}

/** How much of what springs and tyres give is taken off: all of it, give or take given. */
const ALL_OF_IT: Measured = { value: 1, spread: 0.5 };

type Read = Readonly<
  Record<"level" | "lifted" | "rise" | "frontHub" | "rearHub" | "given", number>
>;

const valuesIn = (inputs: Readonly<Record<keyof Read, Measured>>) =>
  Object.fromEntries(Object.entries(inputs).map(([name, { value }]) => [name, value])) as Read;

function heightsOf(car: Car, { at, locked }: RaisedAxle, read: Read, tyreShare = read.given) {
  const { wheelbase } = car;
  const total = totalMassOf(car);
  const moved = (read.lifted - read.level) * GRAVITY;
  const weights = axleWeightsOf(car);
  const tyres = giveOf((end) => tyreStiffnessOf(car[end], weights[end] / 2)) * moved;
  const rise = read.rise + (at === "tyres" ? tyreShare * tyres : 0);
  const springs = locked ? 0 : (giveOf((end) => wheelRateOf(car[end])) * moved) / wheelbase;
  const tan = Math.tan(Math.asin(rise / wheelbase)) + read.given * springs;
  const share = frontShareOf(total, wheelbase);
  const hub = share * read.frontHub + (1 - share) * read.rearHub;
  const height = hub + (moved * wheelbase) / (total.mass * GRAVITY * tan);
  return { height, bodyHeight: bodyHeightFor(car, height) };
}

/** m that both axles of a rate give in all for each N moved from one to the other. */
const giveOf = (rate: (end: "front" | "rear") => number) =>
  1 / (2 * rate("front")) + 1 / (2 * rate("rear"));

/** How high the body must be for the whole car to have its centre of gravity so high, m. */
function bodyHeightFor(car: Car, height: number): number {
  const total = totalMassOf(car);
  const others = total.mass * total.height - car.body.mass * car.body.height;
  return (total.mass * height - others) / car.body.mass;
}
