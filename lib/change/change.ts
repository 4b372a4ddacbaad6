import type { AxleLever, CarLever } from "../car/car.js";

/** An end of the car. */
export type End = "front" | "rear";

export const otherEnd = (end: End): End => (end === "front" ? "rear" : "front");

/** What can be changed at an axle. */
export type EndLever = AxleLever | "barPosition";

/** A change at one axle, at both wheels or at one of them. */
export interface EndChange {
  readonly lever: EndLever;
  readonly end: End;
  /** Left out: both sides alike. Springs, bars, dampers and roll centres are changed on both. */
  readonly side?: "left" | "right";
  /** How much is added, SI; positions for a bar, turns for a spring seat. */
  readonly by: number;
}

/** A change of the whole car. */
export interface CarChange {
  readonly lever: CarLever;
  /** How much is added, SI. */
  readonly by: number;
}

/** One thing done to the set-up, as a value: it can be kept, sent, applied and undone. */
export type Change = EndChange | CarChange;

/** Whether a change belongs to one axle. */
export function isEndChange(change: Change): change is EndChange {
  return "end" in change;
}

/** The change that takes another one back. */
export function undoOf(change: Change): Change {
  return { ...change, by: -change.by };
}
