import { words } from "../words.js";
import type { Draft } from "./draft.js";

/** A car of the plan by number and name; nothing where the day has only one kind of car. */
export function carTitle({ car: first, others = [] }: Draft, car: number): string | undefined {
  if (others.length === 0) return undefined;
  const own = others.find(({ carNumber }) => carNumber === car);
  return words.happen.carTitle(car, (own?.car ?? first).name);
}

/** The numbers of the cars of the plan: the first, and each that is not like it. */
export const carsOfPlan = ({ others = [] }: Pick<Draft, "others">): number[] => [
  1,
  ...others.map(({ carNumber }) => carNumber),
];
