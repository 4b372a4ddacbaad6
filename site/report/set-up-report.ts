import { centreOfGravityHeight, type HandlingCar } from "../../lib/balance/handling-car.js";
import { handlingCarOf } from "../../lib/balance/handling-car-of.js";
import { characteristicSpeed, criticalSpeed } from "../../lib/balance/linear-understeer.js";
import { tyreDoubtInWords } from "../../lib/balance/tyre-doubt-words.js";
import { tyreDoubts } from "../../lib/balance/tyre-doubts.js";
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
import { type CarFigures, figuresOf } from "../../lib/change/figures.js";
import { changeTable } from "../../lib/change/table.js";
import { eachAxle } from "../../lib/load/wheels.js";
import { marginsOf } from "../../lib/statics/margins.js";
import { type Rest, restOf } from "../../lib/statics/rest.js";
import { inTurn } from "./in-turn.js";

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
 * @throws RangeError when the car cannot stand on its springs
 */
export function setUpReport(car: Car, asked: ReportQuestion) {
  const rest = restOf(car);
  const handling = handlingCarOf(car, car, rest);
  const figures = figuresOf(car, car, asked.speed, rest, handling);
  const corners = cornersOf(handling, asked.speed);
  return {
    car: car.name,
    asked,
    mass: masses(car, handling),
    atRest: atRest(rest),
    inTurn: inTurn(handling, asked, corners),
    stiffness: eachAxle(car, stiffnessOf),
    figures,
    balance: balance(car, corners, figures),
    outsideTyreData: tyreDoubts(car, asked.speed, handling).map((doubt) => ({
      ...doubt,
      sentence: tyreDoubtInWords(doubt),
    })),
    limits: marginsOf(car, car, rest),
    changes: changeTable(car, { speed: asked.speed }).map(withoutCar),
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

function balance(car: Car, corners: BothCorners, figures: CarFigures) {
  const gradient = finite(figures.understeerGradient);
  const named = (speedFor: typeof criticalSpeed) =>
    gradient === undefined ? undefined : finite(speedFor(gradient, car.wheelbase));
  return {
    understeerGradient: gradient,
    characteristicSpeed: named(characteristicSpeed),
    criticalSpeed: named(criticalSpeed),
    phases: corners.left,
    tips: tipsIn(corners),
  };
}

function finite(value: number): number | undefined {
  return Number.isFinite(value) ? value : undefined;
}

/** A row of the change table without the changed cars, which the changes themselves give. */
function withoutCar({ change, label, effect, refused }: ReturnType<typeof changeTable>[number]) {
  if (effect === undefined) return { change, label, refused };
  const { moved, broken, tips, putBack } = effect;
  const back = putBack && {
    turns: putBack.turns,
    moved: putBack.moved,
    broken: putBack.broken,
    tips: putBack.tips,
  };
  return { change, label, moved, broken, tips, putBack: back };
}
