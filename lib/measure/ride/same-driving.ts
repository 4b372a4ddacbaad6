import { Refusal } from "../../refusal.js";
import { chiSquareAbove } from "../../tails.js";
import { type Pair, type Place, placesInCommon } from "./laps.js";
import type { RideCorner } from "./ride-facts.js";

/** What a driver may do otherwise in a corner. */
export type DrivingHabit = "entrySpeed" | "peak" | "hardestAt" | "radius" | "pace";

/** How one habit differs between two rides, over all corners. */
export interface HabitDifference {
  readonly habit: DrivingHabit;
  /** Of the second ride less the first, mean over corners: a share, for `hardestAt` of the angle turned. */
  readonly by: number;
  /** The same as a driver usually varies from lap to lap. */
  readonly usual: number;
  /** How often chance alone makes them so different, 0–1. */
  readonly byChance: number;
  readonly differs: boolean;
}

/** One corner in both rides: means over its laps, and what stands out. */
export interface SameCorner {
  readonly first: RideCorner;
  readonly second: RideCorner;
  readonly differs: readonly DrivingHabit[];
}

/** Whether two rides were driven the same way. */
export interface SameDriving {
  readonly same: boolean;
  /** Whether laps of these rides say how much the driver varies, or what drivers usually do. */
  readonly variation: "laps" | "usual";
  readonly habits: readonly HabitDifference[];
  readonly corners: readonly SameCorner[];
}

/** How far a club driver's laps differ where no laps tell: common practice, no source. */
const USUAL: Readonly<Record<DrivingHabit, number>> = {
  entrySpeed: 0.03,
  peak: 0.05,
  hardestAt: 0.08,
  radius: 0.08,
  pace: 0.04,
};

const habits = Object.keys(USUAL) as DrivingHabit[];
const LAPS_ENOUGH = 6; // degrees of freedom
const SELDOM = 0.05 / habits.length; // one in twenty that did the same is called different

/** A habit of one corner, such that differences are shares. */
function readingOf(corner: RideCorner, habit: DrivingHabit): number | undefined {
  if (habit === "hardestAt") return corner.hardestAt;
  const value = habit === "pace" ? (corner.ends - corner.begins) / corner.turned : corner[habit];
  return value === undefined || !(value > 0) ? undefined : Math.log(value);
}

const valuesOf = (place: Place, habit: DrivingHabit): number[] =>
  place.flatMap((corner) => readingOf(corner, habit) ?? []);

const meanOf = (values: readonly number[]) =>
  values.reduce((sum, one) => sum + one, 0) / values.length;

/**
 * Whether two rides were driven the same way: entry speed, hardest moment and where it was, line (the
 * least radius) and pace (time for the angle turned) of each corner, held against how much they vary
 * from lap to lap.
 *
 * Of two rides driven the same way, no more than one in twenty is told to differ.
 *
 * @throws Refusal where the two have no corners in common
 */
export function sameDriving(
  first: readonly RideCorner[],
  second: readonly RideCorner[],
): SameDriving {
  const pairs = placesInCommon(first, second);
  if (pairs === undefined || pairs.length === 0)
    throw new Refusal("not-the-same-corners", "The two rides have not the same corners.");
  const told = habits.flatMap((habit) => differenceIn(pairs, habit) ?? []);
  const corners = pairs.map((pair, k) => ({
    first: meanCorner(pair.first),
    second: meanCorner(pair.second),
    differs: told.flatMap(({ off, habit }) =>
      chanceOf(off[k] ?? 0) < SELDOM / pairs.length ? [habit] : [],
    ),
  }));
  return {
    same: told.every(({ differs }) => !differs),
    variation: told.some(({ fromLaps }) => fromLaps) ? "laps" : "usual",
    habits: told.map(({ off: _, fromLaps: __, ...habit }) => habit),
    corners,
  };
}

const chanceOf = (off: number) => chiSquareAbove(off ** 2, 1);

function differenceIn(pairs: readonly Pair[], habit: DrivingHabit) {
  const read = pairs.map(
    ({ first, second }) => [valuesOf(first, habit), valuesOf(second, habit)] as const,
  );
  const known = read.filter(([a, b]) => a.length > 0 && b.length > 0);
  if (known.length === 0) return undefined;
  const { usual, fromLaps } = variationOf(read.flat(), USUAL[habit]);
  const off = read.map(([a, b]) =>
    a.length && b.length
      ? (meanOf(b) - meanOf(a)) / (usual * Math.sqrt(1 / a.length + 1 / b.length))
      : 0,
  );
  const square = off.reduce((sum, one) => sum + one ** 2, 0);
  const together = off.reduce((sum, one) => sum + one, 0) / Math.sqrt(known.length);
  // all corners a little the same way, or some by much: two looks at the same
  const byChance = Math.min(
    1,
    2 * Math.min(chiSquareAbove(square, known.length), chanceOf(together)),
  );
  const by = meanOf(known.map(([a, b]) => meanOf(b) - meanOf(a)));
  return { ...{ habit, by, usual, byChance, off, fromLaps }, differs: byChance < SELDOM };
}

/** Standard deviation from lap to lap, where laps enough tell it. */
function variationOf(groups: readonly (readonly number[])[], otherwise: number) {
  let [square, freedom] = [0, 0];
  for (const group of groups) {
    if (group.length < 2) continue;
    const mean = meanOf(group);
    square += group.reduce((sum, one) => sum + (one - mean) ** 2, 0);
    freedom += group.length - 1;
  }
  if (freedom < LAPS_ENOUGH || square === 0) return { usual: otherwise, fromLaps: false };
  return { usual: Math.sqrt(square / (freedom - 2)), fromLaps: true }; // few laps tell it badly: t has this variance
}

/** A corner as its laps were in the mean; what only some have is left to those. */
function meanCorner(place: Place): RideCorner {
  const [one] = place as [RideCorner];
  const mean = (key: "entrySpeed" | "radius" | "steady") => {
    const values = place.flatMap((corner) => corner[key] ?? []);
    return values.length === 0 ? {} : { [key]: meanOf(values) };
  };
  const all = (key: "turned" | "peak" | "hardestAt" | "rollRate") =>
    meanOf(place.map((corner) => corner[key]));
  const lasts = meanOf(place.map(({ begins, ends }) => ends - begins));
  return {
    ...{ begins: one.begins, ends: one.begins + lasts, way: one.way, turned: all("turned") },
    ...{
      peak: all("peak"),
      hardestAt: all("hardestAt"),
      rollRate: all("rollRate"),
      roll: one.roll,
    },
    ...mean("entrySpeed"),
    ...mean("radius"),
    ...mean("steady"),
  };
}
