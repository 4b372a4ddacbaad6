import { isBeamAxle } from "../car/axle.js";
import type { Car, Source } from "../car/car.js";
import type { DoubtShare } from "../certainty/doubt-shares.js";
import type { SharedDoubts } from "../certainty/shared-doubts.js";
import { type SpreadRow, spreadOf, spreads } from "../certainty/spreads.js";
import type { UncertainNumber } from "../certainty/uncertain-number.js";
import { uncertainNumbersOf } from "../certainty/uncertain-numbers.js";

/** Something that can be measured or looked up on a car. */
export interface Sharpening {
  readonly id: SharpeningId;
  /** Of which axle; nothing where it is of the whole car. */
  readonly end?: "front" | "rear";
}

/** What can be measured or looked up, by what is done. */
export type SharpeningId = keyof typeof sharpened;

/** What one measurement would be worth. */
export interface Next extends Sharpening {
  /** Part of the variance of balance that it takes away, 0–1, mean over the parts of a corner. */
  readonly ofBalance: number;
  /** The same of what changes move, mean over changes. */
  readonly ofChanges: number;
}

type Way = "measured" | "maker";
const way =
  (how: Way) =>
  (...names: readonly string[]) => ({ how, names });
const measured = way("measured");

/** The numbers that each makes surer; those of an axle without its end. */
const sharpened = {
  "four-scales": measured("body.mass", "body.behindFrontAxle", "body.leftOfCentre"),
  "raised-axle": measured("body.height"),
  "people-and-fuel": measured(
    "driver.mass",
    "driver.behindFrontAxle",
    "driver.leftOfCentre",
    "fuel.mass",
  ),
  "ride-rate": measured("{end}.spring.rate"),
  "motion-ratio": measured("{end}.spring.motionRatio"),
  linkage: measured(
    "{end}.geometry.rollCentreHeight",
    "{end}.geometry.rollCentreMigration",
    "{end}.geometry.camberGain",
    "{end}.geometry.toeGain",
  ),
  "bar-and-links": measured("{end}.bar.rate", "{end}.bar.motionRatio"),
  wheels: measured("{end}.unsprungMass", "{end}.unsprungHeight"),
  alignment: measured(
    "{end}.camber.left",
    "{end}.camber.right",
    "{end}.toe.left",
    "{end}.toe.right",
  ),
  "tyre-rate": measured("{end}.tyre.stiffness", "tyre.stiffness"),
  travels: measured("{end}.geometry.bumpTravel", "{end}.geometry.droopTravel"),
  "brake-share": way("maker")("brakeFrontShare"),
} as const satisfies Record<string, { how: Way; names: readonly string[] }>;

const LEAST = 0.02; // of both together: less is not worth the work

/**
 * What to measure next, what narrows most first: how much of the variance of balance, and of what
 * changes do, would be gone if the numbers that it gives were as sure as they usually are measured.
 *
 * As far as figures go in proportion with each number, and numbers are off by themselves. What would
 * take away nothing is left out.
 *
 * @param doubts - whose doubts make up those of balance and changes
 */
export function nextToMeasure(car: Car, { balance, changes }: SharedDoubts): Next[] {
  const numbers = uncertainNumbersOf(car);
  const lists = changes.filter((list) => list.length > 0);
  const worth = (list: readonly DoubtShare[], one: Sharpening) => takenAway(list, one, numbers);
  return sharpeningsFor(car)
    .map((one) => ({
      ...one,
      ofBalance: worth(balance, one),
      ofChanges: lists.reduce((sum, list) => sum + worth(list, one), 0) / Math.max(1, lists.length),
    }))
    .filter(({ ofBalance, ofChanges }) => ofBalance + ofChanges > LEAST)
    .sort((a, b) => b.ofBalance + b.ofChanges - a.ofBalance - a.ofChanges);
}

/** Everything that can be done on a car: joints are not taped where a beam carries the wheels. */
export function sharpeningsFor(car: Car): Sharpening[] {
  const ids = Object.keys(sharpened) as SharpeningId[];
  return ids.flatMap((id): Sharpening[] => {
    const ofAxle = sharpened[id].names.some((name) => name.startsWith("{end}"));
    if (!ofAxle) return [{ id }];
    return (["front", "rear"] as const)
      .filter((end) => id !== "linkage" || !isBeamAxle(car[end]))
      .map((end) => ({ id, end }));
  });
}

/** The places that a measurement makes surer. */
export const placesOf = ({ id, end = "front" }: Sharpening): string[] =>
  sharpened[id].names.map((name) => name.replace("{end}", end));

function takenAway(
  list: readonly DoubtShare[],
  one: Sharpening,
  numbers: readonly UncertainNumber[],
): number {
  const places = placesOf(one);
  return list
    .filter(({ path }) => places.includes(path))
    .reduce((sum, { path, share }) => {
      const number = numbers.find((number) => number.path === path);
      return number === undefined ? sum : sum + share * (1 - leftOf(number, sharpened[one.id].how));
    }, 0);
}

/** Part of a number's variance that is left once it is measured, 0–1. */
function leftOf({ path, value, spread }: UncertainNumber, how: Source): number {
  const row = rowOf(path);
  return row === undefined ? 1 : Math.min(1, (spreadOf(row, how, value) / spread) ** 2);
}

/** The usual spreads of a number's kind; one that both axles share has those of an axle. */
function rowOf(path: string): SpreadRow | undefined {
  const general = path.replace(/^(front|rear)\./, "{end}.").replace(/\.(left|right)$/, ".{side}");
  return spreads[general] ?? spreads[`{end}.${path}`];
}
