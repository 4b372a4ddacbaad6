/** What is said of what the course can tell, and of what to measure next. */
export const nextWords = {
  title: "What the course can tell of this car, and what to measure next",
  lead: "Cars that differ from this one as far as its numbers may be off are sampled: what nearly all of them do, the course can tell. Each number is then held against what it widens.",
  begin: (car: string) => `Work it out for ${car}`,
  stop: "Stop",
  working: "Sampling cars …",
  progress: (count: number, of: number) =>
    count < of
      ? `From ${count} of ${of} sampled cars; more of them find more.`
      : `From ${of} sampled cars.`,
  refused: "This car cannot be sampled: see Your car for what is wrong.",
  canTell: "Which end gives up first",
  sure: (which: string) => `${which}: sure`,
  likely: (which: string) => `${which}: likely`,
  cannot: "it cannot say",
  front: "the front",
  rear: "the rear",
  changes: "Which way a change moves the balance, in the middle of the corner",
  towardsFront: "towards the front sliding first",
  towardsRear: "towards the rear sliding first",
  noChanges: "No adjuster of this car is in its file: put some in on Your car.",
  list: "What to measure next",
  nothing: "Nothing that these means can measure stands out yet.",
  rest: "What tyres really grip is most of the doubt that is left, and no tape measures it: only driving does. The circle shows what a change does, whatever the grip.",
} as const;
