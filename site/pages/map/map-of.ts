import {
  applyChange,
  type Car,
  changeTo,
  type MapAxis,
  type MapOf,
  phases,
  USUAL_SPEED,
} from "@rollbook/lib";
import { axesIn, type MapState } from "./state.js";

/** What the map of a state is drawn over: the car with its third lever moved, two axes, the driver. */
export function mapOf(state: MapState, car: Car, axes: readonly MapAxis[]): MapOf {
  const { along, up, third } = axesIn(state, axes);
  return {
    car: third === undefined ? car : moved(car, third, state.value),
    measured: car,
    along,
    up,
    driving: { speed: USUAL_SPEED, ...phases[state.phase] },
  };
}

function moved(car: Car, third: MapAxis, value: number | undefined): Car {
  if (value === undefined) return car;
  const whole = third.parameter === "barPosition"; // a bar has nothing between its positions
  return applyChange(car, changeTo(third, whole ? Math.round(value) : value));
}
