import {
  cornerMomentAt,
  type DriveFact,
  type Drives,
  latestDrive,
  type Quantity,
} from "@rollbook/lib";
import { formatAlike } from "../shown-range.js";
import type { UnitSystem } from "../units.js";
import { words } from "./words.js";

/** What a drive showed, in sentences. */
export function driveSays(facts: readonly DriveFact[], units: UnitSystem): string {
  return facts.map((fact) => factSays(fact, showing(units))).join(" ");
}

const showing = (units: UnitSystem) => (quantity: Quantity, value: number, decimals: number) =>
  formatAlike(quantity, value, decimals, units);

function factSays(fact: DriveFact, show: ReturnType<typeof showing>): string {
  const angle = (value: number) => show("angle", value, 1);
  const speed = (value: number) => show("speed", value, 1);
  switch (fact.code) {
    case "known":
      return words.knownSays(
        speed(fact.speed),
        show("time", fact.time, 1),
        show("share", fact.used, 0),
        fact.phase,
      );
    case "slower-than-asked":
      return words.slowerThanAsked(speed(fact.asked));
    case "same-steering":
      return words.sameSteering(angle(fact.known));
    case "changed-steering":
      return words.changedSays(angle(fact.now), angle(fact.known));
    case "again-steering":
      return words.againSays(angle(fact.now), angle(fact.known));
    case "changed-slower":
      return words.changedSlower(speed(fact.speed));
    case "eased-pedals":
      return words.easedPedals(show("share", fact.share, 0));
  }
}

/** What there is at a place, in the latest drive. */
export function hereSays(drives: Drives, distance: number, units: UnitSystem): string {
  const show = showing(units);
  const { phase, speed, steeringWheel } = cornerMomentAt(latestDrive(drives), distance);
  const where = show("length", distance, 0);
  return words.here(where, phase, show("speed", speed, 1), show("angle", steeringWheel, 1));
}
