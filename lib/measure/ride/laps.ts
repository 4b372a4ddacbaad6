import type { RideCorner } from "./ride-facts.js";

/** The same corner of a place, driven once or several times. */
export type Place = readonly RideCorner[];

const ALIKE = { share: 0.12, angle: 0.12 }; // of the angle turned, and rad
const MOST = 0.8; // share of corners that must go together
const SURE = 0.9; // share of corners that must come again lap after lap

const isAlike = (a: RideCorner, b: RideCorner): boolean =>
  a.way === b.way &&
  Math.abs(a.turned - b.turned) < ALIKE.angle + ALIKE.share * Math.min(a.turned, b.turned);

/** How many corners a lap has: the fewest after which corners come again; all where none do. */
export function cornersOfLap(corners: readonly RideCorner[]): number {
  for (let lap = 1; 2 * lap <= corners.length; lap++) {
    const again = corners.slice(lap);
    const alike = again.filter((one, i) => isAlike(one, corners[i] as RideCorner));
    if (alike.length >= SURE * again.length) return lap;
  }
  return corners.length;
}

const placesOf = (corners: readonly RideCorner[], lap: number): Place[] =>
  Array.from({ length: lap }, (_, k) => corners.filter((_, i) => i % lap === k));

/** A corner in both of two rides. */
export interface Pair {
  readonly first: Place;
  readonly second: Place;
}

/**
 * The corners that two rides have in common: lap on lap, the second ride moved until most go
 * together; where no laps are to be seen, in their order, corners that only one has left out.
 *
 * @returns nothing where they were not driven at the same place
 */
export function placesInCommon(
  first: readonly RideCorner[],
  second: readonly RideCorner[],
): Pair[] | undefined {
  const fewest = Math.min(first.length, second.length);
  const laps = [first, second].map(cornersOfLap).filter((lap) => lap > 0 && 2 * lap <= fewest);
  for (const lap of laps) {
    const [ours, theirs] = [placesOf(first, lap), placesOf(second, lap)];
    const moved = Array.from({ length: lap }, (_, by) => pairs(ours, theirs, by));
    const best = moved.reduce((most, one) => (one.length > most.length ? one : most), []);
    if (best.length >= MOST * lap) return best;
  }
  const inOrder = alignedIn(first, second);
  return inOrder.length > 0 && inOrder.length >= MOST * fewest ? inOrder : undefined;
}

function pairs(ours: readonly Place[], theirs: readonly Place[], by: number): Pair[] {
  return ours.flatMap((first, k) => {
    const second = theirs[(k + by) % theirs.length] ?? [];
    const [a, b] = [first[0], second[0]];
    return a && b && isAlike(a, b) ? [{ first, second }] : [];
  });
}

/** The longest row of alike corners in the order of both – Wagner and Fischer 1974, from memory. */
function alignedIn(first: readonly RideCorner[], second: readonly RideCorner[]): Pair[] {
  const width = second.length + 1;
  const longest = new Uint16Array((first.length + 1) * width);
  const at = (i: number, j: number) => longest[i * width + j] ?? 0;
  const goes = (i: number, j: number) => isAlike(first[i] as RideCorner, second[j] as RideCorner);
  for (let i = first.length - 1; i >= 0; i--)
    for (let j = second.length - 1; j >= 0; j--)
      longest[i * width + j] = Math.max(
        at(i + 1, j),
        at(i, j + 1),
        goes(i, j) ? at(i + 1, j + 1) + 1 : 0,
      );
  const found: Pair[] = [];
  for (let [i, j] = [0, 0]; i < first.length && j < second.length; ) {
    if (goes(i, j) && at(i, j) === at(i + 1, j + 1) + 1)
      found.push({ first: [first[i++] as RideCorner], second: [second[j++] as RideCorner] });
    else if (at(i + 1, j) >= at(i, j + 1)) i++;
    else j++;
  }
  return found;
}
