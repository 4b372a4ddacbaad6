import { phaseNames } from "../../lib/balance/phases.js";
import type { Car } from "../../lib/car/car.js";
import { labelOf } from "../../lib/change/label.js";
import { figureNames, movedInWords, signed } from "../../lib/change/moved.js";
import type { Wheels } from "../../lib/load/wheels.js";
import { parameters } from "../../lib/parameters.js";
import { decimalsIn } from "../../lib/shown-range.js";
import type { Margin } from "../../lib/statics/margins.js";
import {
  format,
  formatNumber,
  type Quantity,
  toShown,
  type UnitSystem,
  unitOf,
} from "../../lib/units.js";
import type { SetUpReport } from "./set-up-report.js";
import { textTable } from "./text-table.js";

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
    changes(named(report.changes, car, system), write, system),
  ];
  return `${sections.join("\n\n")}\n`;
}

/** Writes a quantity with so many digits in metric units, alone or with its unit. */
interface Writer {
  readonly number: (quantity: Quantity, value: number, decimals: number) => string;
  readonly value: (quantity: Quantity, value: number, decimals: number) => string;
  /** With + or − in front. */
  readonly change: (quantity: Quantity, value: number, decimals: number) => string;
  readonly unit: (quantity: Quantity) => string;
}

function writer(system: UnitSystem): Writer {
  const digits = (quantity: Quantity, decimals: number) => decimalsIn(quantity, decimals, system);
  return {
    number: (quantity, value, decimals) =>
      formatNumber(toShown(quantity, value, system), digits(quantity, decimals)),
    change: (quantity, value, decimals) =>
      signed(toShown(quantity, value, system), digits(quantity, decimals)),
    value: (quantity, value, decimals) =>
      format(quantity, value, digits(quantity, decimals), system).replace("\u00a0", " "),
    unit: (quantity) => unitOf(quantity, system),
  };
}

function heading({ car, asked, mass, atRest }: SetUpReport, { value }: Writer): string {
  const centre = mass.centreOfGravity;
  return [
    `Set-up report: ${car}`,
    `A corner at ${value("acceleration", asked.lateralAcceleration, 1)} and ${value("speed", asked.speed, 0)}.`,
    `Mass ${value("mass", mass.total, 0)}, of it ${value("mass", mass.sprung, 0)} on the springs; centre of ` +
      `gravity ${value("length", centre.height, 3)} high, ${value("length", centre.behindFrontAxle, 3)} behind the front axle.`,
    `Front weight ${value("share", atRest.frontShare, 1)}, left ${value("share", atRest.leftShare, 1)}, cross weight ${value("share", atRest.crossShare, 1)}.`,
  ].join("\n");
}

function loads({ atRest, inTurn }: SetUpReport, { number, unit }: Writer): string {
  const row = (name: string, load: Wheels<number>) => [
    name,
    ...[load.front.left, load.front.right, load.rear.left, load.rear.right].map((one) =>
      number("force", one, 0),
    ),
  ];
  const turning = inTurn.load
    ? [row("left turn", inTurn.load.leftTurn), row("right turn", inTurn.load.rightTurn)]
    : [];
  const head = ["", "front left", "front right", "rear left", "rear right"];
  const over = inTurn.load ? "" : "\nThe car tips over before it turns so hard.";
  return `Wheel loads, ${unit("force")}\n${textTable([head, row("at rest", atRest.load), ...turning])}${over}`;
}

function transfer({ inTurn }: SetUpReport, { number, value, unit }: Writer): string {
  const part = (name: string, key: "elastic" | "geometric" | "unsprung" | "total") => {
    const [front, rear] = [inTurn.front[key], inTurn.rear[key]];
    const share = front + rear === 0 ? 0.5 : front / (front + rear);
    return [name, number("force", front, 0), number("force", rear, 0), number("share", share, 1)];
  };
  const table = textTable([
    ["", "front", "rear", "front share %"],
    part("springs, bars, tyres", "elastic"),
    part("links, at once", "geometric"),
    part("wheels themselves", "unsprung"),
    part("together", "total"),
  ]);
  const lifted = (["front", "rear"] as const).filter((end) => inTurn[end].lifted);
  const up = lifted.length === 0 ? "" : ` Inside wheel off the ground: ${lifted.join(" and ")}.`;
  const roll = value("angle", (inTurn.rollAngle.front + inTurn.rollAngle.rear) / 2, 2);
  return `Load transfer in that corner, ${unit("force")}\n${table}\nThe body rolls ${roll}.${up}`;
}

