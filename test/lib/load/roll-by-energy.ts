import { solveLinear } from "../../../lib/linear.js";
import type { CarInRoll } from "../../../lib/load/car-in-roll.js";

const g = 9.80665;

/** Angles of the body and of both axles on their tyres, rad per m/s², and what tyres move, N. */
export interface RollByEnergy {
  readonly body: number;
  readonly front: number;
  readonly rear: number;
  readonly transferFront: number;
  readonly transferRear: number;
}

/**
 * Roll of a car with a stiff chassis on springs and tyres, from the lowest point of its energy: work
 * of springs, tyres, weights and side force, written down as one function of three angles.
 */
export function rollByEnergy(car: CarInRoll): RollByEnergy {
  const share = [car.sprungFrontShare, 1 - car.sprungFrontShare];
  const energy = (ay: number, [body = 0, ...axles]: readonly number[]) =>
    [car.front, car.rear].reduce((sum, axle, i) => {
      const tilt = axles[i] ?? 0;
      const { tyreRollStiffness = Infinity, ownForceShare = 1, independent = false } = axle;
      const mass = car.sprungMass * (share[i] ?? 0);
      const [low, arm] = [axle.rollCentreHeight, car.sprungHeight - axle.rollCentreHeight];
      const lean = body + ownForceShare * (tilt - body);
      const wheels = axle.unsprungMass * axle.unsprungHeight;
      const out = mass * (arm * body + low * tilt) + wheels * lean; // kg·m
      const down = mass * (arm * body ** 2 + low * tilt ** 2) + wheels * lean ** 2;
      const rises = independent ? mass * low * (body - tilt) ** 2 : 0;
      const springs = axle.rollStiffness * (body - tilt) ** 2 + tyreRollStiffness * tilt ** 2;
      return sum + springs / 2 - (g * (down - rises)) / 2 - ay * out;
    }, 0);
  const unit = (i: number, j = i) =>
    [0, 1, 2].map((k) => Number(k === i) + (j !== i ? Number(k === j) : 0));
  const bend = (
    i: number,
    j: number, // second differences of a square are exact
  ) =>
    i === j
      ? 2 * energy(0, unit(i))
      : energy(0, unit(i, j)) - energy(0, unit(i)) - energy(0, unit(j));
  const push = (i: number) => energy(0, unit(i)) - energy(1, unit(i));
  const at = [0, 1, 2];
  const angles = solveLinear(
    at.map((i) => at.map((j) => bend(i, j))),
    at.map(push),
  );
  const [body = 0, front = 0, rear = 0] = angles;
  const squash = ({ tyreRollStiffness = Infinity, track }: CarInRoll["front"], tilt: number) =>
    (tyreRollStiffness * tilt) / track;
  return {
    body,
    front,
    rear,
    transferFront: squash(car.front, front),
    transferRear: squash(car.rear, rear),
  };
}
