import type { SharpeningId } from "@rollbook/lib";

/** How each measurement is called: those that have a form, and those that are done without. */
export const titles = {
  "four-scales": "Four scales",
  "raised-axle": "One axle raised",
  "ride-rate": "Ballast over an axle",
  "sill-weight": "Weight on one sill",
  "motion-ratio": "Hub against spring",
  linkage: "Joints by tape",
  "tyre-rate": "Load on a tyre",
  "tyre-print": "Print of a tyre",
  circle: "The circle",
  ride: "A phone that rides along",
  "people-and-fuel": "Weigh who is in the car, and the fuel",
  "bar-and-links": "Measure the bar: across, arms, length, and its link against the wheel",
  wheels: "Weigh a wheel, brake and half of what carries it",
  alignment: "Measure camber and toe",
  travels: "Measure how far a wheel can rise and fall",
  "brake-share": "Look up pistons and discs, or the maker’s brake share",
} as const satisfies Readonly<Record<SharpeningId, string>> & Readonly<Record<string, string>>;

/** What is said of a measurement in a list of what would narrow most. */
export const nextInShort = {
  narrows: (balance: string, changes: string) =>
    `takes away ${balance} of the doubt of the balance, ${changes} of that of what changes do`,
  narrowsBalance: (balance: string) => `takes away ${balance} of the doubt of the balance`,
  ofAxle: (what: string, end: "front" | "rear") => `${what} (${end})`,
} as const;

/** Where the list of what to measure next has a thing. */
export const nextAnchor = (id: SharpeningId, end?: "front" | "rear"): string =>
  end === undefined ? `next-${id}` : `next-${id}-${end}`;
