import type { StandingCar } from "../../balance/standing-car.js";
import { type Cell, cellIn } from "../debrief/cells.js";
import type { NamedReport } from "../debrief/named-report.js";
import { cornerNamed, type Venue, type VenueCorner } from "../plan/venue.js";
import type { Target } from "./target.js";

/** A part of a corner that somebody named beside those that are asked about, and the car there. */
export interface NamedPlace {
  readonly corner: VenueCorner;
  readonly named: readonly NamedReport[];
  readonly before: Cell;
}

/** The places that are asked about, and the car as it is there. */
interface Asked {
  readonly before: StandingCar;
  readonly targets: readonly Target[];
  readonly cells: readonly Cell[];
}

/** The places that drivers named in a run beside those that are asked about, and the car as it is there. */
export function namedPlacesOf(
  named: readonly NamedReport[],
  asked: Asked,
  venue?: Venue,
): NamedPlace[] {
  const places = new Map<string, NamedReport[]>();
  for (const one of named) {
    const { corner = "", phase = "" } = one.report;
    const key = JSON.stringify([corner, phase]);
    if (!isAskedAbout(corner, phase, asked.targets))
      places.set(key, [...(places.get(key) ?? []), one]);
  }
  return [...places.values()].flatMap((group) => {
    const { corner: name, phase, balance } = group[0]?.report ?? {};
    const corner = venue && cornerNamed(venue, name);
    if (corner === undefined || phase === undefined || balance === undefined) return [];
    const known = asked.cells.find((cell) => cell.corner === corner.name && cell.phase === phase);
    return [{ corner, named: group, before: known ?? cellIn(asked.before, corner, phase) }];
  });
}

/** Whether a part of a corner is one that the change is for. */
export const isAskedAbout = (corner: string, phase: string, targets: readonly Target[]): boolean =>
  targets.some((to) => to.phase === phase && to.corners.some(({ name }) => name === corner));
