import type { Evenly, Row } from "./evenly.js";
import type { Mounting } from "./mounting.js";
import type { Three } from "./ride.js";

/** What was felt along the car's own axes (ISO 8855: x forward, y left, z up), which roll and pitch with its body. */
export interface InCar {
  /** s of the first step */
  readonly start: number;
  readonly count: number;
  /** m/s² of specific force forward */
  readonly along: Row;
  /** m/s² of specific force to the left */
  readonly across: Row;
  /** rad/s, above 0 right side down */
  readonly rollRate: Row;
  /** rad/s, above 0 nose down */
  readonly pitchRate: Row;
  /** rad/s, above 0 to the left */
  readonly yawRate: Row;
  readonly gap: Uint8Array;
}

/** Samples in the device's axes as the car has them, freed of the bias of the turn rates. */
export function inCar(ride: Evenly, mounting: Mounting): InCar {
  const { axes, forceSign, forceScale, turnOrder, turnSign, bias } = mounting;
  const [forward, left, up] = axes;
  const freed = ride.turn.map((row, i) => row.map((value) => value - (bias[i] ?? 0)));
  const turn = turnOrder.map((from) => freed[from] as Row);
  const { start, count, gap } = ride;
  return {
    ...{ start, count, gap },
    along: onto(ride.force, forward, forceSign * forceScale),
    across: onto(ride.force, left, forceSign * forceScale),
    rollRate: onto(turn, forward, turnSign),
    pitchRate: onto(turn, left, turnSign),
    yawRate: onto(turn, up, turnSign),
  };
}

function onto([x, y, z]: readonly Row[], axis: Three, by: number): Row {
  return Float64Array.from(
    x ?? [],
    (value, i) => by * (axis[0] * value + axis[1] * (y?.[i] ?? 0) + axis[2] * (z?.[i] ?? 0)),
  );
}
