/** One value for each end of the car. */
export interface Axles<T> {
  readonly front: T;
  readonly rear: T;
}

/** One value for each side of the car. */
export interface Sides<T> {
  readonly left: T;
  readonly right: T;
}

/** One value for each wheel. */
export type Wheels<T> = Axles<Sides<T>>;

/**
 * The sum over all four wheels.
 *
 * @example
 * sumOfWheels({ front: { left: 1, right: 2 }, rear: { left: 3, right: 4 } }) // → 10
 */
export function sumOfWheels({ front, rear }: Wheels<number>): number {
  return front.left + front.right + rear.left + rear.right;
}

/**
 * The same work done for the front and for the rear.
 *
 * @example
 * eachAxle({ front: 1, rear: 2 }, (one) => 2 * one).rear // → 4
 */
export function eachAxle<T, U>(
  { front, rear }: Axles<T>,
  work: (axle: T, end: "front" | "rear") => U,
): Axles<U> {
  return { front: work(front, "front"), rear: work(rear, "rear") };
}
