import type { Axle } from "./car.js";

/** Where the free travel of an axle's wheels ends, and how its stops then push. */
export interface Stops {
  /** m that a wheel rises freely; Infinity where the file does not say */
  readonly bumpTravel: number;
  /** m that a wheel falls freely; Infinity where the file does not say */
  readonly droopTravel: number;
  /** N/m² of the bump stop at the wheel: its force is ½·c·δ² at δ beyond the free travel */
  readonly bumpStop: number;
  /** N/m², the same in droop */
  readonly droopStop: number;
}

/** N/m²: the rate at the wheel grows by 5 N/mm for each mm of stop – common practice, no source. */
const USUAL_STOP = 5e6;

/** The stops of an axle, with what is usual where its file says nothing. */
export function stopsOf({ geometry }: Axle): Stops {
  const { bumpTravel = Infinity, droopTravel = Infinity } = geometry;
  const { bumpStop = USUAL_STOP, droopStop = USUAL_STOP } = geometry;
  return { bumpTravel, droopTravel, bumpStop, droopStop };
}
