import { phaseNames } from "../../balance/phases.js";
import type { Car } from "../../car/car.js";
import type { Change, End } from "../../change/change.js";
import type { Eased } from "../../change/eased.js";
import type { SeatRule } from "../../change/effect.js";
import type { CarFigures } from "../../change/figures.js";
import { endsWithoutLeanCost } from "../../change/lean-costs.js";
import type { NearTipping } from "../../change/near-tipping.js";
import type { OnStop } from "../../change/on-stops.js";
import { isTrade } from "../../change/trade.js";
import type { Wheels } from "../../load/wheels.js";
import { sameLever, sameWay, type Tried } from "../debrief/tried.js";
import { minutesFor } from "../plan/minutes.js";
import type { PhaseShifts } from "../plan/sheet-row.js";
import { type Cost, costsOf } from "./costs.js";
import { type LoadMoved, loadMoved } from "./load-moved.js";
import { meritOf } from "./merit.js";
import type { Option, Places } from "./options.js";
import { type TurnBack, turnBackOf } from "./put-back.js";

/** A single change to make next. */
export interface Proposal {
  readonly change: Change;
  readonly steps: number;
  /** m/s² by which the reported places come nearer to what was asked, weighted */
  readonly gain: number;
  /** m/s² that the car can do more there */
  readonly grip: number;
  /** Shift in each part of a corner, m/s², above 0 towards the front sliding first. */
  readonly phases: PhaseShifts;
  /** Minutes to make it and to put back what it moves. */
  readonly minutes: number;
  /** Whether they are within the minutes of a change; true where nobody said those. */
  readonly fits: boolean;
  /** Why it should help: which load moves where. */
  readonly loads: LoadMoved;
  /** What it does in the other parts: where it is felt, and where somebody named something. */
  readonly costs: readonly Cost[];
  /** What else moves: figures after less figures before. */
  readonly moved: CarFigures;
  /** What to turn back so that nothing else has changed. */
  readonly putBack: readonly TurnBack[];
  readonly putBackTurns?: Wheels<number>;
  /** What the class says against turning the seats. */
  readonly keptFromPutBack?: SeatRule;
  readonly reasons: readonly ProposalReason[];
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

/** What speaks for a change, or against it. */
export type ProposalReason =
  /** m/s² by which the reported places come nearer to balance, and by which the others move */
  | { readonly code: "nearer"; readonly gain: number; readonly elsewhere: number }
  /** m/s² that the car can do more there; below 0: less */
  | { readonly code: "grip"; readonly more: number }
  /** Better balanced there, and so many m/s² slower. */
  | { readonly code: "trade"; readonly slower: number }
  | { readonly code: "other-way-was-worse" }
  | { readonly code: "hot-pressure-is-off" }
  /** It moves grip, warm-up and feel together. */
  | { readonly code: "pressure-last" }
  /** The car gets slower everywhere else. */
  | { readonly code: "mass-last" };

/** What is known besides the reports. */
export interface Known {
  readonly tried: readonly Tried[];
  readonly pressureOff: readonly End[];
  /** Minutes of a change on this car, where somebody said them. */
  readonly changeMinutes?: number | undefined;
  /** m/s² */
  readonly leastFelt: number;
}

/** An option as a proposal, with reasons. */
export function proposalOf(option: Option, places: Places, known: Known): Proposal {
  const { changeMinutes = Infinity, leastFelt } = known;
  const { change, steps, gain, grip, effect, putBackTurns } = option;
  const { car } = places.before;
  const minutes = minutesFor([change, ...seatChanges(putBackTurns)]);
  const shift = (name: (typeof phaseNames)[number]) => effect.moved.phases[name].understeerMargin;
  return {
    change,
    steps,
    gain,
    grip,
    phases: Object.fromEntries(phaseNames.map((name) => [name, shift(name)])) as PhaseShifts,
    ...{ minutes, fits: minutes <= changeMinutes },
    loads: loadsOf(option, places),
    costs: costsOf(option, places, leastFelt),
    moved: effect.moved.figures,
    putBack: turnBackOf(option, places),
    ...(putBackTurns && { putBackTurns }),
    ...(option.keptFromPutBack && { keptFromPutBack: option.keptFromPutBack }),
    reasons: reasonsOf(option, known),
    onStops: effect.onStops,
    nearTipping: effect.nearTipping,
    eased: effect.eased,
    leanCostUnknown: leansWithoutCost(change, car),
    rank: rankOf(change, known.pressureOff),
    merit: meritOf(option, car),
  };
}

/** Seats that are turned back, as changes. */
function seatChanges(turns: Wheels<number> | undefined): Change[] {
  if (turns === undefined) return [];
  return (["front", "rear"] as const).flatMap((end) =>
    (["left", "right"] as const)
      .map((side): Change => ({ lever: "seatTurns", end, side, by: turns[end][side] }))
      .filter(({ by }) => by !== 0),
  );
}

/** Loads in the place that was asked about and gains most. */
function loadsOf({ after, gains }: Option, { cells, targets }: Places): LoadMoved {
  const best = targets[gains.indexOf(Math.max(...gains))];
  const at = after.findIndex(
    ({ corner, phase }) =>
      phase === best?.phase && best.corners.some(({ name }) => name === corner),
  );
  const [was, is] = [cells[at], after[at]];
  if (was === undefined || is === undefined) throw new RangeError("a target has cells");
  return loadMoved(was, is);
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
): ProposalReason[] {
  const other = tried.find(
    (old) =>
      sameLever(old.change, change) && !sameWay(old.change, change) && old.outcome === "worse",
  );
  const rank = rankOf(change, pressureOff);
  const last = change.lever === "ballast" ? "mass-last" : "pressure-last";
  return [
    { code: "nearer", gain, elsewhere },
    isTrade(gain, -grip) ? { code: "trade", slower: -grip } : { code: "grip", more: grip },
    ...(other === undefined ? [] : [{ code: "other-way-was-worse" } as const]),
    ...(rank === 0 ? [{ code: "hot-pressure-is-off" } as const] : []),
    ...(rank === 2 ? [{ code: last } as const] : []),
  ];
}
