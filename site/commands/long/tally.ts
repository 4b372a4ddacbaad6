/** What a law was tried on, how often, and whether time cut it short. */
export interface Tally {
  readonly kind: Kind;
  readonly tried: number;
  readonly cut: boolean;
}

export const kinds = [
  "cars at the edge",
  "cars",
  "drives",
  "files",
  "links",
  "other cases",
] as const;
export type Kind = (typeof kinds)[number];

const places: readonly (readonly [Kind, RegExp])[] = [
  ["cars at the edge", /\/edge\//],
  ["drives", /\/(transient|practice)\//],
  ["links", /link|share|site\/map\//],
  ["files", /fuzz|\/(parse|log-file|csv|merge)\.test/],
  ["cars", /\/(laws|limit-balance|report)\.test/],
];

/** What the laws of a test file are tried on. */
export const kindOf = (testPath: string): Kind =>
  places.find(([, place]) => place.test(testPath))?.[0] ?? "other cases";

/** Laws of one kind taken together. */
export interface Count {
  readonly laws: number;
  readonly tried: number;
  /** Laws that time cut short. */
  readonly cut: number;
}

export type Counts = Readonly<Record<Kind, Count>>;

export function countsOf(tallies: readonly Tally[]): Counts {
  const count = (kind: Kind): Count => {
    const own = tallies.filter((tally) => tally.kind === kind);
    return {
      laws: own.length,
      tried: own.reduce((sum, { tried }) => sum + tried, 0),
      cut: own.filter(({ cut }) => cut).length,
    };
  };
  return Object.fromEntries(kinds.map((kind) => [kind, count(kind)])) as Counts;
}
