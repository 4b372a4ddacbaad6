import { format } from "@rollbook/cells";
import type { DrivenCorner, Practice } from "@rollbook/lib";
import { words } from "../words.js";
import { momentAt, partsOf } from "./along.js";
import { type Drives, latest } from "./drives.js";

const speedOf = (speed: number): string => format("speed", speed, 1);

/** The steering wheel half-way through the middle of the corner. */
function steeringOf(drive: DrivenCorner): string {
  const middle = partsOf(drive).find(({ phase }) => phase === "middle");
  const at = middle === undefined ? 0 : (middle.from + middle.to) / 2;
  return format("angle", momentAt(drive, at).steeringWheel, 1);
}

/** What the last drive showed. */
export function saysOf({ corner }: Practice, { known, changed, again }: Drives): string {
  if (again) return words.againSays(steeringOf(again), steeringOf(known));
  if (changed) {
    const slower =
      changed.speed < known.speed - 0.1 ? [words.changedSlower(speedOf(changed.speed))] : [];
    return [words.changedSays(steeringOf(changed), steeringOf(known)), ...slower].join(" ");
  }
  const most = known.moments.reduce((a, b) => (b.used > a.used ? b : a));
  const { speed, time } = known;
  const told = words.knownSays(
    speedOf(speed),
    format("time", time, 1),
    format("share", most.used, 0),
    most.phase,
  );
  const asked = corner.speed > speed + 0.3 ? [words.slowerThanAsked(speedOf(corner.speed))] : [];
  return [told, ...asked].join(" ");
}

/** What there is at a place, in the latest drive. */
export function hereSays(drives: Drives, distance: number): string {
  const { phase, speed, steeringWheel } = momentAt(latest(drives), distance);
  const where = format("length", distance, 0);
  return words.here(where, phase, speedOf(speed), format("angle", steeringWheel, 1));
}
