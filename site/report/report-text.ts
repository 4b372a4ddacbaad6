import type { Car } from "../../lib/car/car.js";
import type { UnitSystem } from "../../lib/units.js";
import { balance } from "./balance-text.js";
import { heading, limits, rates } from "./car-text.js";
import { changes } from "./changes-text.js";
import { loads, transfer } from "./loads-text.js";
import type { SetUpReport } from "./set-up-report.js";
import { writer } from "./writer.js";

/** The report as plain text, in the units of the reader. */
export function reportText(report: SetUpReport, car: Car, system: UnitSystem): string {
  const write = writer(system);
  const sections = [
    heading(report, write),
    loads(report, write),
    transfer(report, write),
    rates(report, write),
    balance(report, write),
    limits(report.limits, write),
    changes(report.changes, car, system, write),
  ];
  return `${sections.join("\n\n")}\n`;
}
