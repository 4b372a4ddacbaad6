import { clubTyre } from "../tyre/club-tyre.js";
import { type FullTyre, referenceTyre } from "../tyre/magic-formula-61.js";

/** The tyres a car file may name. */
export const tyres: Readonly<Record<string, FullTyre>> = {
  club: clubTyre,
  "published road": referenceTyre,
};

/** The names a car file may give for its tyres. */
export const tyreNames: readonly string[] = Object.keys(tyres);

/**
 * The tyre of that name.
 *
 * @throws RangeError naming the tyres there are
 */
export function tyreNamed(name: string): FullTyre {
  const tyre = Object.hasOwn(tyres, name) ? tyres[name] : undefined;
  if (tyre === undefined) throw new RangeError(unknownTyre(name));
  return tyre;
}

/** The sentence for a tyre that is not there. */
export function unknownTyre(name: unknown): string {
  return `tyre name is ${JSON.stringify(name)} but must be one of: ${tyreNames.join(", ")}.`;
}
