import type { AxlesInTurn } from "../../lib/balance/axle-in-turn.js";
import type { HandlingCar } from "../../lib/balance/handling-car.js";
import { handlingCarOf } from "../../lib/balance/handling-car-of.js";
import { understeerGradientAt } from "../../lib/balance/handling-curve.js";
import { characteristicSpeed, criticalSpeed } from "../../lib/balance/linear-understeer.js";
import { axlesAt } from "../../lib/balance/loads-in-turn.js";
import { mirrorCar } from "../../lib/balance/mirror-car.js";
import { phaseBalances } from "../../lib/balance/phases.js";
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
import { figuresOf } from "../../lib/change/figures.js";
import { changeTable } from "../../lib/change/table.js";
import { distributeLoadTransfer } from "../../lib/load/distribution.js";
import { eachAxle, type Wheels } from "../../lib/load/wheels.js";
import { marginsOf } from "../../lib/statics/margins.js";
import { restOf } from "../../lib/statics/rest.js";

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
  const handling = handlingCarOf(car);
  return {
    car: car.name,
    asked,
    mass: masses(car),
    atRest: atRest(car),
    inTurn: inTurn(handling, asked),
    stiffness: eachAxle(car, stiffnessOf),
    figures: figuresOf(car),
    balance: balance(car, handling, asked.speed),
    limits: marginsOf(car),
    changes: changeTable(car, { speed: asked.speed }).map(withoutCar),
  };
}

function masses(car: Car) {
  const { mass, ...centreOfGravity } = totalMassOf(car);
  return { total: mass, sprung: sprungMassOf(car).mass, centreOfGravity };
}

function atRest(car: Car) {
  const { load, rideHeight, camber, toe, frontShare, leftShare, crossShare } = restOf(car);
  return { load, rideHeight, camber, toe, frontShare, leftShare, crossShare };
}

function inTurn(car: HandlingCar, { lateralAcceleration, speed }: ReportQuestion) {
  const { front, rear, ...whole } = distributeLoadTransfer(car, lateralAcceleration);
  const parts = eachAxle({ front, rear }, ({ load: _, ...transfer }) => transfer);
  if (whole.tipped) return { ...whole, ...parts, load: undefined };
  const leftTurn = loadsIn(axlesAt(car, { speed }, lateralAcceleration), lateralAcceleration);
  const mirrored = axlesAt(mirrorCar(car), { speed }, lateralAcceleration);
  const rightTurn = eachAxle(loadsIn(mirrored, lateralAcceleration), ({ left, right }) => ({
    left: right,
    right: left,
  }));
  return { ...whole, ...parts, load: { leftTurn, rightTurn } };
}

function loadsIn(axles: AxlesInTurn, ay: number): Wheels<number> {
  return eachAxle(axles, ({ inner, outer }) => ({
    left: Math.max(0, inner.load.offset + inner.load.slope * ay),
    right: outer.load.offset + outer.load.slope * ay,
  }));
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

function balance(car: Car, handling: HandlingCar, speed: number) {
  const gradient = understeerGradientAt(handling, { speed });
  const named = (speedFor: typeof criticalSpeed) =>
    gradient === undefined ? undefined : finite(speedFor(gradient, car.wheelbase));
  return {
    understeerGradient: gradient,
    characteristicSpeed: named(characteristicSpeed),
    criticalSpeed: named(criticalSpeed),
    phases: phaseBalances(handling, speed),
  };
}

function finite(value: number): number | undefined {
  return Number.isFinite(value) ? value : undefined;
}

/** A row of the change table without the changed cars, which the changes themselves give. */
function withoutCar({ change, label, effect, refused }: ReturnType<typeof changeTable>[number]) {
  if (effect === undefined) return { change, label, refused };
  const { moved, broken, putBack } = effect;
  const back = putBack && { turns: putBack.turns, moved: putBack.moved, broken: putBack.broken };
  return { change, label, moved, broken, putBack: back };
}
