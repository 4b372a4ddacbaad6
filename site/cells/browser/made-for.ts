import { carFromJson } from "@rollbook/lib";
import { chosenCar } from "../../store/cars.js";
import { keptBelow } from "../../store/texts.js";
import { chosenUnits } from "../../store/units.js";
import { type MadeFor, workFor } from "../made-for.js";
import { reader } from "../reader.js";

/** For whom the file says that it was made, where it is one of its own. */
function madeFor(): MadeFor | undefined {
  const text = document.getElementById("made-for")?.textContent;
  if (!text) return undefined;
  const { car, units } = JSON.parse(text) as { car?: unknown; units: MadeFor["units"] };
  const own = car === undefined ? undefined : carFromJson(car).car;
  return own ? { car: own, units } : { units };
}

/** Lets the cells work for the car and in the units of this page: the file's own, else the reader's. */
export function beginReader(): void {
  const made = madeFor();
  reader.car = chosenCar();
  if (made) workFor(made);
  if (!made || keptBelow("units").size > 0) reader.units = chosenUnits.now.value;
}
