import { type Car, carFromJson, demoCar } from "@rollbook/lib";
import { documentOf } from "./document.js";

/** The reader's cars on this device, and which of them the course is about; none means the demo car. */
export interface Cars {
  readonly cars: readonly Car[];
  readonly current?: string;
}

/** What of kept cars is sound; a car that is not, is kept aside. */
export function asCars(kept: unknown, aside: (car: unknown) => void): Cars | undefined {
  const { cars, current } = (kept ?? {}) as { cars?: unknown; current?: unknown };
  if (!Array.isArray(cars)) return undefined;
  const sound = cars.flatMap((kept) => {
    const { car } = carFromJson(kept);
    if (!car) aside(kept);
    return car ?? [];
  });
  return typeof current === "string" ? { cars: sound, current } : { cars: sound };
}

/** The reader's cars. */
export const ownCars = documentOf<Cars>({
  key: "cars",
  formerKey: "garage",
  empty: { cars: [] },
  read: asCars,
});

/** The car that the course is about. */
export function chosenCar({ cars, current }: Cars = ownCars.now.value): Car {
  return cars.find(({ name }) => name === current) ?? demoCar;
}
