import type { PhaseName } from "../../balance/phases.js";
import { phaseNames } from "../../balance/phases.js";
import { standingCar } from "../../balance/standing-car.js";
import type { Car } from "../../car/car.js";
import { demoCar } from "../../car/demo-car.js";
import { applyChange } from "../../change/apply.js";
import type { Change } from "../../change/change.js";
import { baselineOf, effectOf } from "../../change/effect.js";
import { requireInRange } from "../../check.js";
import { pick, randomFrom } from "../../random.js";
import { Refusal } from "../../refusal.js";
import { cellsOf } from "../debrief/cells.js";
import { LEAST_FELT_SHIFT, MARGIN_PER_POINT, pointsFelt } from "../debrief/feel.js";
import type { DriverInput, Report } from "../log/report.js";
import { candidatesFor } from "../plan/propose.js";
import type { PhaseShifts } from "../plan/sheet-row.js";
import type { VenueCorner } from "../plan/venue.js";
import { type DrivenCorner, driveCorner } from "./drive-corner.js";

/** A puzzle: somebody changed one thing on a car. Seed, corner and car make the same one again. */
export interface Practice {
  /** Whole number from 0. */
  readonly seed: number;
  readonly corner: VenueCorner;
  /** The car as the learner knows it. */
  readonly car: Car;
  /** What was changed: not shown until the learner has answered. */
  readonly hidden: Change;
  /** The car as it is now, seats put back. */
  readonly changed: Car;
  /** How far the hidden change moved balance in this corner, m/s², above 0 towards the front. */
  readonly shifts: PhaseShifts;
}

/** A corner to start with. */
export const practiceCorner: VenueCorner = {
  name: "Practice corner",
  direction: "left",
  radius: 50,
  speed: 22,
};

const LARGEST_SEED = 2 ** 31 - 1;

/**
 * The puzzle of a seed: one change that can be felt in this corner and is inside all limits.
 *
 * @throws Refusal when the seed is not a whole number from 0, or no change of the car can be felt
 */
export function practiceFrom(
  seed: number,
  corner: VenueCorner = practiceCorner,
  car: Car = demoCar,
): Practice {
  requireInRange("seed", seed, 0, LARGEST_SEED);
  if (!Number.isInteger(seed))
    throw new Refusal("not-whole", `seed is ${seed} but must be a whole number.`);
  const random = randomFrom(seed);
  let left = changesToHide(car, corner.speed);
  for (;;) {
    const hidden = pickByLever(left, random);
    if (hidden === undefined) break;
    const changed = carWith(hidden, car, car);
    const shifts = shiftsIn(corner, car, changed, car);
    if (canBeFelt(shifts)) return { seed, corner, car, hidden, changed, shifts };
    left = left.filter((change) => change !== hidden);
  }
  throw new Refusal(
    "nothing-felt",
    "Nothing that can be felt in this corner can be changed on this car.",
  );
}

const hideable = new WeakMap<Car, Map<number, readonly Change[]>>();

/** What can be felt of a car at a speed: worked out once, since it is the same for every seed. */
function changesToHide(car: Car, speed: number): readonly Change[] {
  const known = hideable.get(car) ?? new Map<number, readonly Change[]>();
  const changes =
    known.get(speed) ?? candidatesFor(standingCar(car), speed).map(({ change }) => change);
  hideable.set(car, known.set(speed, changes));
  return changes;
}

/** Each lever is as likely as any other, however many ways it can be moved. */
function pickByLever(changes: readonly Change[], random: () => number): Change | undefined {
  const lever = pick([...new Set(changes.map((change) => change.lever))], random);
  return pick(
    changes.filter((change) => change.lever === lever),
    random,
  );
}

/** What moves balance on a level road may do little in a corner that is banked, bumpy or slow. */
const canBeFelt = (shifts: PhaseShifts): boolean =>
  phaseNames.some((name) => Math.abs(shifts[name]) >= LEAST_FELT_SHIFT);

/** The car with a change made and the seats put back where they can do it. */
export function carWith(change: Change, car: Car, measured: Car): Car {
  applyChange(car, change); // refuses before anything is worked out
  const effect = effectOf(change, baselineOf(standingCar(car, measured)));
  return (effect.putBack ?? effect).car;
}

/** How far balance moves in each part of one corner, m/s², above 0 towards the front. */
export function shiftsIn(corner: VenueCorner, before: Car, after: Car, measured: Car): PhaseShifts {
  const place = { name: corner.name, corners: [corner] };
  const was = cellsOf(standingCar(before, measured), place);
  const is = cellsOf(standingCar(after, measured), place, was);
  const shift = (i: number) => (is[i]?.balance ?? 0) - (was[i]?.balance ?? 0);
  return Object.fromEntries(phaseNames.map((name, i) => [name, shift(i)])) as PhaseShifts;
}

/** Both cars through the corner, the known one first, at the same speed if the second one can. */
export function bothDrives({ car, changed, corner }: Practice): {
  readonly before: DrivenCorner;
  readonly after: DrivenCorner;
} {
  const before = driveCorner(car, corner);
  return { before, after: driveCorner(changed, corner, { measured: car, wanted: before.speed }) };
}

/** What a driver does in each part of a corner. */
const inputIn: Readonly<Record<PhaseName, DriverInput>> = {
  "braking in": "braking",
  "turn-in": "releasing the brake",
  middle: "steady",
  "power on": "throttle",
};

const DOUBT = 0.4; // points by which a driver may be off, either way – common practice, no source

/** What the driver reports of the changed car against the known one: felt, rounded, not without doubt. */
export function driverReports({ seed, corner, shifts }: Practice): Report[] {
  const random = randomFrom(seed + 1);
  return phaseNames.map((phase) => {
    const doubt = (2 * random() - 1) * DOUBT * MARGIN_PER_POINT;
    return {
      corner: corner.name,
      phase,
      input: inputIn[phase],
      balance: pointsFelt(shifts[phase] + doubt),
      howOften: "every lap",
      confidence: "fairly sure",
    };
  });
}
