import type { HandlingCar } from "../balance/handling-car.js";
import { GRAVITY } from "../units.js";

/** A body on its roll axis: all that its roll motion depends on. */
export interface RollingBody {
  /** kg·m: sprung mass times its height above the roll axis */
  readonly lever: number;
  /** kg·m²: the same times how far forward it is, front ahead, rear behind */
  readonly yawLever: number;
  /** kg·m² about the roll axis */
  readonly inertia: number;
  /** N·m·s/rad */
  readonly damping: number;
  /** N·m/rad, less what the weight of the leaning body takes */
  readonly stiffness: number;
}

/** The body of a car on its roll axis. */
export function rollingBody(car: HandlingCar, ahead: number, behind: number): RollingBody {
  const { front, rear, sprungMass, sprungHeight } = car;
  const sprungFront = sprungMass * car.sprungFrontShare;
  const sprungRear = sprungMass - sprungFront;
  const armFront = sprungHeight - front.rollCentreHeight;
  const armRear = sprungHeight - rear.rollCentreHeight;
  const lever = sprungFront * armFront + sprungRear * armRear; // Σ ms·d
  return {
    lever,
    yawLever: sprungFront * armFront * ahead - sprungRear * armRear * behind, // Σ ms·d·x
    inertia: car.rollInertia + sprungFront * armFront ** 2 + sprungRear * armRear ** 2, // Ix + Σ ms·d²
    damping: front.rollDamping + rear.rollDamping,
    stiffness: front.rollStiffness + rear.rollStiffness - lever * GRAVITY, // ΣK − Σ ms·g·d
  };
}
