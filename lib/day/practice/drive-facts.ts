import type { PhaseName } from "../../balance/phases.js";
import { fromHandy } from "../../units.js";
import { cornerMomentAt, cornerParts } from "./along.js";
import type { DrivenCorner } from "./drive-corner.js";
import type { Drives } from "./drives.js";
import type { Practice } from "./practice.js";

/** Something worth saying of a drive. */
export type DriveFact =
  | {
      readonly code: "known";
      readonly speed: number;
      readonly time: number;
      /** Where it comes nearest its limit, and to what share of it. */
      readonly phase: PhaseName;
      readonly used: number;
    }
  | { readonly code: "slower-than-asked"; readonly asked: number }
  | { readonly code: "same-steering"; readonly known: number }
  | {
      readonly code: "changed-steering" | "again-steering";
      readonly now: number;
      readonly known: number;
    }
  | { readonly code: "changed-slower"; readonly speed: number }
  | { readonly code: "eased-pedals"; readonly share: number };

/** The steering wheel half-way through the middle of the corner. */
function steeringOf(drive: DrivenCorner): number {
  const middle = cornerParts(drive).find(({ phase }) => phase === "middle");
  const at = middle === undefined ? 0 : (middle.from + middle.to) / 2;
  return Math.abs(cornerMomentAt(drive, at).steeringWheel);
}

/** How much more the wheel is turned into the corner in one part of it, mean over that part, rad. */
export interface SteeringDifference {
  readonly phase: PhaseName;
  readonly by: number;
}

const LOOKS = 8; // places in a part

/** How much more a drive turns the wheel into the corner than the known one, part by part. */
export function steeringDifferences(
  drive: DrivenCorner,
  known: DrivenCorner,
): SteeringDifference[] {
  const at = (distance: number) => cornerMomentAt(known, distance).steeringWheel;
  return cornerParts(known).map(({ phase, from, to }) => {
    const places = Array.from(
      { length: LOOKS },
      (_, i) => from + ((i + 0.5) / LOOKS) * (to - from),
    );
    const into = Math.sign(mean(places.map(at))) || 1;
    const more = places.map((place) => cornerMomentAt(drive, place).steeringWheel - at(place));
    return { phase, by: into * mean(more) };
  });
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const ALIKE = fromHandy("angle", 1); // of the steering wheel, which no driver tells apart
const TELLING = 0.15; // m/s that are worth a sentence

/** What the last drive showed. */
export function driveFacts({ corner }: Practice, { known, changed, again }: Drives): DriveFact[] {
  if (again) return [{ code: "again-steering", now: steeringOf(again), known: steeringOf(known) }];
  if (changed) return changedFacts(changed, known);
  const { phase, used } = known.moments.reduce((a, b) => (b.used > a.used ? b : a));
  return [
    { code: "known", speed: known.speed, time: known.time, phase, used },
    ...(corner.speed > known.speed + TELLING
      ? [{ code: "slower-than-asked", asked: corner.speed } as const]
      : []),
    ...(known.effort < 1 ? [{ code: "eased-pedals", share: known.effort } as const] : []),
  ];
}

function changedFacts(changed: DrivenCorner, known: DrivenCorner): DriveFact[] {
  const steering = { now: steeringOf(changed), known: steeringOf(known) };
  const alike = Math.abs(steering.now - steering.known) < ALIKE;
  return [
    alike
      ? { code: "same-steering", known: steering.known }
      : { code: "changed-steering", ...steering },
    ...(changed.speed < known.speed - TELLING
      ? [{ code: "changed-slower", speed: changed.speed } as const]
      : []),
    ...(changed.effort < known.effort
      ? [{ code: "eased-pedals", share: changed.effort } as const]
      : []),
  ];
}
