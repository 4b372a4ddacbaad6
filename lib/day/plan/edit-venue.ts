import type { Venue, VenueCorner } from "./venue.js";

/** The venue with one corner exchanged. */
export const withCorner = (venue: Venue, index: number, corner: VenueCorner): Venue => ({
  ...venue,
  corners: venue.corners.map((old, i) => (i === index ? corner : old)),
});

/** The venue without one corner. */
export const withoutCorner = (venue: Venue, index: number): Venue => ({
  ...venue,
  corners: venue.corners.filter((_, i) => i !== index),
});

/** The venue with one corner a place earlier or later; at the ends as it was. */
export function withCornerMoved(venue: Venue, from: number, by: -1 | 1): Venue {
  const corner = venue.corners[from];
  const to = from + by;
  if (corner === undefined || to < 0 || to >= venue.corners.length) return venue;
  const { corners } = withoutCorner(venue, from);
  return { ...venue, corners: [...corners.slice(0, to), corner, ...corners.slice(to)] };
}

/** Whether another corner has that name already. */
export const isTakenName = ({ corners }: Venue, index: number, name: string): boolean =>
  corners.some((corner, i) => i !== index && corner.name === name);

/** A name that no corner of the venue has yet. */
export function freeName({ corners }: Venue, nameFor: (number: number) => string): string {
  let number = corners.length + 1;
  while (corners.some(({ name }) => name === nameFor(number))) number += 1;
  return nameFor(number);
}
