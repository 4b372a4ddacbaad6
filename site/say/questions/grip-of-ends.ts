import { type GripOfEnds, otherEnd } from "@rollbook/lib";
import type { Tell } from "./tell.js";

/** How the grip of both ends changes when one of them is changed. */
export function gripChanges({ end, own, other }: GripOfEnds, tell: Tell): string {
  const said = (name: string, { before, after }: GripOfEnds["own"]) =>
    `the ${name} could give ${tell.newtons(before)} and can now give ${tell.newtons(after)}`;
  return `In this turn ${said(end, own)}, ${said(otherEnd(end), other)}.`;
}
