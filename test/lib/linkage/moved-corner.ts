import { requireInRange } from "../../../lib/check.js";
import { type Corner, cornerCarrier } from "../../../lib/linkage/corner.js";
import { atDesign, moved, type Pose } from "../../../lib/linkage/pose.js";
import { contactPatch, settle } from "../../../lib/linkage/settle.js";
import { dot, type Point } from "../../../lib/linkage/space-vector.js";
import {
  risingTwists,
  type WheelPosition,
  type WheelRates,
  wheelPosition,
  wheelRates,
} from "../../../lib/linkage/wheel-position.js";
import { Refusal } from "../../../lib/refusal.js";

/** How far a corner is moved from its design position. */
interface CornerMotion {
  /** Rise of the contact patch against the body, m, > 0 in bump, −0.3 … 0.3. */
  readonly wheelTravel?: number;
  /** Travel of the steering rack, m, > 0 to the left, −0.15 … 0.15. */
  readonly rackTravel?: number;
}

/** A corner after its motion, in the frame of the body. */
interface MovedCorner {
  readonly wheel: WheelPosition;
  readonly rates: WheelRates;
  /** Joints on the upright, by name, for drawings and checks, m. */
  readonly joints: Readonly<Record<string, Point>>;
}

/**
 * Moves one wheel against the body and solves its linkage in space.
 *
 * Stiff links without bushes, stiff tyre: true for joints of metal, a guide for rubber.
 *
 * @throws Refusal when a value is out of range or the links cannot reach
 */
export function moveCorner(corner: Corner, motion: CornerMotion = {}): MovedCorner {
  const travel = requireInRange("wheelTravel", motion.wheelTravel ?? 0, -0.3, 0.3, "m");
  const carrier = cornerCarrier(corner, motion.rackTravel);
  const [wheel] = carrier.wheels;
  if (wheel === undefined) throw new Refusal("wheel-needed", "A corner needs a wheel.");
  const up = { x: 0, y: 0, z: 1 };
  const road = { up, heights: [dot(contactPatch(wheel, atDesign, up), up) + travel] };
  const pose = settle(carrier, road);
  const [twist] = risingTwists(carrier, road, pose);
  if (twist === undefined) throw new Refusal("wheel-needed", "A corner needs a wheel.");
  return {
    wheel: wheelPosition(wheel, pose, up),
    rates: wheelRates(wheel, pose, up, twist),
    joints: jointsOf(corner, pose),
  };
}

function jointsOf(corner: Corner, pose: Pose): Record<string, Point> {
  const onUpright = Object.entries(corner).filter(([name]) => /Outer|Foot|Centre/.test(name));
  return Object.fromEntries(onUpright.map(([name, point]) => [name, moved(pose, point as Point)]));
}
