import { type Car, demoCar } from "@rollbook/lib";
import { type Cars, documentOf, ownCars } from "@rollbook/page";
import { asDraft, type Draft } from "../model/draft.js";
import type { Path } from "../model/path.js";

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Cars that are being typed. */
const draftsKept = documentOf<readonly Draft[]>({
  key: "car-drafts",
  formerKey: "garage-drafts",
  empty: [],
  read: (kept) => (Array.isArray(kept) ? kept.flatMap((one) => asDraft(one) ?? []) : undefined),
});

/** The draft that was open when the page was last here. */
const openKept = documentOf({
  key: "car-open",
  formerKey: "garage-open",
  empty: "",
  read: (kept) => (typeof kept === "string" ? kept : undefined),
});

/** Places of each car whose values the reader gave or confirmed. */
const ownKept = documentOf<Record<string, unknown>>({
  key: "car-own",
  formerKey: "garage-own",
  empty: {},
  read: (kept) => (isRecord(kept) ? kept : undefined),
});

export const drafts = (): readonly Draft[] => draftsKept.now.value;

/** Keeps a draft in its place among the others; false where the device refused. */
export function keepDraft(draft: Draft): Promise<boolean> {
  const others = drafts();
  const known = others.some(({ id }) => id === draft.id);
  const all = known ? others.map((one) => (one.id === draft.id ? draft : one)) : [...others, draft];
  return draftsKept.set(all);
}

export const dropDraft = (id: string): Promise<boolean> =>
  draftsKept.set(drafts().filter((draft) => draft.id !== id));

export const openId = (): string => openKept.now.value;

export const keepOpenId = (id: string): Promise<boolean> => openKept.set(id);

export function ownOf(name: string): Path[] {
  const own = ownKept.now.value[name];
  return Array.isArray(own) ? own.filter((path) => typeof path === "string") : [];
}

export const keepOwn = (name: string, own: readonly Path[]): Promise<boolean> =>
  ownKept.set({ ...ownKept.now.value, [name]: own });

const keepCars = (changed: Cars): Promise<boolean> => ownCars.set(changed);

/** Puts a car in place of the one that had the name `of`, or at the end. */
export function keepCar(car: Car, of?: string): Promise<boolean> {
  const { cars, current } = ownCars.now.value;
  const known = cars.some(({ name }) => name === of);
  const all = known ? cars.map((one) => (one.name === of ? car : one)) : [...cars, car];
  const shown = current === undefined || current !== of ? current : car.name;
  return keepCars(shown === undefined ? { cars: all } : { cars: all, current: shown });
}

/** Takes a car out; the course goes back to the workbook's own where it showed this one. */
export function dropCar(name: string): Promise<boolean> {
  const { cars, current } = ownCars.now.value;
  const left = cars.filter((car) => car.name !== name);
  return keepCars(
    current === undefined || current === name ? { cars: left } : { cars: left, current },
  );
}

/** Lets the course show one of the cars, or the workbook's own. */
export function showCar(name: string): Promise<boolean> {
  const { cars } = ownCars.now.value;
  return keepCars(name === demoCar.name ? { cars } : { cars, current: name });
}
