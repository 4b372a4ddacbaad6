import { axleRollDamping } from "../balance/axle-roll-damping.js";
import type { Axle } from "../car/car.js";

/** What the two dampers of an axle do to its tyres while the body rolls, N. */
export interface DampersInRoll {
  /** more on the tyre of the side that goes down: its damper is pushed in */
  readonly pressed: number;
  /** less on the other tyre: its damper is pulled out */
  readonly relieved: number;
  /** moved from one tyre to the other: the mean of both */
  readonly transfer: number;
  /** down on the body, from rebound harder than bump: what one tyre loses and the other does not gain */
  readonly pull: number;
}

/**
 * Bump and rebound of an axle, told apart, in a body that rolls.
 *
 * A damper s/2 from the middle moves at φ̇·s/2. Bump presses one tyre with cb·φ̇·s/2, rebound takes
 * cr·φ̇·s/2 off the other, rates as felt at the wheel: the transfer knows their sum alone
 * – balance of forces and moments on the axle.
 *
 * @param rollRate - rad/s of the body against the axle, above 0 right side down
 * @example
 * dampersInRoll(demoCar.front, 0.1).relieved // → 170.4, by hand: 5600·0.65²·0.1·1.44/2
 */
export function dampersInRoll(axle: Axle, rollRate: number): DampersInRoll {
  const { damper, spring, track } = axle;
  const atWheel = (damper.motionRatio ?? spring.motionRatio) ** 2;
  const speed = (rollRate * (spring.spacing ?? track)) / 2; // m/s of each damper's wheel
  const transfer = (axleRollDamping(axle) * rollRate) / track;
  const pull = (damper.rebound - damper.bump) * atWheel * Math.abs(speed);
  return {
    pressed: Math.abs(transfer) - pull / 2,
    relieved: Math.abs(transfer) + pull / 2,
    transfer,
    pull,
  };
}
