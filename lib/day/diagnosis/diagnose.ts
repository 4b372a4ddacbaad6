import type { Car } from "../../car/car.js";
import type { Change, End } from "../../change/change.js";
import type { Eased } from "../../change/eased.js";
import { knownBaseline } from "../../change/known-baseline.js";
import type { NearTipping } from "../../change/near-tipping.js";
import { whyNotRanked } from "../../change/ranked.js";
import { cellsOf } from "../debrief/cells.js";
import { LEAST_FELT_SHIFT } from "../debrief/feel.js";
import type { NamedReport } from "../debrief/named-report.js";
import { sameWay, type Tried } from "../debrief/tried.js";
import { isComplete, type Report } from "../log/report.js";
import { type Venue, venueSpeed } from "../plan/venue.js";
import { type Ask, asksFor } from "./asks.js";
import { namedPlacesOf } from "./named-places.js";
import { type NotProposed, notProposed } from "./not-proposed.js";
import { type Places, placesOf } from "./options.js";
import { type Proposal, proposalOf } from "./proposal.js";
import { leverPlaces, searchLever } from "./search.js";
import { type Target, targetOf } from "./target.js";

/** All that a diagnosis goes by. */
export interface Complaint {
  /** The car as it was driven. */
  readonly car: Car;
  /** The car whose file gave the heights; the car itself when left out. */
  readonly measured?: Car;
  readonly venue?: Venue;
  readonly reports: readonly Report[];
  readonly tried?: readonly Tried[];
  /** All that was said of this car in the run, by whom: what a change costs there is told. */
  readonly named?: readonly NamedReport[];
  /** Minutes that whoever leads the day gives a change on this car; left out: not said. */
  readonly changeMinutes?: number;
  /** Ends at which hot pressures were measured and are off; none: all are right; left out: not known. */
  readonly pressureOff?: readonly End[];
  /** m/s²; `LEAST_FELT_SHIFT` when left out */
  readonly leastFelt?: number;
}

/** Where a diagnosis leads. */
export type DiagnosisOutcome =
  /** No report says where, when, doing what, and what. */
  | { readonly code: "nothing-to-go-by" }
  /** Nobody asks for a change. */
  | { readonly code: "all-well" }
  /** In a place reported the car tips over before its tyres let go. */
  | { readonly code: "tips-over" }
  /** No single change within reach is felt there. */
  | { readonly code: "nothing-felt" }
  /** What to change next; where nothing fits into a run, between two sessions. */
  | { readonly code: "next-change"; readonly change: Change; readonly fits: boolean };

/** What to ask, what to change next, and why not something else. */
export interface Diagnosis {
  readonly asks: readonly Ask[];
  /** What the reports ask of the car; those with open questions are left out. */
  readonly targets: readonly Target[];
  readonly outcome: DiagnosisOutcome;
  /**
   * Single changes, the best first: one of them, never two at once. Those that fit into the minutes of
   * a change come before those that are for between two sessions.
   */
  readonly proposals: readonly Proposal[];
  readonly notProposed: readonly NotProposed[];
  /** Where the car, asked for those places, tips over or comes near to it. */
  readonly nearTipping: readonly NearTipping[];
  /** Where it cannot brake or drive as hard as is usual. */
  readonly eased: readonly Eased[];
}

/**
 * What to ask and what to change next, from what drivers reported.
 *
 * Each change is made on this car, the seats put back where they can, and judged by what it does in
 * the places reported, by grip there, and by what it moves elsewhere. Open questions come first: a
 * report that does not say where, when, doing what, is not guessed at.
 *
 * @throws Refusal when the car cannot stand on its springs
 */
export function diagnose(complaint: Complaint): Diagnosis {
  const { reports, venue } = complaint;
  const asks = asksFor(reports, venue);
  const open = new Set(asks.filter(({ needed }) => needed).flatMap((ask) => ask.reports));
  const targets = reports.flatMap((report, i) =>
    !open.has(i) && isComplete(report) ? [targetOf(report, i, venue)] : [],
  );
  const silent = { ...{ asks, targets }, ...nothing };
  if (targets.length === 0) return { ...silent, outcome: { code: "nothing-to-go-by" } };
  if (targets.every(({ want }) => want === 0)) return { ...silent, outcome: { code: "all-well" } };
  const all = [...asks, ...askOfPressure(complaint)];
  return { ...ranked(complaint, targets), asks: all };
}

const nothing = { proposals: [], notProposed: [], nearTipping: [], eased: [] };

/** What has to be known before a pressure is touched: the best one, then those that were driven. */
function askOfPressure({ car, pressureOff }: Complaint): Ask[] {
  const known = (["front", "rear"] as const).some(
    (end) => whyNotRanked(car, { lever: "tyrePressure", end }) === undefined,
  );
  const ofCar = { reports: [], needed: false };
  if (!known) return [{ ...ofCar, code: "best-pressure" }];
  return pressureOff === undefined ? [{ ...ofCar, code: "hot-pressures" }] : [];
}

function ranked(complaint: Complaint, targets: readonly Target[]): Omit<Diagnosis, "asks"> {
  const { tried = [], pressureOff = [], leastFelt = LEAST_FELT_SHIFT, changeMinutes } = complaint;
  const places = placesFor(complaint, targets);
  const { tips } = places.before;
  const there = aboutPlaces(places);
  if (targets.some(({ phase }) => tips.includes(phase)))
    return { ...nothing, ...there, targets, outcome: { code: "tips-over" } };
  const found = leverPlaces.map((place) => searchLever(place, places, leastFelt));
  const options = found.flatMap(({ option }) => (option === undefined ? [] : [option]));
  const failed = (change: Change) =>
    tried.find((old) => sameWay(old.change, change) && old.outcome !== "better");
  const proposals = options
    .filter(({ change }) => failed(change) === undefined)
    .map((option) => proposalOf(option, places, { tried, pressureOff, changeMinutes, leastFelt }))
    .sort((a, b) => Number(b.fits) - Number(a.fits) || a.rank - b.rank || b.merit - a.merit);
  return {
    ...there,
    targets,
    proposals,
    notProposed: notProposed(found, failed),
    outcome: outcomeOf(proposals),
  };
}

/** What the parts of a corner that were reported have to be known for. */
function aboutPlaces({ before: { nearTipping, eased }, targets }: Places) {
  const reported = ({ phase }: { phase: string }) => targets.some((to) => to.phase === phase);
  return { nearTipping: nearTipping.filter(reported), eased: eased.filter(reported) };
}

function placesFor(complaint: Complaint, targets: readonly Target[]): Places {
  const { car, measured, named = [], venue } = complaint;
  const places = placesOf(targets);
  const before = knownBaseline(car, measured, venueSpeed(places));
  const asked = { before, targets, places, cells: cellsOf(before, places) };
  return { ...asked, named: namedPlacesOf(named, asked, venue) };
}

const outcomeOf = ([first]: readonly Proposal[]): DiagnosisOutcome =>
  first === undefined
    ? { code: "nothing-felt" }
    : { code: "next-change", change: first.change, fits: first.fits };
