import { type CarInRoll, sprungMassOnAxles } from "./car-in-roll.js";
import { type Axles, eachAxle } from "./wheels.js";

/** Load that one axle moves as soon as there is side force, whatever its springs do, N. */
export interface AtOnce {
  /** through the links, at the roll centre */
  readonly geometric: number;
  /** of the wheels themselves, as far as their side force stays at the axle */
  readonly unsprung: number;
}

/** What links and wheels move from left to right in a steady left turn, N – Milliken 1995, ch. 18. */
export function transferAtOnce(car: CarInRoll, lateralAcceleration: number): Axles<AtOnce> {
  const sprung = sprungMassOnAxles(car);
  return eachAxle(car, (axle, end) => {
    const wheels = (axle.ownForceShare ?? 1) * axle.unsprungMass * axle.unsprungHeight;
    return {
      geometric: (sprung[end] * lateralAcceleration * axle.rollCentreHeight) / axle.track,
      unsprung: (wheels * lateralAcceleration) / axle.track,
    };
  });
}
