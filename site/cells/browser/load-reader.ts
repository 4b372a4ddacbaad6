import { reader } from "../reader.js";

const unitsKey = "rollbook:units";

/** Lets the cells work in the units that this reader chose on this device. */
export function loadReader(): void {
  try {
    if (localStorage.getItem(unitsKey) === "us") reader.units = "us";
  } catch {
    // A blocked store: metric.
  }
}

export function chooseUnits(units: typeof reader.units): void {
  try {
    localStorage.setItem(unitsKey, units);
  } catch {
    // A blocked store: for this page only.
  }
}
