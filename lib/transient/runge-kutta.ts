/** How fast each number of a state changes. */
export type Derivative = (time: number, state: readonly number[]) => readonly number[];

/** One step of time by the classical Runge-Kutta method of order four – Kutta 1901. */
export function rungeKuttaStep(
  derivative: Derivative,
  time: number,
  state: readonly number[],
  step: number,
): number[] {
  const moved = (slope: readonly number[], by: number) =>
    state.map((value, i) => value + by * (slope[i] ?? 0));
  const k1 = derivative(time, state);
  const k2 = derivative(time + step / 2, moved(k1, step / 2));
  const k3 = derivative(time + step / 2, moved(k2, step / 2));
  const k4 = derivative(time + step, moved(k3, step));
  return state.map(
    (value, i) =>
      value + (step / 6) * ((k1[i] ?? 0) + 2 * (k2[i] ?? 0) + 2 * (k3[i] ?? 0) + (k4[i] ?? 0)),
  );
}
