import type { EventEntry, Log } from "@rollbook/lib";

/** What is talked about: all that drivers did in one run of a day, or what one of them did. */
export interface Topic {
  readonly log: Log;
  readonly event: EventEntry;
  readonly run: number;
  /** The car of the plan: 1 is the first, and all that are like it. */
  readonly car: number;
  /** Left out for the group. */
  readonly driver: string | undefined;
}
