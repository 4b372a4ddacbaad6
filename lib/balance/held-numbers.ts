import type { Held, WholeCar } from "./whole-car.js";

/** A held car as four numbers of about the same size: both slip angles, push, lateral acceleration. */
export type HeldNumbers = [number, number, number, number];

/** What one of those numbers stands for: rad, rad, N/kg, m/s². */
export const SCALES = [0.1, 0.1, 5, 5] as const;

/** The most push that is asked for, counted: 20 N/kg; easing gives all but nothing beyond. */
export const MOST_PUSH = 20 / SCALES[2];

/** Left over along, across and outward of the path, m/s². */
export type LeftNumbers = [number, number, number];

/** A small step of one of the four numbers, for slopes. */
const SMALL = 2e-5;

/** The same car by those numbers, with slopes by small differences. */
export interface NumberedCar {
  readonly whole: WholeCar;
  readonly at: (numbers: HeldNumbers, into: LeftNumbers) => void;
  /** Columns: what each number adds to each of the three, beside `here`, the values at the place itself. */
  readonly slope: (
    numbers: HeldNumbers,
    here: LeftNumbers,
    column: number,
    into: LeftNumbers,
  ) => void;
}

/** Counts a car's held state by four numbers of like size. */
export function numberedCar(whole: WholeCar): NumberedCar {
  const held: Held = { front: 0, rear: 0, push: 0, lateralAcceleration: 0 };
  const moved: HeldNumbers = [0, 0, 0, 0];
  const at = (numbers: HeldNumbers, into: LeftNumbers): void => {
    held.front = numbers[0] * SCALES[0];
    held.rear = numbers[1] * SCALES[1];
    held.push = numbers[2] * SCALES[2];
    held.lateralAcceleration = numbers[3] * SCALES[3];
    const { along, across, outward } = whole.hold(held);
    into[0] = along;
    into[1] = across;
    into[2] = outward;
  };
  const slope = (numbers: HeldNumbers, here: LeftNumbers, column: number, into: LeftNumbers) => {
    for (let i = 0; i < 4; i++) moved[i] = numbers[i] as number;
    moved[column] = (moved[column] as number) + SMALL;
    at(moved, into);
    for (let i = 0; i < 3; i++) into[i] = ((into[i] as number) - (here[i] as number)) / SMALL;
  };
  return { whole, at, slope };
}

/** The held car that four numbers stand for. */
export function heldOf([front, rear, push, ay]: HeldNumbers): Held {
  return {
    front: front * SCALES[0],
    rear: rear * SCALES[1],
    push: push * SCALES[2],
    lateralAcceleration: ay * SCALES[3],
  };
}
