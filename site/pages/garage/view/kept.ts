import { type Car, demoCar } from "@rollbook/lib";
import { garage, keep, keepGarage, recall } from "@rollbook/page";
import { asDraft, type Draft } from "../model/draft.js";
import type { Path } from "../model/path.js";

/** What the page keeps on the device besides the cars themselves. */
const draftsKey = "garage-drafts";
const openKey = "garage-open";
const ownKey = "garage-own";

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

export const drafts = (): Draft[] =>
  recall(draftsKey, (value) =>
    Array.isArray(value) ? value.flatMap((one) => asDraft(one) ?? []) : undefined,
  ) ?? [];

/** Keeps a draft in its place among the others; false where the device refused. */
export function keepDraft(draft: Draft): boolean {
  const others = drafts();
  const known = others.some(({ id }) => id === draft.id);
  const all = known ? others.map((one) => (one.id === draft.id ? draft : one)) : [...others, draft];
  return keep(draftsKey, all);
}

export const dropDraft = (id: string): boolean =>
  keep(
    draftsKey,
    drafts().filter((draft) => draft.id !== id),
  );

/** The draft that was open when the page was last here. */
export const openId = (): string =>
  recall(openKey, (value) => (typeof value === "string" ? value : undefined)) ?? "";

export const keepOpenId = (id: string): boolean => keep(openKey, id);

/** Places of each car whose values the reader gave or confirmed. */
const ownOfAll = (): Record<string, unknown> =>
  recall(ownKey, (value) => (isRecord(value) ? value : undefined)) ?? {};

export function ownOf(name: string): Path[] {
  const own = ownOfAll()[name];
  return Array.isArray(own) ? own.filter((path) => typeof path === "string") : [];
}

export const keepOwn = (name: string, own: readonly Path[]): boolean =>
  keep(ownKey, { ...ownOfAll(), [name]: own });

/** Puts a car in place of the one that had the name `of`, or at the end. */
export function keepCar(car: Car, of?: string): boolean {
  const { cars, current } = garage();
  const known = cars.some(({ name }) => name === of);
  const all = known ? cars.map((one) => (one.name === of ? car : one)) : [...cars, car];
  const shown = current === undefined || current !== of ? current : car.name;
  return keepGarage(shown === undefined ? { cars: all } : { cars: all, current: shown });
}

/** Takes a car out; the course goes back to the workbook's own where it showed this one. */
export function dropCar(name: string): boolean {
  const { cars, current } = garage();
  const left = cars.filter((car) => car.name !== name);
  return keepGarage(
    current === undefined || current === name ? { cars: left } : { cars: left, current },
  );
}

/** Lets the course show one of the cars, or the workbook's own. */
export function showCar(name: string): boolean {
  const { cars } = garage();
  return keepGarage(name === demoCar.name ? { cars } : { cars, current: name });
}
