import { type BodyEnd, bodyRoll } from "./body-roll.js";
import { axleLoads, type CarInRoll, sprungMassOnAxles } from "./car-in-roll.js";
import { type Axles, eachAxle } from "./wheels.js";

/** All four wheels on the ground. */
export const NO_WHEEL: Axles<boolean> = { front: false, rear: false };

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
  readonly lifted: Axles<boolean>;
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
export function rolled(car: CarInRoll, demand: Demand, lifted: Axles<boolean>): Rolled | undefined {
  const sprung = sprungMassOnAxles(car);
  const held = eachAxle(car, (axle, end) =>
    lifted[end] ? leftToSprings(demand, end) * axle.track : 0,
  );
  const ends = eachAxle(
    car,
    (axle, end): BodyEnd => ({
      sprungMass: sprung[end],
      arm: car.sprungHeight - axle.rollCentreHeight,
      rollStiffness: lifted[end] ? 0 : axle.rollStiffness,
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
function leftToSprings({ load, links }: Demand, end: "front" | "rear"): number {
  return load[end] / 2 - links[end].sum;
}

/** The same body once the wheels that cannot stay down have left the ground. */
export function liftWheels(car: CarInRoll, demand: Demand, onFour: Rolled): Rolled {
  const first = firstToLift(demand, onFour);
  if (first === undefined) return onFour;
  const lifted = { front: first === "front", rear: first === "rear" };
  const onThree = rolled(car, demand, lifted);
  if (onThree !== undefined && firstToLift(demand, onThree) === undefined) return onThree;
  return tippedOver(car, demand, onFour, first === "front" ? "rear" : "front");
}

/** The axle whose inside tyre leaves the ground first as the turn tightens, if any does. */
function firstToLift(demand: Demand, { elastic, lifted }: Rolled): "front" | "rear" | undefined {
  const used = eachAxle(elastic, (transfer, end) =>
    lifted[end] ? 0 : (transfer + demand.links[end].sum) / (demand.load[end] / 2),
  );
  if (!(used.front > 1 || used.rear > 1)) return undefined;
  return used.front > used.rear ? "front" : "rear";
}

/** Both inside tyres in the air; the body as far over as the axle that lifted last could hold. */
function tippedOver(
  car: CarInRoll,
  demand: Demand,
  onFour: Rolled,
  last: "front" | "rear",
): Rolled {
  const elastic = eachAxle(car, (_, end) => leftToSprings(demand, end));
  const { rollStiffness, track } = car[last];
  const angle = rollStiffness > 0 ? (elastic[last] * track) / rollStiffness : onFour.angle[last];
  return {
    angle: { front: angle, rear: angle },
    elastic,
    lifted: { front: true, rear: true },
  };
}
