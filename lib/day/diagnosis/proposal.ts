import { phaseNames } from "../../balance/phases.js";
import type { Car } from "../../car/car.js";
import type { Change, End } from "../../change/change.js";
import type { Eased } from "../../change/eased.js";
import { labelOf } from "../../change/label.js";
import { endsWithoutLeanCost } from "../../change/lean-costs.js";
import { movedInWords } from "../../change/moved.js";
import type { NearTipping } from "../../change/near-tipping.js";
import type { OnStop } from "../../change/on-stops.js";
import { isTrade } from "../../change/trade.js";
import type { Wheels } from "../../load/wheels.js";
import { formatAlike } from "../../shown-range.js";
import type { UnitSystem } from "../../units.js";
import { sameLever, sameWay, type Tried } from "../debrief/tried.js";
import { minutesToMake } from "../plan/minutes.js";
import type { PhaseShifts } from "../plan/sheet-row.js";
import { meritOf } from "./merit.js";
import type { Option, Places } from "./options.js";
import { putBackInWords } from "./put-back-words.js";

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
  /** Shift in each part of a corner, m/s², above 0 towards the front sliding first. */
  readonly phases: PhaseShifts;
  readonly minutes: number;
  /** What else moves, in words. */
  readonly sideEffects: readonly string[];
  /** What to turn back so that nothing else has changed, in words. */
  readonly putBack: readonly string[];
  readonly putBackTurns?: Wheels<number>;
  readonly reasons: readonly string[];
  /** Wheels that it puts on a stop. */
  readonly onStops: readonly OnStop[];
  /** Where the changed car tips over or comes near to it. */
  readonly nearTipping: readonly NearTipping[];
  /** Where the changed car cannot brake or drive as hard as is usual. */
  readonly eased: readonly Eased[];
  /** It leans wheels whose tyre's data say nothing of what lean costs in braking and traction. */
  readonly leanCostUnknown: boolean;
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
  const shift = (name: (typeof phaseNames)[number]) => effect.moved.phases[name].understeerMargin;
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
    reasons: reasonsOf(option, known, system),
    onStops: effect.onStops,
    nearTipping: effect.nearTipping,
    eased: effect.eased,
    leanCostUnknown: leansWithoutCost(change, car),
    rank: rankOf(change, known.pressureOff),
    merit: meritOf(option, car),
  };
}

function leansWithoutCost(change: Change, car: Car): boolean {
  return change.lever === "camber" && endsWithoutLeanCost(car).includes(change.end);
}

/** Pressure comes last unless it was measured and is off at that end; so does mass put in. */
function rankOf(change: Change, pressureOff: readonly End[]): 0 | 1 | 2 {
  if (change.lever === "ballast" && change.by > 0) return 2;
  if (change.lever !== "tyrePressure") return 1;
  return "end" in change && pressureOff.includes(change.end) ? 0 : 2;
}

function reasonsOf(
  { change, gain, grip, elsewhere }: Option,
  { tried, pressureOff }: Known,
  system: UnitSystem,
) {
  const shown = (value: number) => formatAlike("acceleration", value, 2, system);
  const reasons = [
    `It brings the reported places ${shown(gain)} nearer to balance and moves the rest of those corners by ${shown(elsewhere)}.`,
    isTrade(gain, -grip)
      ? `The car is better balanced there, and ${shown(-grip)} slower.`
      : `The car can turn ${grip > 0 ? "+" : ""}${shown(grip)} there.`,
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
