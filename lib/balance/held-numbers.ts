import type { Held, WholeCar } from "./whole-car.js";

/** A held car as four numbers of about the same size: both slip angles, push, lateral acceleration. */
export type HeldNumbers = [number, number, number, number];

/** What one of those numbers stands for: rad, rad, N/kg while it is small, m/s². */
export const SCALES = [0.1, 0.1, 5, 5] as const;

const LAST_BENT = 0.98; // counted push: beyond the most that is asked

/**
 * The push that is asked for, N/kg, by its count c: 5·c/√(1 − c²). More than tyres have is counted in
 * short steps, since easing gives next to nothing of it.
 */
export function pushOfCount(count: number): number {
  const bent = Math.min(LAST_BENT, Math.max(-LAST_BENT, count));
  const root = Math.sqrt(1 - bent * bent);
  return SCALES[2] * (bent / root + (count - bent) / (root * root * root));
}

/** The count of a push, N/kg. */
export function countOfPush(push: number): number {
  const units = push / SCALES[2];
  return units / Math.sqrt(1 + units * units);
}

/** The most push that is asked for, counted: 20 N/kg; easing gives all but nothing beyond. */
export const MOST_PUSH = countOfPush(20);

/**
 * Counted pushes at which it still shows whether more of one leads further: next to the most, easing
 * gives so little that no slope tells. The second one is for a push of which little is needed.
 */
export const TELLING_PUSHES = [0.7, 0.45] as const;

/** Counted turn per counted push below which a slope is noise. */
export const SLOPE_NOISE = 1e-6;

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
    held.push = pushOfCount(numbers[2]);
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
    push: pushOfCount(push),
    lateralAcceleration: ay * SCALES[3],
  };
}
