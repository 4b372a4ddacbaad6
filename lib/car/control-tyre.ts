import type { TyreData } from "../tyre/tyre-data.js";
import type { AxleTyre, Car } from "./car.js";
import { rulesFor, type TyreRule } from "./class-rules.js";
import { OWN_TYRE } from "./tyres.js";

/** What a control tyre is called. */
export const controlTyreName = ({ tyre, own }: TyreRule): string => own?.name ?? tyre;

/** Whether an axle runs on the tyre that a rule asks for; one that a class brings along is told by its numbers. */
export function isControlTyre({ name, data }: AxleTyre, { tyre, own }: TyreRule): boolean {
  if (own === undefined) return name === tyre;
  return name === OWN_TYRE && data !== undefined && isSame(data, own.coefficients);
}

function isSame(one: TyreData, other: TyreData): boolean {
  const names = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...names].every((name) => one[name] === other[name]);
}

/** The car on the control tyre that its class brings along, at the axles where its file has another; pressures stay. */
export const onControlTyre = (car: Car): Car => ({
  ...car,
  ...{ front: axleOn(car, "front"), rear: axleOn(car, "rear") },
});

function axleOn(car: Car, end: "front" | "rear"): Car["front"] {
  const { tyre } = car[end];
  const rule = rulesFor(car, "tyre", end).find(({ own }) => own !== undefined);
  if (rule?.own === undefined || isControlTyre(tyre, rule)) return car[end];
  const { pressure } = tyre; // what corrected the other tyre's data does not belong to this one
  return { ...car[end], tyre: { name: OWN_TYRE, data: rule.own.coefficients, pressure } };
}
