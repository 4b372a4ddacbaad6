import type { Car } from "../../lib/car/car.js";
import { readerWith, spelt } from "../say/reader.js";
import type { UnitSystem } from "../say/units.js";
import { balance } from "./balance-text.js";
import { heading, limits, rates, tyreNotes } from "./car-text.js";
import { changes } from "./changes-text.js";
import type { HowSure } from "./how-sure.js";
import { loads, transfer } from "./loads-text.js";
import type { SetUpReport } from "./set-up-report.js";
import { travel } from "./travel-text.js";
import { writer } from "./writer.js";

/** The report as plain text, in the units of the reader; with bands where it was worked out how sure it is. */
export function reportText(
  report: SetUpReport,
  car: Car,
  system: UnitSystem,
  sure?: HowSure,
): string {
  const write = writer(system);
  const reader = readerWith(system);
  const moving = transfer(report, write);
  const sections = [
    heading(report, write),
    loads(report, write),
    ...(moving === "" ? [] : [moving]),
    rates(report, write),
    balance(report, write, sure),
    travel(report, write),
    ...tyreNotes(report, reader),
    limits(report.limits, car, write),
    changes(report, car, reader, write, sure),
  ];
  return spelt(`${sections.join("\n\n")}\n`, reader);
}
