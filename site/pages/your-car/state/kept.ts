import { batch } from "@preact/signals";
import { type Car, demoCar } from "@rollbook/lib";
import { type Cars, ownCars, textUnder } from "@rollbook/page";
import { nameOfCopy } from "../../../say/your-car/cars.js";
import { drafts, keepDraft, ownPlaces, ownPlacesOf } from "../../../store/car-drafts.js";
import { openClasses } from "../../../store/classes.js";
import { copyOfDemo, type Draft, draftOf } from "../model/draft.js";
import { freeName } from "../model/save.js";

/** The draft that is open, or the name of the kept car; empty for none. */
export const openId = textUnder("car-open", "garage-open");

/** Looks at the second copies too: they may be newer, or all that is left. */
export async function openSecondCopies(): Promise<void> {
  await Promise.all([
    ownCars.open(),
    drafts.open(),
    ownPlaces.open(),
    openId.open(),
    openClasses(),
  ]);
}

export const dropDraft = (id: string): Promise<boolean> =>
  drafts.set(drafts.now.value.filter((draft) => draft.id !== id));

/** A name for a draft that no other has, of this page or another. */
export const newId = (): string => `new-${Math.random().toString(36).slice(2)}`;

/** Every name in use: the demo car's, those of kept cars and those of cars only begun. */
export const namesInUse = (): string[] => [
  demoCar.name,
  ...ownCars.now.value.cars.map(({ name }) => name),
  ...drafts.now.value.map(nameOfDraft),
];

/** What a draft is called so far. */
export const nameOfDraft = ({ typed, base }: Draft): string =>
  typed.name?.text ?? String(base.name ?? "");

/** What was typed at a kept car since, or the car as it is kept; or a car only begun. */
export function draftFor(id: string): Draft | undefined {
  const known = drafts.now.value.find((one) => one.id === id);
  if (known) return known;
  const car = ownCars.now.value.cars.find(({ name }) => name === id);
  return car && { ...draftOf(id, car, ownPlacesOf(id)), of: id };
}

/** A car to begin with: the workbook's own, or one of the reader's, under a name of its own. */
export function copyOf(name: string): Draft | undefined {
  const free = freeName(nameOfCopy(name), namesInUse());
  if (name === demoCar.name) return copyOfDemo(newId(), free);
  const car = ownCars.now.value.cars.find((one) => one.name === name);
  return car && draftOf(newId(), { ...car, name: free }, ownPlacesOf(name));
}

/**
 * Puts a car in place of the one that had the name `of`, or at the end.
 *
 * @param show - whether the course is to show it
 */
export function keepCar(car: Car, of?: string, show = false): Promise<boolean> {
  const { cars, current } = ownCars.now.value;
  const known = cars.some(({ name }) => name === of);
  const all = known ? cars.map((one) => (one.name === of ? car : one)) : [...cars, car];
  const follows = current !== undefined && current === of;
  return ownCars.set(showing(all, show || follows ? car.name : current));
}

/** Takes a car out; the course goes back to the workbook's own where it showed this one. */
export function dropCar(name: string): Promise<boolean> {
  const { cars, current } = ownCars.now.value;
  const left = cars.filter((car) => car.name !== name);
  return ownCars.set(showing(left, current === name ? undefined : current));
}

/** Lets the course show one of the cars, or the workbook's own. */
export function showCar(name: string): Promise<boolean> {
  const { cars } = ownCars.now.value;
  return ownCars.set(showing(cars, name === demoCar.name ? undefined : name));
}

const showing = (cars: readonly Car[], current: string | undefined): Cars =>
  current === undefined ? { cars } : { cars, current };

/**
 * Puts a car among the kept ones in place of its draft; false where the device refused.
 *
 * The draft goes only once the car is kept, and stays where more was typed meanwhile.
 */
export async function keepInPlaceOf(draft: Draft, car: Car, show: boolean): Promise<boolean> {
  const saving = { ...draft, of: car.name };
  const asked = batch(() => {
    void keepDraft(saving);
    return keepCar(car, draft.of, show);
  });
  if (!(await asked)) return false;
  batch(() => {
    const own = [...new Set([...draft.own, ...Object.keys(draft.typed)])];
    void ownPlaces.set({ ...ownPlaces.now.value, [car.name]: own });
    if (!drafts.now.value.includes(saving)) return;
    void dropDraft(draft.id);
    if (openId.now.value === draft.id) void openId.set(car.name);
  });
  return true;
}
