import { type Combined, combined } from "@rollbook/lib";
import type { FormPlace } from "./input.js";
import type { Found, Result } from "./result.js";
import { type MeasurementId, specs } from "./spec.js";

/** A number that several forms give, and what they say together. */
export interface Together extends Combined {
  readonly path: string;
  readonly ways: readonly { readonly id: MeasurementId; readonly found: Found }[];
}

/**
 * Every number to which more than one form leads, from all that was read of a car.
 *
 * @param resultAt - what a form comes to
 */
export function togetherOf(resultAt: (form: FormPlace) => Result): Together[] {
  const all = specs.flatMap((spec) =>
    (["front", "rear"] as const)
      .filter((end) => spec.ofAxle || end === "front")
      .flatMap((end) =>
        (resultAt({ spec, end }).found ?? []).map((found) => ({ id: spec.id, found })),
      ),
  );
  const paths = [...new Set(all.flatMap(({ found }) => found.path ?? []))];
  return paths.flatMap((path) => {
    const ways = all.filter(({ found }) => found.path === path && found.spread > 0);
    return ways.length < 2 ? [] : [{ path, ways, ...combined(ways.map(({ found }) => found)) }];
  });
}
