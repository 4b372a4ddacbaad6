import { type PhaseName, phaseNames } from "../../balance/phases.js";
import { eachAxle } from "../../load/wheels.js";
import type { CornerMoment, DrivenCorner } from "./drive-corner.js";

/** A driven corner between two stations; at the ends what it was there. */
export function cornerMomentAt({ moments }: DrivenCorner, distance: number): CornerMoment {
  const next = moments.findIndex((moment) => moment.distance > distance);
  const after = moments.at(next);
  const before = next > 0 ? moments[next - 1] : after;
  if (before === undefined || after === undefined) throw new RangeError("no moments");
  const width = after.distance - before.distance;
  return width > 0 ? between(before, after, (distance - before.distance) / width) : before;
}

const plain = [
  "distance",
  "time",
  "speed",
  "longitudinalAcceleration",
  "lateralAcceleration",
  "steeringWheel",
  "sideSlip",
  "balance",
  "used",
  "x",
  "y",
  "heading",
] as const;

function between(a: CornerMoment, b: CornerMoment, share: number): CornerMoment {
  const mix = (from: number, to: number) => from + share * (to - from);
  const mixed = plain.map((name) => [name, mix(a[name], b[name])]);
  const load = eachAxle(a.load, (sides, end) => ({
    left: mix(sides.left, b.load[end].left),
    right: mix(sides.right, b.load[end].right),
  }));
  return { ...a, ...Object.fromEntries(mixed), load };
}

/** A part of a corner, m from where braking begins. */
export interface CornerPart {
  readonly phase: PhaseName;
  readonly from: number;
  readonly to: number;
}

/** The parts of a driven corner in the order in which they come. */
export function cornerParts({ moments }: DrivenCorner): CornerPart[] {
  const starts = phaseNames.flatMap((phase) => {
    const first = moments.find((moment) => moment.phase === phase);
    return first === undefined ? [] : [{ phase, from: first.distance }];
  });
  const end = drivenLength({ moments });
  return starts.map((part, i) => ({ ...part, to: starts[i + 1]?.from ?? end }));
}

/** m from where braking begins to the end. */
export const drivenLength = ({ moments }: Pick<DrivenCorner, "moments">): number =>
  moments.at(-1)?.distance ?? 0;

/** The distance at which so much time has passed. */
export function distanceAfter({ moments }: DrivenCorner, time: number): number {
  const next = moments.findIndex((moment) => moment.time > time);
  const [before, after] = [moments[next - 1], moments.at(next)];
  if (after === undefined) return 0;
  if (next < 0 || before === undefined) return after.distance;
  const share = (time - before.time) / (after.time - before.time);
  return before.distance + share * (after.distance - before.distance);
}
