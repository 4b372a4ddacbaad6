import { clubTyreCoefficients } from "./club-tyre.js";
import { type FullTyre, magicFormula61Tyre } from "./magic-formula-61.js";
import { type MagicFormula61Coefficients, withoutPull } from "./magic-formula-61-coefficients.js";
import type { TyreRange } from "./tyre.js";

/**
 * Coefficients of a tyre that is not the workbook's, by their published names, with the ends of where
 * they were measured: FZMIN to FZMAX, N, PRESMIN to PRESMAX, Pa, CAMMIN to CAMMAX, rad. Other
 * names are kept and not used. – Pacejka 2012, Appendix 3
 */
export type TyreData = Readonly<Record<string, number>>;

/** What one of them may be; SI. */
export interface CoefficientRange {
  readonly min: number;
  readonly max: number;
  readonly unit: string;
}

const of = (min: number, max: number, unit = ""): CoefficientRange => ({ min, max, unit });

/** Ends of where a tyre was measured, two names for each quantity. */
export const measuredNames = {
  load: ["FZMIN", "FZMAX"],
  pressure: ["PRESMIN", "PRESMAX"],
  inclination: ["CAMMIN", "CAMMAX"],
} as const;

/**
 * Those that no tyre can do without, with what they may be: wide, so that a slip of unit or sign is
 * seen (kPa, degrees, a stiffness above zero) and no tyre of a car is refused – common practice, no
 * source.
 */
export const neededCoefficients: Readonly<Record<string, CoefficientRange>> = {
  FNOMIN: of(300, 20e3, "N"),
  NOMPRES: of(50e3, 600e3, "Pa"),
  UNLOADED_RADIUS: of(0.1, 0.6, "m"),
  WIDTH: of(0.05, 0.5, "m"),
  VERTICAL_STIFFNESS: of(50e3, 1e6, "N/m"),
  Q_RA1: of(0, 5),
  Q_RA2: of(0, 5),
  Q_RB1: of(-5, 5),
  Q_RB2: of(-5, 5),
  PCY1: of(1, 2),
  PDY1: of(0.2, 3),
  PDY2: of(-1, 1),
  PEY1: of(-20, 1),
  PKY1: of(-100, -2),
  PKY2: of(0.2, 10),
  PKY4: of(0.5, 3),
  RBY1: of(0, 100),
  RBY2: of(-100, 100),
  RCY1: of(0.5, 2),
  PCX1: of(1, 2),
  PDX1: of(0.2, 3),
  PKX1: of(2, 100),
  RBX1: of(0, 100),
  RBX2: of(-100, 100),
  RCX1: of(0.5, 2),
  QBZ1: of(0, 100),
  QCZ1: of(0.5, 2),
  QDZ1: of(0, 1),
  FZMIN: of(0, 20e3, "N"),
  FZMAX: of(500, 40e3, "N"),
  PRESMIN: of(50e3, 600e3, "Pa"),
  PRESMAX: of(50e3, 600e3, "Pa"),
  CAMMIN: of(-0.5, 0, "rad"),
  CAMMAX: of(0, 0.5, "rad"),
};

/** What any of the others may be, without unit. */
export const anyCoefficient = of(-1000, 1000);

type Coefficient = Exclude<keyof MagicFormula61Coefficients, "name" | "valid">;

/** Every coefficient that is used, by its published name; those not needed are 0 where they are left out. */
export const coefficientNames = Object.keys(clubTyreCoefficients).filter(
  (name): name is Coefficient => name !== "name" && name !== "valid",
);

/** What a name stands for and may be; nothing for one that is not used. */
export function coefficientRange(name: string): CoefficientRange | undefined {
  if (Object.hasOwn(neededCoefficients, name)) return neededCoefficients[name];
  return (coefficientNames as readonly string[]).includes(name) ? anyCoefficient : undefined;
}

/** Where a tyre was measured. */
export const measuredRange = (data: TyreData): TyreRange => ({
  load: rangeOf(data, measuredNames.load),
  pressure: rangeOf(data, measuredNames.pressure),
  inclination: rangeOf(data, measuredNames.inclination),
});

const rangeOf = (data: TyreData, [least, most]: readonly [string, string]) => ({
  minimum: data[least] ?? 0,
  maximum: data[most] ?? 0,
});

/**
 * The tyre of such data, without pull to one side; the same object for the same data.
 *
 * Below the least load measured the formula goes on to a wheel that carries nothing.
 */
export function tyreOfData(data: TyreData, name = "own tyre"): FullTyre {
  const before = known.get(data);
  if (before !== undefined) return before;
  const range = measuredRange(data);
  const numbers = Object.fromEntries(coefficientNames.map((one) => [one, data[one] ?? 0]));
  const valid = { ...range, load: { ...range.load, minimum: 0 } };
  const coefficients = { name, valid, ...numbers } as unknown as MagicFormula61Coefficients;
  const tyre = magicFormula61Tyre(withoutPull(coefficients));
  known.set(data, tyre);
  return tyre;
}

const known = new WeakMap<TyreData, FullTyre>();

/** A tyre as such data, with where it was measured. */
export function dataOfTyre({ valid, name: _, ...numbers }: MagicFormula61Coefficients): TyreData {
  return {
    ...numbers,
    ...{ FZMIN: valid.load.minimum, FZMAX: valid.load.maximum },
    ...{ PRESMIN: valid.pressure.minimum, PRESMAX: valid.pressure.maximum },
    ...{ CAMMIN: valid.inclination.minimum, CAMMAX: valid.inclination.maximum },
  };
}
