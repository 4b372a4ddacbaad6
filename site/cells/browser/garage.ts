import { type Car, carFromJson, demoCar } from "@rollbook/lib";
import { keep, recall } from "./store.js";

/** The reader's cars on this device, and which of them the course is about; none means the demo car. */
export interface Garage {
  readonly cars: readonly Car[];
  readonly current?: string;
}

const key = "garage";

function asGarage(value: unknown): Garage | undefined {
  const { cars, current } = value as { cars?: unknown; current?: unknown };
  if (!Array.isArray(cars)) return undefined;
  const sound = cars.flatMap((car) => carFromJson(car).car ?? []);
  return typeof current === "string" ? { cars: sound, current } : { cars: sound };
}

export const garage = (): Garage => recall(key, asGarage) ?? { cars: [] };

/** Keeps the cars; false where the device refused. */
export const keepGarage = (changed: Garage): boolean => keep(key, changed);

/** The car that the course is about. */
export function chosenCar({ cars, current }: Garage = garage()): Car {
  return cars.find(({ name }) => name === current) ?? demoCar;
}
