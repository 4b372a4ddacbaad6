import type { CarInRoll } from "../../lib/load/car-in-roll.js";
import type { Axles } from "../../lib/load/wheels.js";
import { type Mechanics, options } from "./mechanics.js";

/** A car whose axles are pinned to the body at their roll centres. */
export interface PinnedCar extends CarInRoll {
  readonly wheelbase: number;
}

/**
 * Load transfer of each axle by general mechanics, N: body and two axles as stiff bodies, hinged
 * about the line through both roll centres with a torsion spring, and free to turn about the
 * vertical so that no axle holds the other against yaw. Both wheels of each axle are held to the
 * road.
 */
export function pinnedTransfers(
  mechanics: Mechanics,
  car: PinnedCar,
  lateralAcceleration: number,
): Axles<number> {
  const { forces: rows } = mechanics.atRest(pinnedModel(car, lateralAcceleration), 20);
  const vertical = (wheel: number) => rows[3 * wheel + 2] ?? Number.NaN; // three rows a wheel: x, y, z
  return {
    front: (vertical(1) - vertical(0)) / 2,
    rear: (vertical(3) - vertical(2)) / 2,
  };
}

function pinnedModel(car: PinnedCar, lateralAcceleration: number): string {
  const { sprungMass, sprungHeight, wheelbase, front, rear } = car;
  const a = wheelbase * (1 - car.sprungFrontShare);
  const lean = front.rollCentreHeight - rear.rollCentreHeight;
  const hinge = `axis="${wheelbase} 0 ${lean}"`;
  const axle = (name: string, x: number, axle: CarInRoll["front"]) => `
    <body name="${name}">
      <joint type="hinge" pos="${x} 0 ${axle.rollCentreHeight}" axis="0 0 1"/>
      <joint type="hinge" pos="${x} 0 ${axle.rollCentreHeight}" ${hinge}
        stiffness="${axle.rollStiffness}" damping="${axle.rollStiffness / 15}"/>
      <inertial pos="${x} 0 ${axle.unsprungHeight}" mass="${axle.unsprungMass}" diaginertia="20 4 20"/>
    </body>`;
  const held = (name: string, x: number, y: number) =>
    `<connect body1="${name}" anchor="${x} ${y} 0"/>`;
  return `<mujoco>${options(lateralAcceleration)}
  <worldbody>
    <body name="body"><freejoint/>
      <inertial pos="0 0 ${sprungHeight}" mass="${sprungMass}" diaginertia="400 1500 1600"/>
      ${axle("front", a, front)}${axle("rear", a - wheelbase, rear)}
    </body>
  </worldbody>
  <equality>
    ${held("front", a, front.track / 2)}${held("front", a, -front.track / 2)}
    ${held("rear", a - wheelbase, rear.track / 2)}${held("rear", a - wheelbase, -rear.track / 2)}
  </equality></mujoco>`;
}
