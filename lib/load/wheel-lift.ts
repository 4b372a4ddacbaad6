import { type BodyEnd, bodyRoll } from "./body-roll.js";
import { axleLoads, type CarInRoll, sprungMassOnAxles } from "./car-in-roll.js";
import { type Axles, eachAxle } from "./wheels.js";

/**
 * Which tyre of each axle is off the ground: 0 none, 1 the inner one, −1 the outer one, as happens to
 * a body that hangs far below its roll centre.
 */
export type Lifted = Axles<-1 | 0 | 1>;

/** All four wheels on the ground. */
export const NO_WHEEL: Lifted = { front: 0, rear: 0 };

/** What a turn asks of each axle before the body rolls, as if to the left. */
export interface Demand {
  readonly lateralAcceleration: number;
  readonly load: Axles<number>;
  readonly links: Axles<{ geometric: number; unsprung: number; sum: number }>;
}

/** A body at rest in its turn. */
export interface Rolled {
  readonly angle: Axles<number>;
  readonly elastic: Axles<number>;
  readonly lifted: Lifted;
}

/** Links and wheels move their part at once, whatever the springs do. */
export function demandOf(car: CarInRoll, ay: number): Demand {
  const sprung = sprungMassOnAxles(car);
  const links = eachAxle(car, (axle, end) => {
    const geometric = (sprung[end] * ay * axle.rollCentreHeight) / axle.track; // – Milliken 1995, ch. 18
    const unsprung = (axle.unsprungMass * ay * axle.unsprungHeight) / axle.track; // – same
    return { geometric, unsprung, sum: geometric + unsprung };
  });
  return { lateralAcceleration: ay, load: axleLoads(car), links };
}

/** The body in balance, with a lifted axle holding what it can; nothing when there is no balance. */
export function rolled(car: CarInRoll, demand: Demand, lifted: Lifted): Rolled | undefined {
  const sprung = sprungMassOnAxles(car);
  const held = eachAxle(car, (axle, end) =>
    lifted[end] === 0 ? 0 : leftToSprings(demand, end, lifted[end]) * axle.track,
  );
  const ends = eachAxle(
    car,
    (axle, end): BodyEnd => ({
      sprungMass: sprung[end],
      arm: car.sprungHeight - axle.rollCentreHeight,
      rollStiffness: lifted[end] === 0 ? axle.rollStiffness : 0,
      heldMoment: held[end],
    }),
  );
  const angle = bodyRoll(ends, demand.lateralAcceleration, car.torsionStiffness);
  if (angle === undefined) return undefined;
  const elastic = eachAxle(
    ends,
    ({ rollStiffness }, end) => (rollStiffness * angle[end] + held[end]) / car[end].track,
  );
  return { angle, elastic, lifted };
}

/** What springs and bar of a lifted axle move, N: all it has, less what went through the links. */
function leftToSprings({ load, links }: Demand, end: End, lifted: -1 | 0 | 1): number {
  return (lifted * load[end]) / 2 - links[end].sum;
}

type End = "front" | "rear";

/** The same body once the wheels that cannot stay down have left the ground. */
export function liftWheels(car: CarInRoll, demand: Demand, onFour: Rolled): Rolled {
  const first = firstToLift(demand, onFour);
  if (first === undefined) return onFour;
  const lifted = { ...NO_WHEEL, [first.end]: first.lifted };
  const onThree = rolled(car, demand, lifted);
  if (onThree === undefined) return tippedOver(car, demand, onFour, { front: 1, rear: 1 });
  const second = firstToLift(demand, onThree);
  if (second === undefined) return onThree;
  return tippedOver(car, demand, onFour, { ...lifted, [second.end]: second.lifted });
}

/** The axle of which a tyre leaves the ground first as the turn tightens, if any does. */
function firstToLift(
  demand: Demand,
  { elastic, lifted }: Rolled,
): { end: End; lifted: 1 | -1 } | undefined {
  const used = eachAxle(elastic, (transfer, end) =>
    lifted[end] === 0 ? (transfer + demand.links[end].sum) / (demand.load[end] / 2) : 0,
  );
  const [front, rear] = [Math.abs(used.front), Math.abs(used.rear)];
  if (!(front > 1 || rear > 1)) return undefined;
  const end = rear > 1 && !(front > rear) ? "rear" : "front";
  return { end, lifted: used[end] > 0 ? 1 : -1 };
}

/** A tyre of both axles in the air; the body as far over as the stiffer axle could hold. */
function tippedOver(car: CarInRoll, demand: Demand, onFour: Rolled, lifted: Lifted): Rolled {
  const elastic = eachAxle(car, (_, end) => leftToSprings(demand, end, lifted[end]));
  const stiffer = car.front.rollStiffness > car.rear.rollStiffness ? "front" : "rear";
  const { rollStiffness, track } = car[stiffer];
  const held = (elastic[stiffer] * track) / rollStiffness;
  const angle = rollStiffness > 0 ? held : onFour.angle[stiffer];
  return { angle: { front: angle, rear: angle }, elastic, lifted };
}
