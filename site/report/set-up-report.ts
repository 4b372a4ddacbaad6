import type { CarBalance } from "../../lib/balance/car-balance.js";
import { differentialDoubts } from "../../lib/balance/differential-doubts.js";
import { centreOfGravityHeight, type HandlingCar } from "../../lib/balance/handling-car.js";
import { characteristicSpeed, criticalSpeed } from "../../lib/balance/linear-understeer.js";
import { type PhaseName, phaseNames, phases } from "../../lib/balance/phases.js";
import { type StandingCar, standingCar } from "../../lib/balance/standing-car.js";
import type { WheelStops } from "../../lib/balance/stops.js";
import { tyreDoubts } from "../../lib/balance/tyre-doubts.js";
import { yawAccelerationMargin } from "../../lib/balance/yaw-acceleration.js";
import {
  barRateOf,
  barRollStiffnessOf,
  rideRateOf,
  rollStiffnessOf,
  tyreStiffnessOf,
  wheelRateOf,
} from "../../lib/car/axle.js";
import type { Axle, Car } from "../../lib/car/car.js";
import { sprungMassOf, totalMassOf } from "../../lib/car/masses.js";
import { type BothCorners, cornersOf, tipsIn } from "../../lib/change/behaviour.js";
import { easedIn } from "../../lib/change/eased.js";
import type { Effect } from "../../lib/change/effect.js";
import { type CarFigures, figuresOf } from "../../lib/change/figures.js";
import { endsWithoutLeanCost } from "../../lib/change/lean-costs.js";
import { nearTippingIn } from "../../lib/change/near-tipping.js";
import { onStops } from "../../lib/change/on-stops.js";
import { whyNotRanked } from "../../lib/change/ranked.js";
import { type ChangeRow, changeTable } from "../../lib/change/table.js";
import { eachAxle, type Wheels } from "../../lib/load/wheels.js";
import type { Refusal, RefusalCode, RefusedNumber } from "../../lib/refusal.js";
import { classFactsOf } from "../../lib/statics/class-check.js";
import type { Rest } from "../../lib/statics/rest.js";
import { changeLabel } from "../say/change.js";
import { readerWith } from "../say/reader.js";
import { refusalInWords } from "../say/refusal.js";
import { tyreDoubtInWords } from "../say/tyre-doubt.js";
import { inTurn } from "./in-turn.js";

/** Sentences among the values are for nobody in particular. */
const plain = readerWith("metric");

/** What the report is asked for. */
export interface ReportQuestion {
  /** m/s², to either side */
  readonly lateralAcceleration: number;
  /** m/s */
  readonly speed: number;
}

/** Everything the report says, in SI units: `docs/report.md` lists the keys. */
export type SetUpReport = ReturnType<typeof setUpReport>;

/**
 * The set-up report of a car.
 *
 * @throws Refusal when the car cannot stand on its springs
 */
export function setUpReport(car: Car, asked: ReportQuestion) {
  const standing = standingCar(car);
  const { rest, handling } = standing;
  const figures = figuresOf(standing, asked.speed);
  const corners = cornersOf(handling, asked.speed);
  return {
    car: car.name,
    asked,
    mass: masses(car, handling),
    atRest: atRest(rest),
    inTurn: inTurn(handling, asked, corners),
    stiffness: eachAxle(car, stiffnessOf),
    figures,
    balance: balance(car, handling, asked.speed, corners, figures),
    freeTravel: eachAxle(handling, ({ stops }) => stops && freeTravelOf(stops)),
    notKnown: notKnown(car),
    outsideTyreData: tyreDoubts(standing, asked.speed).map((doubt) => ({
      ...doubt,
      sentence: tyreDoubtInWords(doubt, plain),
    })),
    limits: classFactsOf(standing),
    changes: changeTable(standing, { speed: asked.speed }).map((row) => withoutCar(row, car)),
  };
}

/** What the car weighs, and where its centre of gravity is as it stands, seats turned and all. */
function masses(car: Car, handling: HandlingCar) {
  const { mass, ...measured } = totalMassOf(car);
  const centreOfGravity = { ...measured, height: centreOfGravityHeight(handling) };
  return { total: mass, sprung: sprungMassOf(car).mass, centreOfGravity };
}

