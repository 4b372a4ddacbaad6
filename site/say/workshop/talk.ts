/** What the talk says. */
export const talk = {
  noRuns: "No run of this day has reports yet.",
  run: "Which run",
  about: "Whose reports",
  whichCar: "Which car",
  otherRoad: (names: string) =>
    `${names}: the run before was on another road, wet or dry. What was felt may be the water, so it is not compared. Drive a new baseline on this road first.`,
  addBaseline: "Make the next run a new baseline",
  baselineAdded: (run: number) => `Run ${run} is a baseline on this road.`,
  otherCar: (names: string) =>
    `${names}: never in this car before. What was felt in another car is not compared.`,
  leftOut: "This run does not count: it was taken out of the comparisons.",
  group: "The group, without names",
  first: "1 · What was reported",
  firstHelp:
    "Let everybody say it in their own words first, without lap times. Nothing here says that a driver was wrong.",
  second: "2 · What was predicted",
  third: "3 · What the model says",
  fourth: "4 · What to try next",
  noPredictions: "Nobody filed a prediction for this run.",
  predicted: (expects: string, count: number) => `${expects}: ${count}`,
  reason: (reason: string, sure: string) => (sure === "" ? reason : `${reason} (${sure})`),
  baselineRun: "This is the first run: there is nothing to compare it with yet.",
  notComparable:
    "The set-ups of this run and the one before are not both in the log: begin runs under Run, or take in the file of the device that did.",
  tested: (changes: string) => `Changed against the run before: ${changes}.`,
  was: (load: string) => `was ${load}`,
  inTurn: (
    turn: string,
    front: { before: string; now: string },
    rear: { before: string; now: string },
  ) => {
    const seen = `From behind in a settled left turn at ${turn}; pale: the body before.`;
    return front.before === front.now && rear.before === rear.now
      ? `${seen} No load moves: the outer tyres carry ${front.now} in front and ${rear.now} at the rear, as before.`
      : `${seen} The outer front tyre goes from ${front.before} to ${front.now}, the outer rear one from ${rear.before} to ${rear.now}.`;
  },
  nothingTested:
    "Nothing was changed against the run before: this is how much feeling moves by itself.",
  confounded: (changes: string) =>
    `Several things were changed at once (${changes}): against the run before nobody can say which of them was felt. Drive them one by one.`,
  columns: {
    corner: "Where",
    phase: "When",
    count: "Drivers",
    felt: "Felt, points",
    predicted: "Predicted",
    verdict: "Side by side",
    reasons: "Why it may be so",
    balance: "Balance now",
    words: "Words",
    input: "Doing what",
  },
  halfWithin: (spread: string) => `half within ±\u00a0${spread}`,
  barsHelp: "A bar to the left: towards the rear sliding first; to the right: the front.",
  tooFew: "too few to show without names",
  verdicts: {
    match: "as predicted",
    opposite: "the other way",
    "nothing felt": "nothing felt",
    "other phase": "felt in another part",
    "felt, not predicted": "felt, not predicted",
    confounded: "confounded",
    "no comparison": "nothing to compare",
  },
  counted: (verdict: string, count: number) => `${verdict}: ${count}`,
  at: (corner: string, phase: string) => `${corner}, ${phase}`,
  which: "Which places to go by",
  place: (corner: string, phase: string, balances: string) => `${corner}, ${phase}: ${balances}`,
  pressure: "Hot pressures",
  pressures: {
    unknown: "not measured",
    right: "all where they should be",
    front: "off at the front",
    rear: "off at the rear",
    both: "off at both ends",
  },
  workOut: "Work out the next change",
  working: "Trying every single change of this car …",
  noSetUp:
    "The set-up of this run is not in the log: begin the run under Run, or take in the file of the device that did.",
  cannotStand: (why: string) => `The model cannot work with this car: ${why}`,
  outdated: "The log says more since this was worked out: work it out again to count that too.",
  chooseOne: "Choose at least one place.",
  asks: "To ask first",
  proposals: "Single changes, the best first",
  effect: "Shift of balance, seats put back",
  why: "Why it should help",
  costs: "What it does, and costs, in the other parts",
  noCosts: "In the other parts of those corners nothing of it is likely to be felt.",
  minutes: (count: number, given: number | undefined) =>
    given === undefined
      ? `About ${count} min to make, with what is put back. How many a change may take on this car nobody has said yet (Plan, minutes that you know best).`
      : `About ${count} min to make, with what is put back; a change has ${given}.`,
  between: "For between two sessions: they take longer than a change may",
  putBack: "Put back with it",
  nothingBack: "Nothing has to be put back.",
  sideEffects: "What else moves",
  addToPlan: "Add to the plan as the next run",
  added: (run: number) => `Added to the plan as run ${run}, with the minutes of the run before.`,
  clause: (clause: string) => `With it ${clause}.`,
  others: (count: number) => `Why not the others (${count})`,
  because: (name: string, why: string) => `${name}: ${why}`,
} as const;
