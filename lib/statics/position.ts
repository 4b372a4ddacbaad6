import type { Car } from "../car/car.js";

/**
 * Where a car comes to rest: seven changes from the measured state.
 *
 * Heave of the body at half the wheelbase (m, > 0 up), pitch (rad, > 0 nose down), roll (rad, > 0
 * right side down), and the rise of the wheels front left, front right, rear left, rear right (m).
 */
export type Position = readonly number[];

/** Which end of the car: where its axle is, and which of the seven changes its wheels are. */
export interface End {
  readonly name: "front" | "rear";
  readonly behindFrontAxle: number;
  readonly leftWheel: number;
}

/** Both ends of a car. */
export function endsOf({ wheelbase }: Car): readonly [End, End] {
  return [
    { name: "front", behindFrontAxle: 0, leftWheel: 3 },
    { name: "rear", behindFrontAxle: wheelbase, leftWheel: 5 },
  ];
}

/** Rise of a point of the body, as a row over the seven changes. */
export function bodyRow(car: Car, behindFrontAxle: number, leftOfCentre: number): number[] {
  return [1, behindFrontAxle - car.wheelbase / 2, leftOfCentre, 0, 0, 0, 0];
}

/** Rise of the left and right wheel mixed by their shares, as a row over the seven changes. */
export function wheelRow({ leftWheel }: End, left: number, right: number): number[] {
  return [0, 0, 0, 0, 0, 0, 0].map((_, i) =>
    i === leftWheel ? left : i === leftWheel + 1 ? right : 0,
  );
}
