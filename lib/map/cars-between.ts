import type { HandlingCar } from "../balance/handling-car.js";
import type { Knots } from "./knots.js";
import { numbersBetween } from "./numbers-between.js";

type Tree = { [name: string]: unknown };

/** Where a number stands in a car: the object that holds it, and its name there. */
interface Slot {
  readonly path: readonly string[];
  readonly name: string;
}

/**
 * Cars between a few exact ones: every number that differs among them is blended.
 *
 * @param known - the exact cars, one for each pair of knots, along x first, all with one tyre
 * @returns a function that gives the same car at each call, with other numbers
 */
export function carsBetween(
  along: Knots,
  up: Knots,
  known: readonly [HandlingCar, ...HandlingCar[]],
): (x: number, y: number) => HandlingCar {
  const slots = differingSlots(known as unknown as readonly Tree[]);
  const car = copied(known[0] as unknown as Tree);
  const holders = slots.map(({ path }) => within(car, path));
  const names = slots.map(({ name }) => name);
  const between = numbersBetween(
    along,
    up,
    known.map((one) => slots.map((slot) => numberIn(one as unknown as Tree, slot))),
  );
  return (x, y) => {
    const numbers = between(x, y);
    for (let k = 0; k < holders.length; k++) {
      const [holder, name] = [holders[k], names[k]];
      if (holder !== undefined && name !== undefined) holder[name] = numbers[k];
    }
    return car as unknown as HandlingCar;
  };
}

function differingSlots(cars: readonly Tree[], path: readonly string[] = []): Slot[] {
  const [first] = cars.map((car) => within(car, path));
  return Object.entries(first ?? {}).flatMap(([name, value]) => {
    const values = cars.map((car) => within(car, path)[name]);
    if (values.every((other) => other === value)) return [];
    return typeof value === "number" ? [{ path, name }] : differingSlots(cars, [...path, name]);
  });
}

const within = (tree: Tree, path: readonly string[]): Tree =>
  path.reduce((part, name) => part[name] as Tree, tree);

const numberIn = (tree: Tree, { path, name }: Slot): number => within(tree, path)[name] as number;

/** A copy whose numbers may be overwritten. */
function copied(tree: Tree): Tree {
  const entries = Object.entries(tree).map(([name, value]) => [
    name,
    typeof value === "object" && value !== null ? copied(value as Tree) : value,
  ]);
  return Object.fromEntries(entries) as Tree;
}
