import { type Car, demoCar, type Quantity } from "@rollbook/lib";
import { type Reader as SaidTo, type Spelling, spellingFor, spelt } from "../say/reader.js";
import { formatAlike } from "../say/shown-range.js";
import type { UnitSystem } from "../say/units.js";

/** For whom the cells work: in the kernel the workbook's own car in metric units, in a page the reader's. */
interface Reader extends SaidTo {
  car: Car;
  units: UnitSystem;
}

export const reader: Reader = {
  car: demoCar,
  units: "metric",
  get spelling(): Spelling {
    return spellingFor(this.units);
  },
};

/** For whom the kernel drew, whose pictures can stand as they are. */
export const drawnFor: Pick<Reader, "car" | "units"> = { car: demoCar, units: "metric" };

/** The car that the page is about. */
export function currentCar(): Car {
  return reader.car;
}

/** An SI value in the reader's unit, with about as many telling digits as `decimals` gives in metric. */
export function format(quantity: Quantity, value: number, decimals: number): string {
  return formatAlike(quantity, value, decimals, reader.units);
}

/** Tyre or tire, by the units that the reader chose. */
export function spell(text: string, units: UnitSystem = reader.units): string {
  return spelt(text, { spelling: spellingFor(units) });
}
