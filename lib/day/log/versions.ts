import { standingCar } from "../../balance/standing-car.js";
import type { Car } from "../../car/car.js";
import type { Change } from "../../change/change.js";
import { differenceOfSetUps } from "../plan/difference.js";
import { testedChanges } from "../plan/single.js";
import type { Log, SetUpEntry } from "./log.js";
import { standing } from "./standing.js";

/** A version of a set-up and what is new in it. */
export interface Version {
  readonly entry: SetUpEntry;
  /** The car whose file gave the heights: the first of the chain. */
  readonly measured: Car;
  /** The car of the version it was made from; none of the first, or where that is not in the log. */
  readonly before?: Car;
  /** Against the version it was made from. */
  readonly changes: readonly Change[];
  /** Without the seat turns that only put the car back. */
  readonly tested: readonly Change[];
  /** Paths of what differs and is no set-up change. */
  readonly other: readonly string[];
}

/** Every version of every set-up in a log, oldest first. */
export function versionsOf(log: Log): Version[] {
  const entries = standing(log, "set-up");
  return entries.map((entry) => versionOf(entry, entries));
}

function versionOf(entry: SetUpEntry, all: readonly SetUpEntry[]): Version {
  const measured = firstOf(entry, all).car;
  const before = all.find(({ id }) => id === entry.follows)?.car;
  if (before === undefined) return { entry, measured, changes: [], tested: [], other: [] };
  const { changes, other } = differenceOfSetUps(before, entry.car);
  return {
    entry,
    measured,
    before,
    changes,
    tested: testedChanges(standingCar(before, measured), standingCar(entry.car, measured)),
    other,
  };
}

/** The version that a chain starts with, however the chain is tangled. */
function firstOf(entry: SetUpEntry, all: readonly SetUpEntry[]): SetUpEntry {
  const seen = new Set<string>();
  let first = entry;
  while (first.follows !== undefined && !seen.has(first.id)) {
    seen.add(first.id);
    first = all.find(({ id }) => id === first.follows) ?? first;
  }
  return first;
}

/** An entry that refers to one that is not in the log. */
export interface LooseEnd {
  readonly from: string;
  readonly to: string;
}

/** What a log refers to and does not have: a phone may not have been merged yet. */
export function looseEndsOf(log: Log): LooseEnd[] {
  const ids = new Set(log.entries.map(({ id }) => id));
  const refers = log.entries.flatMap((entry) => {
    const follows = entry.kind === "set-up" ? entry.follows : undefined;
    return [entry.setUp, entry.run, follows].map((to) => [entry.id, to] as const);
  });
  return refers.flatMap(([from, to]) => (to === undefined || ids.has(to) ? [] : [{ from, to }]));
}
