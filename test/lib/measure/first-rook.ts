import type { Car } from "../../../lib/car/car.js";
import { carFromJson } from "../../../lib/car/file/parse.js";
import { firstCar } from "../../../lib/measure/first-car.js";
import type { FirstCar } from "../../../lib/measure/first-car-given.js";

export const axle = {
  track: 1.45,
  kind: "independent",
  tyreRadius: 0.29,
  pressure: 200e3,
  bar: 0.018,
  rideHeight: 0.13,
} as const;

/** What somebody gives of a first car, with a rear axle of its own. */
export const rookWith = (rear: FirstCar["rear"]): FirstCar => ({
  ...{ name: "Rook", mass: 1080, frontShare: 0.52, wheelbase: 2.4, driven: "rear", seat: "left" },
  front: axle,
  rear,
});

/** A car as its file is read back. */
export function readBack(content: unknown): Car {
  const { car, faults } = carFromJson(JSON.parse(JSON.stringify(content)));
  if (car === undefined) throw new Error(faults?.join(" "));
  return car;
}

export const firstRook = (rear: FirstCar["rear"] = axle): Car => readBack(firstCar(rookWith(rear)));
