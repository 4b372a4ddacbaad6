import type { IdeaName } from "@rollbook/lib";
import type { FigureState } from "../figure-state.js";

/** A figure that shows a wrong idea to be wrong. */
interface ShownBy extends FigureState {
  /** What to look at there. */
  readonly look: string;
}

/** A wrong idea: what one would say who holds it, and where it fails. */
export interface Idea {
  readonly belief: string;
  readonly shownBy: ShownBy;
}

type At = (state: FigureState["state"], look: string) => ShownBy;
const at =
  (chapter: string, figure: string): At =>
  (state, look) => ({ chapter, figure, state, look });

const barsAndTotal = at("01-load-transfer", "bars-and-total");
const fourWheels = at("01-load-transfer", "four-wheels");
const slipCurve = at("02-tyre-nonlinearity", "slip-curve");
const ballast = at("02-tyre-nonlinearity", "ballast");
const fourLoads = at("03-distribution-between-axles", "four-loads");
const axleLimits = at("03-distribution-between-axles", "axle-limits");
const wheelLift = at("03-distribution-between-axles", "wheel-lift");
const raise = at("04-roll-centre", "raise");
const construct = at("04-roll-centre", "construct");
const leanAndGrip = at("04-roll-centre", "lean-and-grip");
const gripAgainstPressure = at("05-tyre-pressure", "grip-against-pressure");
const fiveChanges = at("05-tyre-pressure", "five-changes");
const loadArrives = at("07-how-fast-the-load-arrives", "load-arrives");
const fourBalances = at("07-how-fast-the-load-arrives", "four-balances");

