import type { PlainAxle, PlainCar } from "./random-cars.js";

type End = "front" | "rear";

/** A change that a workshop can make, and the car after it. */
export interface WorkshopChange {
  readonly name: string;
  readonly of: (car: PlainCar) => PlainCar;
}

const at = (end: End, change: (axle: PlainAxle) => Partial<PlainAxle>) => (car: PlainCar) => ({
  ...car,
  [end]: { ...car[end], ...change(car[end]) },
});

const ends: readonly End[] = ["front", "rear"];

/** Changes of the size that is usual between two runs – common practice, no source. */
export const workshopChanges: readonly WorkshopChange[] = [
  ...ends.flatMap((end): WorkshopChange[] => [
    {
      name: `${end} bar stiffer`,
      of: at(end, (axle) => ({ rollStiffness: axle.rollStiffness * 1.15 })),
    },
    {
      name: `${end} roll centre higher`,
      of: at(end, (axle) => ({ rollCentreHeight: axle.rollCentreHeight + 0.02 })),
    },
    {
      name: `${end} more camber`,
      of: at(end, ({ camber }) => ({
        camber: { left: camber.left - 0.009, right: camber.right - 0.009 },
      })),
    },
    {
      name: `${end} more pressure`,
      of: at(end, ({ pressure }) => ({
        pressure: { left: pressure.left + 10e3, right: pressure.right + 10e3 },
      })),
    },
  ]),
  {
    name: "brakes forward",
    of: (car) => ({ ...car, brakeFrontShare: car.brakeFrontShare + 0.03 }),
  },
  { name: "lower", of: (car) => ({ ...car, sprungHeight: car.sprungHeight - 0.01 }) },
];
