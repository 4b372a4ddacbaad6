import type { UnitSystem } from "../say/units.js";
import { documentOf } from "./document.js";

/** The units in which the reader wants to read. */
export const chosenUnits = documentOf<UnitSystem>({
  key: "units",
  empty: "metric",
  read: (kept) => (kept === "us" || kept === "metric" ? kept : undefined),
});
