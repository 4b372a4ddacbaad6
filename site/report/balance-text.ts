import { phaseNames } from "../../lib/balance/phases.js";
import { differentialNotes, easedNotes, nearTippingNotes, yawNote } from "./balance-notes.js";
import type { SetUpReport } from "./set-up-report.js";
import { textTable } from "./text-table.js";
import type { Writer } from "./writer.js";

/** What stands for a margin that is no balance. */
export const DASH = "–";

/** How hard the car can turn in each part of a corner, and which end gives up first. */
export function balance({ balance: told, figures }: SetUpReport, write: Writer): string {
  const { phases, ...steady } = told;
  const { number, value, change, unit } = write;
  const tipsAbove = phaseNames.filter((name) => phases[name].tips);
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
      : [`Understeer gradient ${value("understeerGradient", gradient, 2)}.`, GRADIENT];
  const answer = Number.isFinite(figures.yawResponseTime)
    ? [`It answers a small step of steering in ${value("time", figures.yawResponseTime, 3)}.`]
    : [];
  return [
    `Limit in a left corner, ${unit("acceleration")} (margin above 0: the front gives up first)`,
    textTable([head, ...rows]),
    ...easedNotes(told.eased, value),
    ...nearTippingNotes(told.nearTipping, tipsAbove, value),
    ...yawNote(yawMargins(phases), value),
    ...differentialNotes(told.differentialDoubts, value),
    [...words, ...speeds, ...answer].join(" "),
  ].join("\n");
}

const GRADIENT =
  "On the road, cars measure more, often 2 to 6 °/g (common practice, no source): steering column, caster and the hands on the wheel give way too, and are not counted.";

/** Parts of a corner in which the car tips over have no margin to speak of. */
function yawMargins(phases: SetUpReport["balance"]["phases"]) {
  const told = phaseNames.filter((name) => !phases[name].tips);
  return Object.fromEntries(told.map((name) => [name, phases[name].yawAccelerationMargin]));
}