function rates({ stiffness, figures }: SetUpReport, { number, value, unit }: Writer): string {
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

function balance(
  { balance: { phases, ...steady } }: SetUpReport,
  { number, value, change, unit }: Writer,
): string {
  const ay = (x: number) => number("acceleration", x, 2);
  const rows = phaseNames.map((name) => {
    const { lateralAcceleration, front, rear, first, understeerMargin, lifted } = phases[name];
    const up = (["front", "rear"] as const).filter((end) => lifted[end]).join(", ");
    const shift = change("acceleration", understeerMargin, 2);
    return [
      name,
      ay(lateralAcceleration),
      ay(front.lateralAcceleration),
      ay(rear.lateralAcceleration),
      shift,
      first,
      up,
    ];
  });
  const head = ["", "car", "front", "rear", "margin", "first", "wheel up"];
  const gradient = steady.understeerGradient;
  const speeds = [
    ["Characteristic", steady.characteristicSpeed] as const,
    ["Critical", steady.criticalSpeed] as const,
  ].flatMap(([name, speed]) =>
    speed === undefined ? [] : `${name} speed ${value("speed", speed, 0)}.`,
  );
  const words =
    gradient === undefined
      ? []
      : [`Understeer gradient ${value("understeerGradient", gradient, 2)}.`];
  return [
    `Limit in a left corner, ${unit("acceleration")} (margin above 0: the front gives up first)`,
    textTable([head, ...rows]),
    [...words, ...speeds].join(" "),
  ].join("\n");
}

function limits(margins: readonly Margin[], { value }: Writer): string {
  if (margins.length === 0) return "Class limits\n  The file gives none.";
  const rows = margins.map(({ parameter, where, value: now, limit, kind, margin }) => {
    const { name, quantity, decimals } = parameters[parameter];
    const shown = (x: number) => value(quantity, x, decimals);
    return [
      `${name}, ${where}`,
      shown(now),
      `${kind} ${shown(limit)}`,
      margin < 0 ? "BROKEN" : `${shown(margin)} left`,
    ];
  });
  return `Class limits\n${textTable(rows)}`;
}

/** The rows with their labels in the units of the reader. */
function named(rows: SetUpReport["changes"], car: Car, system: UnitSystem): SetUpReport["changes"] {
  return rows.map((row) => ({ ...row, label: labelOf(row.change, car, system) }));
}

function changes(
  rows: SetUpReport["changes"],
  { unit, change }: Writer,
  system: UnitSystem,
): string {
  const shift = (x: number) => change("acceleration", x, 3);
  const table = rows.map((row) => {
    if (row.moved === undefined) return [row.label];
    const { phases } = row.moved;
    return [row.label, ...phaseNames.map((name) => shift(phases[name].understeerMargin))];
  });
  const also = rows.map((row) => {
    if (row.moved === undefined) return `  ${row.label}: ${row.refused}`;
    const parts = [...movedInWords(row.moved.figures, system), ...seats(row), ...broken(row)];
    return `  ${row.label}: ${parts.length === 0 ? "nothing else" : parts.join("; ")}.`;
  });
  return [
    `Single changes: shift of the margin, ${unit("acceleration")} (above 0: towards understeer)`,
    textTable([["", ...phaseNames], ...table]),
    "",
    "What else each change moves",
    ...also,
  ].join("\n");
}

type Row = SetUpReport["changes"][number];

function seats({ putBack }: Row): string[] {
  if (putBack === undefined) return [];
  const { front, rear } = putBack.turns;
  const four = [front.left, front.right, rear.left, rear.right].map((turns) => signed(turns, 1));
  return [`put back with seat turns ${four.join(" / ")}`];
}

function broken({ broken: margins = [] }: Row): string[] {
  return margins.map(
    ({ parameter, where }) => `BREAKS ${parameters[parameter].name.toLowerCase()} ${where}`,
  );
}
