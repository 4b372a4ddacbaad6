import type { VenueCorner } from "@rollbook/lib";
import { chosenCar } from "@rollbook/page";
import { fromShown } from "../../../say/units.js";
import { chosenClass, inChosenClass } from "../../../store/classes.js";
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

/** A day of the reader's car with one driver and no run, at the venue of its class or in one corner. */
export const newDay = (): Draft => {
  const ofClass = chosenClass()?.venue;
  const venue = ofClass ?? { name: plan.newVenue, corners: [plainCorner(plan.corner(1))] };
  return newDraft(inChosenClass(chosenCar()), {
    name: plan.newName,
    venue,
    driver: plan.newDriver,
  });
};
