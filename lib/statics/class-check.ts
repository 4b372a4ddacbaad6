import type { Car } from "../car/car.js";
import { rulesFor } from "../car/class-rules.js";
import { controlTyreName, isControlTyre } from "../car/control-tyre.js";
import { type Margin, marginsOf } from "./margins.js";
import type { CarAtRest } from "./rest.js";

/** What becomes of one rule at one place of a car. */
export type ClassFact =
  | (Margin & { readonly code: "limit"; readonly held: boolean })
  | {
      readonly code: "tyre";
      readonly where: "front" | "rear";
      readonly value: string;
      readonly limit: string;
      readonly held: boolean;
      readonly rule?: string;
    };

/**
 * A car against the rules of its class: each limit at each place, held or broken and by how much,
 * and the control tyre. What may not be moved is no fact of a car that stands still.
 *
 * @example
 * classFactsOf(standingCar(demoCar)).every(({ held }) => held) // → true
 */
export function classFactsOf(at: CarAtRest): ClassFact[] {
  const limits = marginsOf(at).map((one) => ({
    ...one,
    code: "limit" as const,
    held: one.margin >= 0,
  }));
  return [...limits, ...tyreFactsOf(at.car)];
}

/** A car against the control tyre alone. */
export function tyreFactsOf(car: Car): ClassFact[] {
  return (["front", "rear"] as const).flatMap((where) =>
    rulesFor(car, "tyre", where).map((rule) => {
      const { name } = rule;
      const limit = controlTyreName(rule);
      const held = isControlTyre(car[where].tyre, rule);
      const value = held ? limit : car[where].tyre.name;
      return {
        ...{ code: "tyre" as const, where, value, limit, held },
        ...(name !== undefined && { rule: name }),
      };
    }),
  );
}
