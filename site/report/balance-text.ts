import { type PhaseName, phaseNames } from "../../lib/balance/phases.js";
import type { MarginBand } from "../../lib/certainty/margin-bands.js";
import { differentialNotes, easedNotes, nearTippingNotes, yawNote } from "../say/balance-notes.js";
import type { HowSure } from "./how-sure.js";
import type { SetUpReport } from "./set-up-report.js";
import { bandsNote, widestNote } from "./sure-text.js";
import { textTable } from "./text-table.js";
import type { Writer } from "./writer.js";

/** What stands for a margin that is no balance. */
export const DASH = "–";

/** How hard the car can turn in each part of a corner, and which end gives up first. */
export function balance(
  { balance: told, figures }: SetUpReport,
  write: Writer,
  sure?: HowSure,
): string {
  const { phases } = told;
  const tipsAbove = phaseNames.filter((name) => phases[name].tips);
  const { value, unit } = write;
  const rows = phaseNames.map((name) => limitRow(name, phases[name], write, sure?.balance[name]));
  return [
    `Limit in a left corner, ${unit("acceleration")} (margin above 0: the front gives up first)`,
    textTable([headOf(sure !== undefined), ...rows]),
    ...(sure ? sureNotes(sure) : []),
    ...easedNotes(told.eased, value),
    ...nearTippingNotes(told.nearTipping, tipsAbove, value),
    ...yawNote(yawMargins(phases), value),
    ...differentialNotes(told.differentialDoubts, value),
    belowLimit(told, figures.yawResponseTime, value),
  ].join("\n");
}

function headOf(banded: boolean): string[] {
  const band = banded ? [BAND] : [];
  const first = banded ? ["first", ""] : ["first"];
  return ["", "hardest turn", ...band, "most side force", "margin", ...band, ...first, "wheel up"];
}

/** How the car steers and answers far from its limit. */
function belowLimit(
  steady: SetUpReport["balance"],
  yawResponseTime: number,
  value: Writer["value"],
): string {
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
  const answer = Number.isFinite(yawResponseTime)
    ? [`It answers a small step of steering in ${value("time", yawResponseTime, 3)}.`]
    : [];
  return [...words, ...speeds, ...answer].join(" ");
}

const BAND = "5 to 95 %";

/** One part of a corner; figures have no more digits than their bands. */
function limitRow(
  name: PhaseName,
  phase: SetUpReport["balance"]["phases"][PhaseName],
  { number, change }: Writer,
  sure?: MarginBand,
): string[] {
  const { lateralAcceleration, mostLateralAcceleration, first, understeerMargin, lifted } = phase;
  const tips = phase.tips || (sure?.tips ?? 0) > 0.5;
  const [turn, margin] = [sure?.lateralAcceleration.band, sure?.understeerMargin.band];
  const ay = (x: number) => number("acceleration", x, 2, turn);
  const by = (x: number) => change("acceleration", x, 2, margin);
  const up = (["front", "rear"] as const).filter((end) => lifted[end]).join(", ");
  const verdict = tips ? "" : (sure?.understeerMargin.sign.verdict ?? "");
  return [
    name,
    ay(lateralAcceleration),
    ...(turn ? [`${ay(turn.low.value)} to ${ay(turn.high.value)}`] : []),
    ay(mostLateralAcceleration),
    tips ? DASH : by(understeerMargin),
    ...(margin ? [tips ? DASH : `${by(margin.low.value)} to ${by(margin.high.value)}`] : []),
    tips ? "tips over" : first,
    ...(sure ? [verdict] : []),
    up,
  ];
}

/** What the bands are, and what widens them. */
function sureNotes({ balance: bands, samples, seed }: HowSure): string[] {
  const widest = phaseNames.flatMap((name) => {
    const most = widestNote(bands[name].widest);
    return most === undefined ? [] : [`  ${name}: ${most}`];
  });
  return [
    bandsNote(samples.balance, seed),
    ...(widest.length > 0
      ? [
          "Whose doubt widens the band of the margin most, with its share of the variance:",
          ...widest,
        ]
      : []),
  ];
}

const GRADIENT =
  "On the road, cars measure more, often 2 to 6 °/g (common practice, no source): steering column, caster and the hands on the wheel give way too, and are not counted.";

/** Parts of a corner in which the car tips over have no margin to speak of. */
function yawMargins(phases: SetUpReport["balance"]["phases"]) {
  const told = phaseNames.filter((name) => !phases[name].tips);
  return Object.fromEntries(told.map((name) => [name, phases[name].yawAccelerationMargin]));
}