/** Every wrong idea that an answer may speak from. */
export const ideas: Readonly<Record<IdeaName, Idea>> = {
  // The fifteen misconceptions
  "stiffer-moves-more": {
    belief: "A stiffer car moves more load.",
    shownBy: barsAndTotal(
      { frontBar: "most", rearBar: "most" },
      "Both bars as stiff as they go: read the third column, then take the bars off.",
    ),
  },
  "roll-moves-load": {
    belief: "Load moves because the body rolls.",
    shownBy: barsAndTotal(
      { frontBar: "least", rearBar: "least" },
      "No bars, the most lean: force, height and track still account for nearly all of it.",
    ),
  },
  "grip-in-proportion": {
    belief: "Twice the load is twice the grip.",
    shownBy: slipCurve(
      { load: "most", slipAngle: "8" },
      "Halve the load from here and compare the peaks.",
    ),
  },
  "soft-helps-both": {
    belief: "A softer end makes both ends grip better.",
    shownBy: axleLimits(
      { frontBar: "least" },
      "The front bar off: which line rose, and which one fell?",
    ),
  },
  "bar-helps-own-end": {
    belief: "A stiffer bar gives grip to its own end.",
    shownBy: axleLimits({ rearBar: "most" }, "A stiff rear bar: which end’s limit fell?"),
  },
  "less-air-grips": {
    belief: "Less air is always more grip.",
    shownBy: gripAgainstPressure(
      { pressure: "least" },
      "A big print, and less grip than at the top.",
    ),
  },
  "more-air-grips": {
    belief: "More air is always more grip.",
    shownBy: gripAgainstPressure(
      { pressure: "most" },
      "A stiff tyre, and less grip than at the top.",
    ),
  },
  "ballast-is-free": {
    belief: "Mass does not matter in a corner: it cancels.",
    shownBy: ballast({ extraMass: "most" }, "The dashed line is mass that cancels."),
  },
  "understeer-is-fixed": {
    belief: "A car understeers or it does not, everywhere and always.",
    shownBy: fourBalances(
      { frontBar: "least" },
      "One car, four bars: do they even point the same way?",
    ),
  },
  "dampers-hold-load": {
    belief: "Stiffer dampers carry load in the middle of a corner.",
    shownBy: loadArrives(
      { time: "most", dampers: "most" },
      "Stiff dampers, and the body at rest in its lean: read what the dampers push.",
    ),
  },
  "less-roll-less-transfer": {
    belief: "A car that rolls less moves less load.",
    shownBy: barsAndTotal(
      { frontBar: "most", rearBar: "most" },
      "Much less lean: by how much did the third column fall?",
    ),
  },
  "less-dive-less-transfer": {
    belief: "A car that dives less moves less load to the front.",
    shownBy: fourWheels(
      { longitudinalAcceleration: "-8", lateralAcceleration: "0" },
      "A hard stop: no spring is in these loads.",
    ),
  },
  "always-more-to-move": {
    belief: "A stiffer axle can always move more load.",
    shownBy: wheelLift(
      { rearBar: "most" },
      "Its inside wheel is in the air: stiffen or soften a little.",
    ),
  },
  "more-camber-grips": {
    belief: "More camber is always more grip.",
    shownBy: leanAndGrip(
      { camber: "least", lateralAcceleration: "2" },
      "The most camber, in a gentle turn: the tyre stands beyond its top.",
    ),
  },
  "roll-centre-removes": {
    belief: "What the links carry does not reach the tyres.",
    shownBy: raise(
      { height: "most" },
      "The links carry most of it now: read the load under the wheels.",
    ),
  },
  "felt-so-it-worked": {
    belief: "It felt better after both changes, so both are good.",
    shownBy: fiveChanges({ pressure: "most" }, "One turn of a valve is five changes already."),
  },

  // Their relatives
  "bars-move-it": {
    belief: "Without bars hardly any load moves.",
    shownBy: barsAndTotal(
      { frontBar: "least", rearBar: "least" },
      "No bars at all: read the third column.",
    ),
  },
  "dampers-decide": {
    belief: "Dampers settle how much load moves.",
    shownBy: loadArrives(
      { time: "most", dampers: "most" },
      "The body at rest in its lean: read what the dampers push.",
    ),
  },
  "only-links-stay": {
    belief: "The part of the load that goes through springs shrinks with the lean.",
    shownBy: raise(
      { height: "0" },
      "All of the body’s load goes through springs here: stiff or soft, it has to.",
    ),
  },
  "rubber-alone": {
    belief: "Grip is rubber: load and air have no say.",
    shownBy: slipCurve(
      { load: "least", slipAngle: "8" },
      "Now double the load: what does the peak do?",
    ),
  },
  "overload-slides": {
    belief: "A tyre that is pressed harder holds less.",
    shownBy: slipCurve(
      { load: "most", slipAngle: "8" },
      "More load, a higher peak: only not in proportion.",
    ),
  },
  "other-end-stays": {
    belief: "The end that nobody touched stays as it was.",
    shownBy: fourLoads(
      { frontBar: "most" },
      "Only the front bar was moved: what did the rear tyres do?",
    ),
  },
  "flat-car-grips": {
    belief: "A flatter car grips better at both ends.",
    shownBy: axleLimits(
      { frontBar: "most", rearBar: "most" },
      "Both bars stiff, a flat car: are both lines higher than before?",
    ),
  },
  "weight-is-grip": {
    belief: "More weight presses the tyres down, so the car corners faster.",
    shownBy: ballast(
      { extraMass: "most" },
      "Full of ballast: is there a height at which it gains?",
    ),
  },
  "low-ballast-pays": {
    belief: "Mass on the floor makes a car corner faster.",
    shownBy: ballast(
      { extraMass: "most", height: "least" },
      "All the mass on the road itself, and still slower.",
    ),
  },
  "loaded-end-slides": {
    belief: "The end that is loaded more lets go first.",
    shownBy: fourBalances({ brakes: "most" }, "Braking in: which way did the bar go, and why?"),
  },
  "pushing-takes-alike": {
    belief: "Braking and power take from both ends alike.",
    shownBy: fourBalances({ brakes: "least" }, "Braking in and power on: do both ends pay alike?"),
  },
  "brakes-change-ends": {
    belief: "Braking always makes the other end slide.",
    shownBy: fourBalances(
      { frontBar: "most", brakes: "most" },
      "A stiff front bar and much brake in front: does the end still change?",
    ),
  },
  "power-frees-it": {
    belief: "Power always makes the other end slide.",
    shownBy: fourBalances({ frontBar: "most" }, "Power on: does the rear give up first?"),
  },
  "dampers-hold-body": {
    belief: "Stiff dampers hold the body up and spare the tyres.",
    shownBy: loadArrives(
      { time: "most", dampers: "most" },
      "The stiffest dampers: is the lean any smaller in the end?",
    ),
  },
  "bump-against-rebound": {
    belief: "Bump adds load in the middle of a corner, rebound takes it off.",
    shownBy: loadArrives(
      { time: "most", dampers: "most" },
      "Nothing moves any more: neither bump nor rebound is going on.",
    ),
  },
  "dampers-are-bars": {
    belief: "Softer dampers hand load to the other end, as a bar does.",
    shownBy: loadArrives(
      { time: "most", dampers: "least" },
      "Soft dampers, and the loads in the end are those of the thin lines.",
    ),
  },
  "bar-pulls-down": {
    belief: "A bar holds its inside wheel to the road.",
    shownBy: wheelLift({ rearBar: "most" }, "The stiffest bar: where is the inside wheel?"),
  },
  "stiff-end-sheds": {
    belief: "A stiff end hands its load to the other end.",
    shownBy: fourLoads(
      { frontBar: "most" },
      "A stiff front bar: does the front move less, or more?",
    ),
  },
  "share-is-fixed": {
    belief: "Each axle keeps its share of the transfer, whatever happens.",
    shownBy: wheelLift(
      { lateralAcceleration: "most" },
      "Past the kink one axle moves no more: who moves the rest?",
    ),
  },
  "lift-ends-it": {
    belief: "Once a wheel is in the air no more load moves.",
    shownBy: wheelLift(
      { lateralAcceleration: "most" },
      "A wheel in the air, and the other axle still moves more.",
    ),
  },
  "upright-is-best": {
    belief: "A tyre grips best when it stands upright.",
    shownBy: construct(
      { roll: "most" },
      "The outer wheel leans out as the body rolls: that is what camber is for.",
    ),
  },
  "camber-gain-fades": {
    belief: "More camber gains less and less, but it never costs.",
    shownBy: construct({ heave: "least" }, "Camber comes and goes with travel, too."),
  },
  "links-have-no-say": {
    belief: "The links have no say in what moves where.",
    shownBy: raise({ height: "least" }, "Roll centres below the road: who carries what now?"),
  },
  "no-harm-felt": {
    belief: "Had one of the changes done harm, it would have felt worse.",
    shownBy: fiveChanges(
      { pressure: "least" },
      "One change helps here and harms there: which did you feel?",
    ),
  },
  "each-did-half": {
    belief: "Of two changes each did half.",
    shownBy: fiveChanges(
      { pressure: "most" },
      "Some of these bars rise and some fall, all from one turn of a valve.",
    ),
  },
  "bigger-change-did-it": {
    belief: "The bigger change decides, the smaller one does not count.",
    shownBy: fiveChanges({ pressure: "least" }, "A small step of the valve: is every bar small?"),
  },
};
