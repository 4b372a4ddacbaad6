import type { Car } from "../car/car.js";
import { uncertainNumbersOf } from "../certainty/uncertain-numbers.js";
import { inQuadrature, type Measured } from "./measured.js";

/** A number that may be off, and how what it is part of looks with it off. */
interface Doubt<State> {
  readonly name: string;
  /** One standard deviation in SI, at least 0. */
  readonly spread: number;
  readonly off: (state: State, by: number) => State;
}

/** A number that was worked out from others in doubt. */
export interface Propagated extends Measured {
  /** Whose doubts make up its own, the most first: shares of its variance, 0–1. */
  readonly from: readonly { readonly name: string; readonly share: number }[];
}

/**
 * What follows from numbers in doubt, with the doubt that it has from them.
 *
 * Each number is moved by one standard deviation both ways and half the difference counts; squares
 * add up, the doubts being independent.
 *
 * @see JCGM 100:2008 (GUM), 5.1.2 and the note 2 to 5.1.3
 */
function propagated<State, Name extends string>(
  state: State,
  doubts: readonly Doubt<State>[],
  follow: (state: State) => Readonly<Record<Name, number>>,
): Record<Name, Propagated> {
  const values = follow(state);
  const effects = doubts.flatMap(({ name, spread, off }) =>
    spread > 0 ? [{ name, up: follow(off(state, spread)), down: follow(off(state, -spread)) }] : [],
  );
  const names = Object.keys(values) as Name[];
  const told = names.map((out) => {
    const parts = effects.map(({ name, up, down }) => ({ name, part: (up[out] - down[out]) / 2 }));
    const spread = inQuadrature(...parts.map(({ part }) => part));
    const from = parts
      .map(({ name, part }) => ({ name, share: spread === 0 ? 0 : (part / spread) ** 2 }))
      .filter(({ share }) => share > 0)
      .sort((a, b) => b.share - a.share);
    return [out, { value: values[out], spread, from }];
  });
  return Object.fromEntries(told);
}

type Inputs<Name extends string> = Readonly<Record<Name, Measured>>;
type Values<Name extends string> = Readonly<Record<Name, number>>;

const valuesOf = <Name extends string>(inputs: Inputs<Name>) =>
  Object.fromEntries(
    Object.entries<Measured>(inputs).map(([name, { value }]) => [name, value]),
  ) as Values<Name>;

/**
 * Numbers that follow from readings, each with the doubt that it has from them.
 *
 * @throws Refusal where `follow` refuses a reading that is off by its spread
 * @example
 * const sides = { long: { value: 3, spread: 0.03 }, wide: { value: 4, spread: 0.04 } };
 * through(sides, ({ long, wide }) => ({ area: long * wide })).area.spread // → 0.1697, by hand: 12·√2 %
 */
export function through<In extends string, Out extends string>(
  inputs: Inputs<In>,
  follow: (values: Values<In>) => Readonly<Record<Out, number>>,
): Record<Out, Propagated> {
  const doubts = Object.entries<Measured>(inputs).map(([name, { spread }]) => ({
    name,
    spread,
    off: (values: Values<In>, by: number) => ({ ...values, [name]: values[name as In] + by }),
  }));
  return propagated(valuesOf(inputs), doubts, follow);
}

/**
 * Numbers that follow from readings and from what the car's file says, with the doubts of both.
 *
 * @param bears - whether a number of the car bears on it, by its place
 * @throws Refusal where `follow` refuses a number that is off by its spread
 */
export function throughCar<In extends string, Out extends string>(
  car: Car,
  inputs: Inputs<In>,
  bears: (path: string) => boolean,
  follow: (car: Car, values: Values<In>) => Readonly<Record<Out, number>>,
): Record<Out, Propagated> {
  type State = { readonly car: Car; readonly values: Values<In> };
  const readings = Object.entries<Measured>(inputs).map(([name, { spread }]) => ({
    name,
    spread,
    off: ({ car, values }: State, by: number): State => ({
      car,
      values: { ...values, [name]: values[name as In] + by },
    }),
  }));
  const ofCar = uncertainNumbersOf(car)
    .filter(({ path }) => bears(path))
    .map(({ path, spread, get, set }) => ({
      name: path,
      spread,
      off: ({ car, values }: State, by: number): State => ({
        car: set(car, get(car) + by),
        values,
      }),
    }));
  const state = { car, values: valuesOf(inputs) };
  return propagated(state, [...readings, ...ofCar], ({ car, values }) => follow(car, values));
}
