import type { Car } from "@rollbook/lib";
import type { UnitSystem } from "../say/units.js";
import { drawnFor, reader } from "./reader.js";

/** For whom a file of its own was made; the workbook's own car where none is named. */
export interface MadeFor {
  readonly car?: Car;
  readonly units: UnitSystem;
}

/** Lets the cells work for those for whom a file is made. */
export function workFor({ car, units }: MadeFor): void {
  if (car !== undefined) {
    reader.car = car;
    drawnFor.car = car;
  }
  reader.units = units;
  drawnFor.units = units;
}
