import type { Three } from "./ride.js";

export const dot = (a: Three, b: Three): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

export const times = (a: Three, by: number): Three => [a[0] * by, a[1] * by, a[2] * by];

export const plus = (a: Three, b: Three): Three => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];

export const cross = (a: Three, b: Three): Three => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

export const lengthOf = (a: Three): number => Math.hypot(...a);

export const unit = (a: Three): Three => times(a, 1 / lengthOf(a));
