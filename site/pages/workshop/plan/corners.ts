import type { Venue, VenueCorner } from "@rollbook/lib";

/** A list with one item moved by one place. */
export function moved<Item>(items: readonly Item[], from: number, by: -1 | 1): readonly Item[] {
  const to = from + by;
  if (to < 0 || to >= items.length) return items;
  const without = items.filter((_, i) => i !== from);
  const item = items[from];
  return item === undefined ? items : [...without.slice(0, to), item, ...without.slice(to)];
}

/** The venue with one corner exchanged. */
export const withCorner = (venue: Venue, index: number, corner: VenueCorner): Venue => ({
  ...venue,
  corners: venue.corners.map((old, i) => (i === index ? corner : old)),
});

/** Whether another corner has that name already. */
export const isTaken = ({ corners }: Venue, index: number, name: string): boolean =>
  corners.some((corner, i) => i !== index && corner.name === name);

/** A name that no corner of the venue has yet. */
export function freeName({ corners }: Venue, nameFor: (number: number) => string): string {
  let number = corners.length + 1;
  while (corners.some(({ name }) => name === nameFor(number))) number += 1;
  return nameFor(number);
}
