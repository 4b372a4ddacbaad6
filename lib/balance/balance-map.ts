import type { Capacity } from "./capacity.js";
import { type BalanceStart, type CarBalance, carBalance } from "./car-balance.js";
import type { Driving } from "./driving.js";
import type { HandlingCar } from "./handling-car.js";

/** Balance over two levers: row by row, `columns` values in each row. */
export interface BalanceMap {
  readonly columns: number;
  readonly rows: number;
  /** m/s², as `CarBalance.understeerMargin` */
  readonly understeerMargin: Float64Array;
  /** m/s², as `CarBalance.lateralAcceleration` */
  readonly lateralAcceleration: Float64Array;
}

const TOLERANCE = 1e-4; // m/s², far below a line's width on any map

/**
 * Balance and grip of a car over two levers, to some 0.0001 m/s².
 *
 * Rows are walked to and fro so that each car is solved from where its last two neighbours point.
 *
 * @param carAt - the car with the first lever at column x and the second at row y, both 0–1
 */
export function balanceMap(
  carAt: (x: number, y: number) => HandlingCar,
  driving: Driving,
  columns = 64,
  rows = 64,
): BalanceMap {
  const understeerMargin = new Float64Array(columns * rows);
  const lateralAcceleration = new Float64Array(columns * rows);
  let last: CarBalance | undefined;
  for (let row = 0; row < rows; row++) {
    let before: CarBalance | undefined;
    for (let step = 0; step < columns; step++) {
      const column = row % 2 === 0 ? step : columns - 1 - step;
      const car = carAt(column / Math.max(1, columns - 1), row / Math.max(1, rows - 1));
      const start = last && before ? ahead(last, before) : last;
      before = last;
      last = carBalance(car, driving, start, TOLERANCE);
      understeerMargin[row * columns + column] = last.understeerMargin;
      lateralAcceleration[row * columns + column] = last.lateralAcceleration;
    }
  }
  return { columns, rows, understeerMargin, lateralAcceleration };
}

/** Where the next car is if it lies as far from the last one as that from the one before. */
function ahead(last: BalanceStart, before: BalanceStart): BalanceStart {
  return { front: next(last.front, before.front), rear: next(last.rear, before.rear) };
}

function next(last: Capacity, before: Capacity): Capacity {
  const { curvature, loadEffect } = last;
  const slipAngle = 2 * last.slipAngle - before.slipAngle;
  const lateralAcceleration = 2 * last.lateralAcceleration - before.lateralAcceleration;
  return { slipAngle, lateralAcceleration, curvature, loadEffect };
}
