/** How sure limit and balance are. */
export const sureWords = {
  heading: "How sure",
  columns: { phase: "part", limit: "up to", margin: "margin", verdict: "which end" },
  help: (unit: string) =>
    `Nine in ten cars that differ from this one as far as its numbers may be off lie between these, in ${unit}; a margin above 0 means that the front gives up first. Sure: 95 % or more agree on which end; likely: 75 % or more.`,
  working: "Working out how sure this is …",
  progress: (count: number, of: number) => `From ${count} of ${of} sampled cars.`,
  range: (low: string, high: string) => `${low} to ${high}`,
  sure: "sure",
  likely: "likely",
  "cannot say": "cannot say",
  waiting: "…",
  doubt: (name: string, share: number) => `${name} (about ${share} %)`,
  widest: (names: string) => `What to measure better first, with its share of the doubt: ${names}.`,
} as const;
