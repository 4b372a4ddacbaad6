import type { Car } from "../../car/car.js";
import type { Change } from "../../change/change.js";
import { labelOf } from "../../change/label.js";
import { carLenses, endLenses } from "../../change/levers.js";
import { parameters } from "../../parameters.js";
import type { UnitSystem } from "../../units.js";
import type { Tried } from "../debrief/tried.js";
import type { Found, LeverPlace } from "./search.js";

/** A lever that is not proposed, and why. */
export interface NotProposed {
  readonly place: LeverPlace;
  /** In words, such as "front bar position". */
  readonly name: string;
  readonly why: string;
}

/** Why not the others. */
export function notProposed(
  found: readonly Found[],
  failed: (change: Change) => Tried | undefined,
  car: Car,
  system: UnitSystem,
): NotProposed[] {
  return found.flatMap(({ place, option, why }) => {
    const name = nameOf(place);
    if (option === undefined) return [{ place, name, why }];
    const before = failed(option.change);
    if (before === undefined) return [];
    const label = labelOf(option.change, car, system);
    return [{ place, name, why: `${label} was tried: ${before.outcome}.` }];
  });
}

function nameOf({ lever, end }: LeverPlace): string {
  const { parameter } = { ...endLenses, ...carLenses }[lever];
  const name = parameters[parameter].name.toLowerCase();
  return end === undefined ? name : `${end} ${name}`;
}
