/** Places that went from one chapter to another: links to them, and what was kept of them, go along. */
const moves = [
  {
    from: "00-start-here",
    to: "09-your-workshop",
    ids: [
      ...["laps-to-tell", "there-and-back", "mean-scatter", "chance", "chance-return", "enough"],
      ...["ex-scatter", "ex-laps"],
    ],
  },
];

/** The page where a place of a page is now, if it went to another. */
export const movedTo = (id: string, page: string): string | undefined =>
  moves.find(({ from, ids }) => from === page && ids.includes(id))?.to;

/** The page where a place of a page was before. */
export const movedFrom = (id: string, page: string): string | undefined =>
  moves.find(({ to, ids }) => to === page && ids.includes(id))?.from;
