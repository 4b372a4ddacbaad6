import type { VenueCorner } from "@rollbook/lib";
import { chosenCar } from "@rollbook/page";
import { fromShown } from "../../../say/units.js";
import { type Draft, newDraft } from "../day/draft.js";
import { words } from "../words.js";

const { plan } = words;

/** A corner that nobody has described yet. */
export const plainCorner = (name: string): VenueCorner => ({
  name,
  direction: "left",
  radius: 50,
  speed: fromShown("speed", 70),
});

/** A day of the reader's car with one driver, one corner and no run. */
export const newDay = (): Draft => {
  const venue = { name: plan.newVenue, corners: [plainCorner(plan.corner(1))] };
  return newDraft(chosenCar(), { name: plan.newName, venue, driver: plan.newDriver });
};
