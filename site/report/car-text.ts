import type { Car } from "../../lib/car/car.js";
import { parameters } from "../../lib/parameters.js";
import type { ClassFact } from "../../lib/statics/class-check.js";
import type { Margin } from "../../lib/statics/margins.js";
import type { Quantity } from "../../lib/units.js";
import { factName, factStanding, fixedLevers } from "../say/class-rules.js";
import { figureNames } from "../say/figures.js";
import type { Reader } from "../say/reader.js";
import { tyreDoubtInWords } from "../say/tyre-doubt.js";
import type { SetUpReport } from "./set-up-report.js";
import { textTable } from "./text-table.js";
import type { Writer } from "./writer.js";

/** What was asked, and what the car weighs. */
export function heading({ car, asked, mass, atRest }: SetUpReport, { value }: Writer): string {
  const centre = mass.centreOfGravity;
  return [
    `Set-up report: ${car}`,
    `A corner at ${value("acceleration", asked.lateralAcceleration, 1)} and ${value("speed", asked.speed, 0)}.`,
    `Mass ${value("mass", mass.total, 0)}, of it ${value("mass", mass.sprung, 0)} on the springs; centre of ` +
      `gravity ${value("carLength", centre.height, 3)} high, ${value("carLength", centre.behindFrontAxle, 3)} behind the front axle.`,
    `Front weight ${value("share", atRest.frontShare, 1)}, left ${value("share", atRest.leftShare, 1)}, cross weight ${value("share", atRest.crossShare, 1)}.`,
  ].join("\n");
}

/** How stiff the car is and how it stands. */
export function rates(
  { stiffness, figures }: SetUpReport,
  { number, value, unit }: Writer,
): string {
  const row = (name: string, quantity: Quantity, decimals: number, front: number, rear: number) => [
    `${name}, ${unit(quantity)}`,
    number(quantity, front, decimals),
    number(quantity, rear, decimals),
  ];
  const axle = (name: string, key: keyof typeof stiffness.front, quantity: Quantity) =>
    row(name, quantity, 1, stiffness.front[key], stiffness.rear[key]);
  const figure = (key: "rideFrequency" | "oneWheelRate" | "rideHeight" | "camber" | "toe") => {
    const { name, quantity, decimals } = figureNames[key];
    return row(name, quantity, decimals, figures[key].front, figures[key].rear);
  };
  const table = textTable([
    ["", "front", "rear"],
    axle("wheel rate", "wheelRate", "stiffness"),
    axle("tyre", "tyreStiffness", "stiffness"),
    axle("ride rate", "rideRate", "stiffness"),
    axle("bar at its ends", "barRate", "stiffness"),
    axle("bar in roll", "barRollStiffness", "rollStiffness"),
    axle("axle in roll", "rollStiffness", "rollStiffness"),
    ...(["oneWheelRate", "rideFrequency", "rideHeight", "camber", "toe"] as const).map(figure),
  ]);
  const { rollGradient, rollFrequency, rollDampingRatio } = figures;
  const roll = `Roll ${value("rollGradient", rollGradient, 2)}, at ${value("frequency", rollFrequency, 2)}, damping ${rollDampingRatio.toFixed(2)}.`;
  return `Stiffness and stance\n${table}\n${roll}`;
}

/** How far the car is inside the limits of its class, and what the class forbids. */
export function limits(facts: readonly ClassFact[], car: Car, { value }: Writer): string {
  const fixed = (car.classRules ?? []).filter((rule) => rule.kind === "fixed");
  if (facts.length + fixed.length === 0) return "Class limits\n  The file gives none.";
  const rows = facts.map((fact) => [
    factName(fact, value),
    fact.code === "limit" ? value(quantityOf(fact), fact.value, decimalsOf(fact)) : fact.value,
    factStanding(fact, value).replace(/^broken/, "BROKEN"),
  ]);
  const forbidden = fixed.map((rule) => `  ${fixedLevers(rule)}`);
  return ["Class limits", ...(rows.length > 0 ? [textTable(rows)] : []), ...forbidden].join("\n");
}

const quantityOf = ({ parameter }: Margin) => parameters[parameter].quantity;
const decimalsOf = ({ parameter }: Margin) => parameters[parameter].decimals;

/** What the car asks of its tyres beyond their data; nothing when they cover it. */
export function tyreNotes({ outsideTyreData }: SetUpReport, reader: Reader): string[] {
  if (outsideTyreData.length === 0) return [];
  const lines = outsideTyreData.map((doubt) => `  ${tyreDoubtInWords(doubt, reader)}`);
  return [["Outside the data of the tyres", ...lines].join("\n")];
}
