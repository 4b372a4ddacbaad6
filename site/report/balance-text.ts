import { phaseNames } from "../../lib/balance/phases.js";
import type { SetUpReport } from "./set-up-report.js";
import { textTable } from "./text-table.js";
import type { Writer } from "./writer.js";

/** What stands for a margin that is no balance. */
export const DASH = "–";

/** How hard the car can turn in each part of a corner, and which end gives up first. */
export function balance(
  { balance: { phases, ...steady }, figures }: SetUpReport,
  { number, value, change, unit }: Writer,
): string {
  const ay = (x: number) => number("acceleration", x, 2);
  const rows = phaseNames.map((name) => {
    const { lateralAcceleration, mostLateralAcceleration, first, understeerMargin, lifted, tips } =
      phases[name];
    const up = (["front", "rear"] as const).filter((end) => lifted[end]).join(", ");
    const margin = tips ? DASH : change("acceleration", understeerMargin, 2);
    return [
      name,
      ay(lateralAcceleration),
      ay(mostLateralAcceleration),
      margin,
      tips ? "tips over" : first,
      up,
    ];
  });
  const head = ["", "hardest turn", "most side force", "margin", "first", "wheel up"];
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
  const answer = Number.isFinite(figures.yawResponseTime)
    ? [`It answers a small step of steering in ${value("time", figures.yawResponseTime, 3)}.`]
    : [];
  return [
    `Limit in a left corner, ${unit("acceleration")} (margin above 0: the front gives up first)`,
    textTable([head, ...rows]),
    [...words, ...speeds, ...answer].join(" "),
  ].join("\n");
}
