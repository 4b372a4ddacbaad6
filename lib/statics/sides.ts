import type { Sides } from "../load/wheels.js";

/** The same work done for both sides. */
export function eachSide<T, U>(
  { left, right }: Sides<T>,
  work: (value: T, side: "left" | "right") => U,
): Sides<U> {
  return { left: work(left, "left"), right: work(right, "right") };
}
