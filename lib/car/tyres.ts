import { Refusal } from "../refusal.js";
import { clubTyre } from "../tyre/club-tyre.js";
import { type FullTyre, magicFormula61Tyre, referenceTyre } from "../tyre/magic-formula-61.js";
import type { MagicFormula61Coefficients } from "../tyre/magic-formula-61-coefficients.js";
import { tunedTyre } from "../tyre/tuned-tyre.js";
import { tyreOfData } from "../tyre/tyre-data.js";
import type { Axle, AxleTyre } from "./car.js";

/** The tyres a car file may name. */
const tyres: Readonly<Record<string, FullTyre>> = {
  club: clubTyre,
  "published road": referenceTyre,
};

/** What a car file calls a tyre whose coefficients stand in it. */
export const OWN_TYRE = "own";

/** The names of the tyres that the workbook knows. */
export const tyreNames: readonly string[] = Object.keys(tyres);

/** The tyre of an axle by its data, before the car's file corrects them; data count with the name "own" alone. */
export const dataTyreOf = ({ name, data }: AxleTyre): FullTyre =>
  name === OWN_TYRE && data !== undefined ? tyreOfData(data) : tyreNamed(name);

/**
 * The tyre of that name.
 *
 * @throws Refusal naming the tyres there are
 * @example
 * tyreNamed("club") === clubTyre // → true
 */
export function tyreNamed(name: string): FullTyre {
  const tyre = Object.hasOwn(tyres, name) ? tyres[name] : undefined;
  if (tyre === undefined) throw new Refusal("unknown-tyre", unknownTyre(name));
  return tyre;
}

/** The sentence for a tyre that is not there. */
function unknownTyre(name: unknown): string {
  return `tyre name is ${JSON.stringify(name)} but must be one of: ${tyreNames.join(", ")}.`;
}

/**
 * Where the pressure of most grip may be set on a tyre, Pa; undefined for one whose data have none,
 * since its friction has no top against pressure.
 */
export function bestPressureRange({
  coefficients,
  valid,
}: FullTyre): FullTyre["valid"]["pressure"] | undefined {
  const { PPX4, PPY4 } = coefficients; // MERGE: hasBestPressure of lib/tyre/tuned-tyre.ts
  return PPX4 < 0 && PPY4 < 0 ? valid.pressure : undefined;
}

/**
 * The tyre on an axle: its data as the car's file corrects them.
 *
 * @throws Refusal as `tyreNamed`
 * @example
 * tyreOf(demoCar.front).peakSideForce({ load: 3000 }) // → 3450, by hand: 3000·(1.30 − 0.05·3)
 */
export function tyreOf({ tyre }: Axle): FullTyre {
  const named = dataTyreOf(tyre);
  const coefficients = corrected(named.coefficients, tyre);
  return coefficients === named.coefficients ? named : magicFormula61Tyre(coefficients);
}

/**
 * Coefficients of the tyre on an axle as the car's file corrects them; the tyre's own object where
 * it corrects nothing.
 *
 * @throws Refusal as `tyreNamed`
 */
export function tyreCoefficientsOf({ tyre }: Axle): MagicFormula61Coefficients {
  return corrected(dataTyreOf(tyre).coefficients, tyre);
}

function corrected(t: MagicFormula61Coefficients, tyre: AxleTyre): MagicFormula61Coefficients {
  const { loadSensitivity = 1, stiffness = 1, grip, bestPressure } = tyre;
  const own =
    loadSensitivity === 1 && stiffness === 1
      ? t
      : {
          ...t,
          PDY2: t.PDY2 * loadSensitivity, // friction at the nominal load stays
          PDX2: t.PDX2 * loadSensitivity,
          VERTICAL_STIFFNESS: t.VERTICAL_STIFFNESS * stiffness,
        };
  return tunedTyre(own, {
    ...(grip !== undefined && { grip }),
    ...(bestPressure !== undefined && { bestPressure }),
  });
}
