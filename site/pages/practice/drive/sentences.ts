import { format } from "@rollbook/cells";
import { type DrivenCorner, fromShown, type Practice } from "@rollbook/lib";
import { words } from "../words.js";
import { momentAt, partsOf } from "./along.js";
import { type Drives, latest } from "./drives.js";

const speedOf = (speed: number): string => format("speed", speed, 1);

/** The steering wheel half-way through the middle of the corner. */
function steeringOf(drive: DrivenCorner): number {
  const middle = partsOf(drive).find(({ phase }) => phase === "middle");
  const at = middle === undefined ? 0 : (middle.from + middle.to) / 2;
  return Math.abs(momentAt(drive, at).steeringWheel);
}

const angle = (value: number): string => format("angle", value, 1);

const ALIKE = fromShown("angle", 1); // of the steering wheel, which no driver tells apart

const steeringSays = (changed: number, known: number): string =>
  Math.abs(changed - known) < ALIKE
    ? words.sameSteering(angle(known))
    : words.changedSays(angle(changed), angle(known));

/** What the last drive showed. */
export function saysOf({ corner }: Practice, { known, changed, again }: Drives): string {
  if (again) return words.againSays(angle(steeringOf(again)), angle(steeringOf(known)));
  if (changed) return changedSays(changed, known);
  const most = known.moments.reduce((a, b) => (b.used > a.used ? b : a));
  const [used, time] = [format("share", most.used, 0), format("time", known.time, 1)];
  return [
    words.knownSays(speedOf(known.speed), time, used, most.phase),
    ...(corner.speed > known.speed + TELLING ? [words.slowerThanAsked(speedOf(corner.speed))] : []),
    ...(known.effort < 1 ? [words.easedPedals(format("share", known.effort, 0))] : []),
  ].join(" ");
}

const TELLING = 0.15; // m/s that are worth a sentence

function changedSays(changed: DrivenCorner, known: DrivenCorner): string {
  const slower = changed.speed < known.speed - TELLING;
  const easier = changed.effort < known.effort;
  return [
    steeringSays(steeringOf(changed), steeringOf(known)),
    ...(slower ? [words.changedSlower(speedOf(changed.speed))] : []),
    ...(easier ? [words.easedPedals(format("share", changed.effort, 0))] : []),
  ].join(" ");
}

/** What there is at a place, in the latest drive. */
export function hereSays(drives: Drives, distance: number): string {
  const { phase, speed, steeringWheel } = momentAt(latest(drives), distance);
  const where = format("length", distance, 0);
  return words.here(where, phase, speedOf(speed), format("angle", steeringWheel, 1));
}
