import { paused } from "@rollbook/lib";
import { clock, setClock } from "./state.js";

/** Holds the clock, and moves the plan by as much as the break takes, so that nobody is late by it. */
export function holdForBreak(minutes: number): void {
  const held = paused(clock.now.value, Date.now());
  const { begun } = held;
  setClock(begun === undefined ? held : { ...held, begun: begun + minutes * 60e3 });
}
