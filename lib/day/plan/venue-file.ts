import { inShort } from "../../car/file/in-short.js";
import {
  group,
  list,
  number,
  numberWithin,
  optional,
  type ShapeOf,
  text,
} from "../../car/file/shape.js";
import { validatorOf } from "../../car/file/validate.js";
import { surfaces, type Venue } from "./venue.js";

/** A venue, field by field. */
export const venueShape: ShapeOf<Venue> = group("A place to drive", {
  name: text("What the venue is called"),
  notes: optional(text("Anything worth knowing")),
  corners: list(
    "The corners in the order in which they come",
    group("A corner as it is driven", {
      name: text("What the corner is called"),
      direction: text("Which way it turns", ["left", "right"]),
      radius: number("cornerRadius"),
      speed: number("speed", "Speed in its middle"),
      grade: optional(numberWithin("Rise over distance; above 0: uphill", "share", -0.25, 0.25)),
      banking: optional(
        numberWithin("How far the road leans; above 0: into the turn", "angle", -0.35, 0.7),
      ),
      surface: optional(text("How even the road is", surfaces)),
    }),
    60,
  ),
});

const faultsOfFields = validatorOf(venueShape);

/** What is wrong with a venue: one sentence for each fault, with field, value and what is allowed. */
export function faultsOfVenue(value: unknown): string[] {
  const faults = faultsOfFields(value);
  return faults.length > 0 ? faults : sharedNames(value as Venue);
}

function sharedNames({ corners }: Venue): string[] {
  const names = corners.map(({ name }) => name);
  return names.flatMap((name, i) =>
    names.indexOf(name) === i
      ? []
      : [`corners.${i}.name is ${inShort(name)} but another corner has that name already.`],
  );
}
