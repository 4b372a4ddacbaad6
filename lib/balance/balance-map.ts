import { type CarBalance, carBalance } from "./car-balance.js";
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

/**
 * Balance and grip of a car over two levers.
 *
 * Rows are walked to and fro so that each car is solved from its neighbour.
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
    for (let step = 0; step < columns; step++) {
      const column = row % 2 === 0 ? step : columns - 1 - step;
      const car = carAt(column / Math.max(1, columns - 1), row / Math.max(1, rows - 1));
      last = carBalance(car, driving, last);
      understeerMargin[row * columns + column] = last.understeerMargin;
      lateralAcceleration[row * columns + column] = last.lateralAcceleration;
    }
  }
  return { columns, rows, understeerMargin, lateralAcceleration };
}
