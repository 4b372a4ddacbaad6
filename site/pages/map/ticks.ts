import { type MapAxis, settable } from "@rollbook/lib";

/** Settings to be named along an axis: the least, the greatest that is reached, and even steps between. */
export function ticksOf(axis: MapAxis, most: number): number[] {
  const [first, last] = [settable(axis, axis.min), settable(axis, axis.max)];
  const steps = Math.round((last - first) / axis.step);
  const stride = Math.max(1, Math.ceil(steps / Math.max(1, most - 1)));
  const count = Math.floor(steps / stride) + 1;
  return Array.from({ length: count }, (_, i) => settable(axis, first + i * stride * axis.step));
}
