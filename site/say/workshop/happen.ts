import type { Remedied } from "@rollbook/lib";

/** What is said of what happens on a day that no plan knows. */
export const happen = {
  title: "Something else happened",
  help: "Each goes into the log with its time and can be taken back. Cards and sheets follow at once.",
  carTitle: (car: number, name: string) => `Car ${car}: ${name}`,
  done: "The car is ready as the card says: file set-up and runs",
  skip: "The change was skipped",
  skipped: (car: string) => `${car}The change was skipped: the car is filed as it stood before.`,
  otherTitle: "Another change was made",
  otherWhat: "What was changed",
  otherFile: "File this change in its place",
  otherFiled: (what: string) => `Filed in its place: ${what}.`,
  rain: "Rain now",
  dry: "Dry again",
  baseline: "Make the next run a new baseline",
  baselineAdded: "The next run is a baseline on this road.",
  weather: (wet: boolean) =>
    wet
      ? "Rain is in the log: wet runs are not compared with dry ones. A new baseline gives them something to be compared with."
      : "Dry again is in the log: dry runs are compared with dry ones only. A new baseline gives them something to be compared with.",
  who: "Who",
  choose: "Choose …",
  left: "Left for the day",
  leftNow: (driver: string) => `${driver} has left; from this run on the others go on without.`,
  joins: "Name of who joins",
  join: "Joined",
  joined: (driver: string) => `${driver} drives from this run on.`,
  joinFault: "Write a name that is not among the drivers yet.",
  swapWith: "With whom",
  swap: "Swap the two in this run",
  swapped: (one: string, other: string) => `${one} and ${other} have swapped in this run.`,
  swapFault: "Choose two drivers.",
  whoFault: "Choose a driver first.",
  people: "Drivers",
  road: "Road",
  runs: "Runs and time",
  notCount: "This run does not count",
  doesNotCount: (run: number) =>
    `Run ${run} is left out of every comparison; the car stays as it is filed.`,
  wrong: "Reports were filed under the wrong run",
  wrongOf: "Reports of",
  wrongTo: "belong to run",
  wrongMove: "Move them",
  moved: (count: number, driver: string, run: number) =>
    `${count === 1 ? "One report" : `${count} reports`} of ${driver} now ${count === 1 ? "belongs" : "belong"} to run ${run}.`,
  nothingToMove: "That driver has no reports in this run.",
  break: (minutes: number) => `Break of ${minutes} min`,
  breakBegun: (minutes: number) =>
    `A break of ${minutes} min: the clock stands still, and the plan ends that much later.`,
  list: "What happened so far",
  takeBack: "Take it back",
  takenBack: "Taken back: it stays in the log as withdrawn.",
  reason: "Taken back.",
  at: (time: string, run: number, what: string, who: string) =>
    `${time}, run ${run}: ${what} (${who})`,
  told: {
    "change skipped": "change skipped",
    "other change": "another change",
    weather: "the road is now",
    "driver left": "left",
    "driver joined": "joined",
    "drivers swapped": "swapped",
    "run does not count": "does not count",
    break: "break",
  },
  late: (minutes: number, end: string, over: number) =>
    `${minutes > 0 ? `The day is ${minutes} min behind. ` : ""}As planned it is over after ${end}, ${over} min too late.`,
  remedies: "Three ways to be over in time",
  remedy: ({ remedy, dropped = 0, stint = 0 }: Remedied): string =>
    remedy === "drop the last runs"
      ? `Drop the last ${dropped === 1 ? "run" : `${dropped} runs`}`
      : remedy === "shorter stints"
        ? `Stints of ${stint} min in the runs to come`
        : "Reports only: no teaching and no talk in the runs to come",
  remedied: (what: string, end: string) => `${what}: over after ${end}. The plan is filed.`,
  ends: (end: string, inTime: boolean) => `over after ${end}${inTime ? "" : ", still too late"}`,
  nextRound: "Next round",
} as const;