function atRest(rest: Rest) {
  const { load, rideHeight, camber, toe, frontShare, leftShare, crossShare } = rest;
  return { load, rideHeight, camber, toe, frontShare, leftShare, crossShare };
}

function stiffnessOf(axle: Axle) {
  return {
    wheelRate: wheelRateOf(axle),
    tyreStiffness: tyreStiffnessOf(axle),
    rideRate: rideRateOf(axle),
    barRate: axle.bar === undefined ? 0 : barRateOf(axle.bar),
    barRollStiffness: barRollStiffnessOf(axle),
    rollStiffness: rollStiffnessOf(axle),
  };
}

/** m that each wheel can still rise and fall from where it rests. */
function freeTravelOf({ bumpLeft, droopLeft }: WheelStops) {
  return { bump: bumpLeft, droop: droopLeft };
}

/** Ends about whose tyres something is not known that changes of them go by. */
function notKnown(car: Car) {
  const bestPressure = (["front", "rear"] as const).filter(
    (end) => whyNotRanked(car, { lever: "tyrePressure", end }) !== undefined,
  );
  return { bestPressure, costOfLean: endsWithoutLeanCost(car) };
}

function balance(
  car: Car,
  handling: HandlingCar,
  speed: number,
  corners: BothCorners,
  figures: CarFigures,
) {
  const gradient = finite(figures.understeerGradient);
  const named = (speedFor: typeof criticalSpeed) =>
    gradient === undefined ? undefined : finite(speedFor(gradient, car.wheelbase));
  return {
    understeerGradient: gradient,
    characteristicSpeed: named(characteristicSpeed),
    criticalSpeed: named(criticalSpeed),
    phases: eachPhase((name) => toldBalance(handling, name, corners.left[name])),
    tips: tipsIn(corners),
    nearTipping: nearTippingIn(handling, speed, corners),
    eased: easedIn(corners),
    onStops: onStops(handling, corners),
    differentialDoubts: differentialDoubts(car, handling, speed, corners.left),
  };
}

/** A balance without what only the next search needs. */
function toldBalance(car: HandlingCar, name: PhaseName, balance: CarBalance) {
  const { turn: _turn, most: _most, ...told } = balance;
  const margin = yawAccelerationMargin(car, balance, phases[name].lateralJerk);
  return { ...told, yawAccelerationMargin: margin };
}

function eachPhase<T>(work: (name: PhaseName) => T): Record<PhaseName, T> {
  return Object.fromEntries(phaseNames.map((name) => [name, work(name)])) as Record<PhaseName, T>;
}

function finite(value: number): number | undefined {
  return Number.isFinite(value) ? value : undefined;
}

/** A row of the change table without the changed cars, which the changes themselves give. */
function withoutCar({ change, effect, refused }: ChangeRow, car: Car): ToldChange {
  const label = changeLabel(change, car, plain);
  if (effect === undefined) return { change, label, ...toldRefusal(refused) };
  const { putBack } = effect;
  const back = putBack && { turns: putBack.turns, ...toldEffect(putBack) };
  return { change, label, ...toldEffect(effect), ...(back && { putBack: back }) };
}

function toldRefusal(refusal: Refusal): ToldRefusal {
  const { code, message, number } = refusal;
  return {
    refused: refusalInWords(refusal, plain),
    refusal: { code, message, ...(number && { number }) },
  };
}

type ToldEffect = Omit<Effect, keyof StandingCar>;

/** A change with what it does, or why the car cannot be so. */
type ToldChange = Pick<ChangeRow, "change"> & {
  /** The change in words and metric units. */
  readonly label: string;
} & (
    | (ToldEffect & { readonly putBack?: PutBack } & { [K in keyof ToldRefusal]?: undefined })
    | (ToldRefusal & { [K in keyof ToldEffect | "putBack"]?: undefined })
  );

type PutBack = ToldEffect & { readonly turns: Wheels<number> };

interface ToldRefusal {
  /** Why the car cannot be so, in words and metric units. */
  readonly refused: string;
  /** The same without the words. */
  readonly refusal: { code: RefusalCode; message: string; number?: RefusedNumber };
}

function toldEffect({
  moved,
  broken,
  tips,
  nearTipping,
  trades,
  onStops,
  eased,
}: Effect): ToldEffect {
  return { moved, broken, tips, nearTipping, trades, onStops, eased };
}
