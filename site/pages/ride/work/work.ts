import {
  Refusal,
  type RideFacts,
  requireRide,
  rideFacts,
  type SameDriving,
  sameDriving,
} from "@rollbook/lib";
import type { Packed } from "../../../store/rides.js";
import { packed, unpacked } from "./packed.js";
import { type Mapping, rideFrom, tableOf } from "./table.js";

/** What is asked of a ride, besides the page. */
export type Ask =
  | { readonly kind: "facts"; readonly ride: Packed; readonly other?: Packed }
  | { readonly kind: "table"; readonly ride: Packed }
  | { readonly kind: "taken"; readonly text: string; readonly mapping: Mapping };

/** What a ride tells, and how a second one was driven beside it. */
export interface Told {
  readonly facts: RideFacts;
  readonly same?: SameDriving;
  /** Why the two cannot be held against each other. */
  readonly notSame?: string;
}

export type Answer =
  | { readonly kind: "facts"; readonly told: Told }
  | { readonly kind: "table"; readonly text: string }
  | { readonly kind: "taken"; readonly ride: Packed }
  | { readonly kind: "refused"; readonly why: string };

/** Does what is asked; a refusal is an answer. */
export function answerTo(ask: Ask): Answer {
  try {
    if (ask.kind === "facts") return { kind: "facts", told: toldOf(ask.ride, ask.other) };
    if (ask.kind === "table") return { kind: "table", text: tableOf(unpacked(ask.ride)) };
    return { kind: "taken", ride: packed(requireRide(rideFrom(ask.text, ask.mapping))) };
  } catch (error) {
    if (error instanceof Refusal) return { kind: "refused", why: error.message };
    throw error;
  }
}

function toldOf(ride: Packed, other: Packed | undefined): Told {
  const facts = rideFacts(unpacked(ride));
  if (other === undefined) return { facts };
  try {
    return { facts, same: sameDriving(rideFacts(unpacked(other)).corners, facts.corners) };
  } catch (error) {
    if (error instanceof Refusal) return { facts, notSame: error.message };
    throw error;
  }
}
