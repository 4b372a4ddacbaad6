/** How sure figures are, and what would make them surer. */
export const surerWords = {
  begin: "How sure is this?",
  stop: "Stop",
  working: "Sampling cars …",
  progress: (count: number, of: number) =>
    count < of ? `From ${count} of ${of} sampled cars.` : `From ${of} sampled cars.`,
  waiting: "What would make it surer is told from some more of them.",
  surer: "What would make it surer:",
  nothing: "no tape and no scales by much; what tyres grip, only driving tells",
  all: "what to measure next",
  verdicts: {
    sure: "sure",
    likely: "likely",
    "cannot say": "cannot say",
  },
  margin: (part: string, low: string, high: string, verdict: string) =>
    `${part}: nine in ten cars that differ from this one as far as its numbers may be off have a margin of ${low} to ${high}; which end gives up first: ${verdict}.`,
  tips: (part: string) => `${part}: most cars like this one tip over before their tyres let go.`,
} as const;
