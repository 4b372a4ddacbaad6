import { phaseNames } from "../balance/phases.js";
import type { Car } from "../car/car.js";
import { adjusterOf } from "../change/adjuster.js";
import type { Change, End } from "../change/change.js";
import { labelOf } from "../change/label.js";
import { movedInWords, signed } from "../change/moved.js";
import type { Wheels } from "../load/wheels.js";
import { alignmentBack } from "../statics/put-back.js";
import { restOf } from "../statics/rest.js";
import { toShown, type UnitSystem } from "../units.js";
import { LEAST_FELT_SHIFT, rearFirst } from "../workshop/feel.js";
import { minutesToMake } from "../workshop/minutes.js";
import type { PhaseShifts } from "../workshop/sheet.js";
import type { Option, Places } from "./options.js";
import { sameLever, sameWay, type Tried } from "./tried.js";

/** A single change to make next. */
export interface Proposal {
  readonly change: Change;
  /** In words, as on a card. */
  readonly label: string;
  readonly steps: number;
  /** m/s² by which the reported places come nearer to what was asked, weighted */
  readonly gain: number;
  /** m/s² that the car can do more there */
  readonly grip: number;
  /** Shift in each part of a corner, m/s², above 0 towards the rear sliding first. */
  readonly phases: PhaseShifts;
  readonly minutes: number;
  /** What else moves, in words. */
  readonly sideEffects: readonly string[];
  /** What to turn back so that nothing else has changed, in words. */
  readonly putBack: readonly string[];
  readonly putBackTurns?: Wheels<number>;
  readonly reasons: readonly string[];
  /** 0 before the others by evidence, 1 as usual, 2 last. */
  readonly rank: 0 | 1 | 2;
  /** What orders proposals of one rank: see `meritOf`. */
  readonly merit: number;
}

/** What is known besides the reports. */
export interface Known {
  readonly tried: readonly Tried[];
  readonly pressureOff: readonly End[];
}

/** An option as a proposal, with reasons. */
export function proposalOf(
  option: Option,
  places: Places,
  known: Known,
  system: UnitSystem,
): Proposal {
  const { change, steps, gain, grip, effect, putBackTurns } = option;
  const { car } = places.before;
  const shift = (name: (typeof phaseNames)[number]) =>
    rearFirst(effect.moved.phases[name].understeerMargin);
  return {
    change,
    label: labelOf(change, car, system),
    steps,
    gain,
    grip,
    phases: Object.fromEntries(phaseNames.map((name) => [name, shift(name)])) as PhaseShifts,
    minutes: minutesToMake[change.lever],
    sideEffects: movedInWords(effect.moved.figures, system),
    putBack: putBackInWords(option, places, system),
    ...(putBackTurns && { putBackTurns }),
    reasons: reasonsOf(option, known),
    rank: rankOf(change, known.pressureOff),
    merit: meritOf(option, car),
  };
}

const ELSEWHERE_WEIGHT = 0.5;
const MINUTE_WEIGHT = 0.02;

/**
 * How good a change is for its size: what it brings of what was asked, with grip gained or lost
 * there (at most as much again), less half of what it moves elsewhere, all over what it brings;
 * less two hundredths for each minute of work; less the share of its range that it takes beyond
 * one step, since a large change leaves what is known of the car – common practice, no source.
 */
export function meritOf({ change, steps, gain, grip, elsewhere }: Option, car: Car): number {
  const grips = Math.max(-gain, Math.min(gain, grip));
  const size = Math.max(gain, LEAST_FELT_SHIFT);
  const clean = (gain + grips - ELSEWHERE_WEIGHT * elsewhere) / size;
  const { min = 0, max = 0 } = adjusterOf(car, change) ?? {};
  const taken = max > min ? Math.abs(change.by) / (max - min) : 0;
  return clean - MINUTE_WEIGHT * minutesToMake[change.lever] - taken * (1 - 1 / steps);
}

/** Pressure comes last unless it was measured and is off at that end; so does mass put in. */
function rankOf(change: Change, pressureOff: readonly End[]): 0 | 1 | 2 {
  if (change.lever === "ballast" && change.by > 0) return 2;
  if (change.lever !== "tyrePressure") return 1;
  return "end" in change && pressureOff.includes(change.end) ? 0 : 2;
}

function putBackInWords({ effect, putBackTurns }: Option, { before }: Places, system: UnitSystem) {
  const turns = putBackTurns === undefined ? [] : seatsInWords(putBackTurns);
  const now = restOf(effect.car, before.measured);
  const back = alignmentBack(now, restOf(before.car, before.measured));
  return [
    ...turns,
    ...alignmentInWords("camber", back.camber, effect, system),
    ...alignmentInWords("toe", back.toe, effect, system),
  ];
}

const WHEELS = [
  ["front", "left"],
  ["front", "right"],
  ["rear", "left"],
  ["rear", "right"],
] as const;

function seatsInWords(turns: Wheels<number>): string[] {
  return WHEELS.filter(([end, side]) => turns[end][side] !== 0).map(
    ([end, side]) => `${end} ${side} seat ${signed(turns[end][side], 1)} turns`,
  );
}

const SEEN_ANGLE = 0.05; // degrees, a step of toe

/** Alignment that height has moved; none for a change of alignment itself. */
function alignmentInWords(
  what: "camber" | "toe",
  back: Wheels<number>,
  { moved }: Option["effect"],
  system: UnitSystem,
): string[] {
  const { rideHeight } = moved.figures;
  const lowered = Math.max(Math.abs(rideHeight.front), Math.abs(rideHeight.rear)) > 1e-4;
  if (!lowered) return [];
  return WHEELS.flatMap(([end, side]) => {
    const degrees = toShown("angle", back[end][side], system);
    if (Math.abs(degrees) < SEEN_ANGLE) return [];
    return [`${end} ${side} ${what} ${signed(degrees, 2)}°`];
  });
}

function reasonsOf({ change, gain, grip, elsewhere }: Option, { tried, pressureOff }: Known) {
  const reasons = [
    `It brings the reported places ${gain.toFixed(2)} m/s² nearer to balance and moves the rest of those corners by ${elsewhere.toFixed(2)} m/s².`,
    `The car can turn ${signed(grip, 2)} m/s² there.`,
  ];
  const other = tried.find(
    (old) =>
      sameLever(old.change, change) && !sameWay(old.change, change) && old.outcome === "worse",
  );
  if (other !== undefined) reasons.push("The other way was tried and was worse.");
  const rank = rankOf(change, pressureOff);
  if (rank === 0) reasons.push("Hot pressure was measured there and is off.");
  if (rank === 2) reasons.push(change.lever === "ballast" ? massLast : pressureLast);
  return reasons;
}

const pressureLast = "Pressure comes last: it moves grip, warm-up and feel together.";
const massLast = "Mass comes last: the car gets slower everywhere else.";
