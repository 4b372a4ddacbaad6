import type { Axle, Car, PlacedMass } from "../../../lib/car/car.js";

const g = 9.80665;

/** Potential energy of a car in seven coordinates, written from springs and weights alone. */
export interface Start {
  /** Load on each tyre in the measured state, N: front left, front right, rear left, rear right. */
  readonly loads: readonly number[];
  readonly tyreRates: readonly number[];
  readonly tyreRatesThen: readonly number[];
  readonly barRates: readonly [number, number];
}

export function energyOf(car: Car, then: Car, start: Start): (q: readonly number[]) => number {
  const placed = [car.body, car.driver, car.passenger, car.fuel, car.ballast].filter(
    (part): part is PlacedMass => part !== undefined,
  );
  const sprung = placed.reduce((sum, { mass }) => sum + mass, 0);
  const height = placed.reduce((sum, part) => sum + part.mass * part.height, 0) / sprung;
  const behind = placed.reduce((sum, part) => sum + part.mass * part.behindFrontAxle, 0) / sprung;
  const { front, rear, wheelbase } = car;
  const [hf, hr] = [front.geometry.rollCentreHeight, rear.geometry.rollCentreHeight];
  const axis = hf + ((hr - hf) * behind) / wheelbase;
  return ([heave = 0, pitch = 0, roll = 0, ...wheels]) => {
    const bodyAt = (x: number, y: number) => heave + pitch * (x - wheelbase / 2) + y * roll;
    let energy = -sprung * g * (height - axis) * (roll ** 2 / 2); // small angles, as in `bodyAt`
    for (const { mass, behindFrontAxle, leftOfCentre } of placed)
      energy += mass * g * bodyAt(behindFrontAxle, leftOfCentre);
    [front, rear].forEach((axle, i) => {
      const x = i * wheelbase;
      const up = [wheels[2 * i] ?? 0, wheels[2 * i + 1] ?? 0] as const;
      const pair = [start.loads[2 * i] ?? 0, start.loads[2 * i + 1] ?? 0] as const;
      energy += (axle.unsprungMass / 2) * g * (up[0] + up[1]);
      energy += springEnergy(axle, i === 0 ? then.front : then.rear, up, pair, (y) => bodyAt(x, y));
      const twist = up[0] - up[1] - bodyAt(x, axle.track / 2) + bodyAt(x, -axle.track / 2);
      energy += 0.5 * (start.barRates[i] ?? 0) * ((axle.bar?.motionRatio ?? 0) * twist) ** 2;
      for (const side of [0, 1] as const) {
        const pressed = pair[side] / (start.tyreRatesThen[2 * i + side] ?? 1) - up[side];
        energy += 0.5 * (start.tyreRates[2 * i + side] ?? 0) * Math.max(0, pressed) ** 2;
      }
    });
    return energy;
  };
}

function springEnergy(
  { spring, track }: Axle,
  then: Axle,
  up: readonly [number, number],
  loads: readonly [number, number],
  bodyAt: (y: number) => number,
): number {
  const spacing = spring.spacing ?? track;
  const carried = (loads[0] + loads[1] - then.unsprungMass * g) / 2;
  const moment = ((loads[0] - loads[1]) / 2) * (track / spacing); // about the middle of the beam
  return ([0, 1] as const).reduce<number>((sum, side) => {
    const sign = side === 0 ? 1 : -1;
    const wheelThere = (up[0] + up[1]) / 2 + ((sign * spacing) / track) * ((up[0] - up[1]) / 2);
    const closing = wheelThere - bodyAt((sign * spacing) / 2);
    const before = (carried + sign * moment) / (then.spring.motionRatio * then.spring.rate);
    const turns = side === 0 ? spring.seatTurns.left : spring.seatTurns.right;
    const pressed = before + turns * spring.seatTravelPerTurn + spring.motionRatio * closing;
    return sum + 0.5 * spring.rate * pressed ** 2;
  }, 0);
}

/** Lowest point of a smooth function by quasi-Newton steps (BFGS) with a halving line search. */
export function minimise(f: (x: readonly number[]) => number, n: number): number[] {
  const gradient = (x: readonly number[]) =>
    x.map((_, i) => {
      const at = (d: number) => f(x.map((value, j) => (i === j ? value + d : value)));
      return (at(1e-5) - at(-1e-5)) / 2e-5;
    });
  let x = new Array<number>(n).fill(0);
  let h = x.map((_, i) => x.map((__, j): number => (i === j ? 1e-6 : 0)));
  let d = gradient(x);
  for (let round = 0; round < 400; round++) {
    const way = h.map((row) => -row.reduce((sum, value, j) => sum + value * (d[j] ?? 0), 0));
    let length = 1;
    const start = f(x);
    const to = () => x.map((value, i) => value + length * (way[i] ?? 0));
    while (f(to()) > start && length > 1e-9) length /= 2;
    const next = to();
    const nextD = gradient(next);
    const s = next.map((value, i) => value - (x[i] ?? 0));
    const y = nextD.map((value, i) => value - (d[i] ?? 0));
    const dot = (a: readonly number[], b: readonly number[]) =>
      a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
    const sy = dot(s, y);
    if (Math.sqrt(dot(s, s)) < 1e-11 || !(sy > 0)) break;
    const hy = h.map((row) => dot(row, y));
    const yhy = dot(y, hy);
    h = h.map((row, i) =>
      row.map(
        (value, j) =>
          value +
          ((1 + yhy / sy) * (s[i] ?? 0) * (s[j] ?? 0)) / sy -
          ((hy[i] ?? 0) * (s[j] ?? 0) + (s[i] ?? 0) * (hy[j] ?? 0)) / sy,
      ),
    );
    [x, d] = [next, nextD];
  }
  return x;
}
