import { dataTyreOf } from "../car/tyres.js";
import type { Tyre, TyreState, ValueRange } from "../tyre/tyre.js";
import { isLoaded, outsideValidRange } from "../tyre/valid-range.js";
import { carBalance } from "./car-balance.js";
import type { HandlingAxle, HandlingCar } from "./handling-car.js";
import { mirrorCar } from "./mirror-car.js";
import type { AxleStance } from "./stance.js";
import { stanceInTurn } from "./stance-in-turn.js";
import type { StandingCar } from "./standing-car.js";

/** Something that the tyres of an axle are under and their data do not reach. */
export interface TyreDoubt {
  readonly end: "front" | "rear";
  /** Name of the tyre in the car file. */
  readonly tyre: string;
  readonly what: "pressure" | "load" | "inclination";
  /** Pa, N, or rad of lean without sign, of the tyre that is farthest outside */
  readonly value: number;
  /** the same unit: what the data reach */
  readonly range: ValueRange;
}

const kinds = ["pressure", "load", "inclination"] as const;

/**
 * Where a car asks its tyres for more than their data: pressures as set, and load and lean in the
 * middle of a left or right corner at the limit. There the model answers with the end of the data.
 *
 * @param speed - m/s, 0.5 to 200
 * @returns one entry an axle and kind; none for a car that its tyres' data cover
 * @throws Refusal when the car cannot stand on its springs, or for a speed out of range
 */
export function tyreDoubts({ car, handling }: StandingCar, speed: number): TyreDoubt[] {
  const [left, right] = [atLimit(handling, speed), atLimit(mirrorCar(handling), speed)];
  return (["front", "rear"] as const).flatMap((end) => {
    const { name } = car[end].tyre;
    const tyre = dataTyreOf(car[end].tyre);
    const states = [...left[end], ...right[end]];
    return kinds.flatMap((what): TyreDoubt[] => {
      const value = farthestOutside(tyre, states, what);
      return value === undefined ? [] : [{ end, tyre: name, what, value, range: tyre.valid[what] }];
    });
  });
}

/** What each tyre is under in the hardest left turn of a car. */
function atLimit(car: HandlingCar, speed: number) {
  const ay = carBalance(car, { speed }).lateralAcceleration;
  const { front, rear } = stanceInTurn(car, { speed }, ay);
  return { front: statesOf(car.front, front), rear: statesOf(car.rear, rear) };
}

function statesOf({ pressure }: HandlingAxle, { left, right }: AxleStance) {
  const state = ({ load, inclination }: typeof left, set: number): Required<TyreState> =>
    isLoaded(load)
      ? { load, pressure: set, inclination: Math.abs(inclination) }
      : { load: 0, pressure: set, inclination: 0 }; // in the air
  return [state(left, pressure.left), state(right, pressure.right)];
}

function farthestOutside(
  tyre: Tyre,
  states: readonly Required<TyreState>[],
  what: TyreDoubt["what"],
): number | undefined {
  const { minimum, maximum } = tyre.valid[what];
  const beyond = (value: number) => Math.max(minimum - value, value - maximum);
  return states
    .filter((state) => outsideValidRange(tyre, state).includes(what))
    .map((state) => state[what])
    .sort((a, b) => beyond(b) - beyond(a))[0];
}
