import { practiceCornerName, type UnnamedCorner, type VenueCorner } from "@rollbook/lib";
import { words } from "./words.js";

/** The corner with its name. */
export function cornerOf(place: UnnamedCorner): VenueCorner {
  const name = practiceCornerName(place);
  return { name: name ? words.corners[name] : words.ownCorner, ...place };
}
