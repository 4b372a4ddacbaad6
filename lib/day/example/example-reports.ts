import type { PhaseName } from "../../balance/phases.js";
import {
  type Comparison,
  type Confidence,
  type DriverInput,
  GREATEST_BALANCE,
  type Report,
} from "../log/report.js";

/** The invented drivers, in the order of the columns below. */
export const exampleDrivers: readonly string[] = ["Ada", "Bela", "Chidi", "Dana", "Emil", "Farah"];

interface Place {
  readonly corner: string;
  readonly phase: PhaseName;
  readonly input: DriverInput;
  /** A row for each run, a column for each driver. */
  readonly balance: readonly (readonly number[])[];
}

/** What everybody was asked about, after each of the six runs: balance, above 0 the front slides first. */
const places: readonly Place[] = [
  {
    corner: "Long Left",
    phase: "middle",
    input: "steady",
    balance: [
      [0, -1, 1, 2, 1, 0],
      [1, 0, 2, 2, 1, 1],
      [0, -1, 1, 1, 1, 0],
      [0, -2, 0, 1, 0, 0],
      [0, -1, 0, 1, 0, 0],
      [0, -1, 0, 2, 0, 0],
    ],
  },
  {
    corner: "Crest",
    phase: "braking in",
    input: "braking",
    balance: [
      [-1, -1, -1, -1, -1, -2],
      [1, 0, 0, 1, 0, -1],
      [0, -1, -1, 0, -1, -2],
      [-2, -2, -2, -1, -1, -3],
      [-2, -1, -2, -1, -1, -3],
      [0, 0, 0, 0, 0, -1],
    ],
  },
  {
    corner: "Gate",
    phase: "power on",
    input: "throttle",
    balance: [
      [1, 1, 1, 1, 1, 0],
      [1, 2, 1, 1, 2, 1],
      [0, 1, 0, 0, 1, 0],
      [0, 1, -1, -1, 1, 0],
      [-1, 0, -1, -1, 0, 0],
      [0, 1, 0, -1, 0, 0],
    ],
  },
  {
    corner: "Orchard",
    phase: "turn-in",
    input: "steering",
    balance: [
      [1, 2, 0, 1, 0, 0],
      [1, 3, 1, 2, 0, 1],
      [1, 2, 0, 2, -1, 1],
      [0, 1, 0, 0, -1, 0],
      [0, 1, 0, 1, -1, 0],
      [1, 2, 0, 2, 0, 0],
    ],
  },
];

const sure: readonly Confidence[] = [
  "certain",
  "fairly sure",
  "fairly sure",
  "certain",
  "a guess",
  "fairly sure",
];

const words: Readonly<Record<string, string>> = {
  "1 Dana Long Left": "Washes out from the middle on.",
  "1 Farah Crest": "The tail is light when I brake over the top.",
  "2 Ada Crest": "Calm now. It pushes a little instead.",
  "4 Farah Crest": "Too much: I had to let the brake go.",
  "5 Emil Long Left": "I am not sure anything is different.",
  "6 Dana Orchard": "Lazy again, and I do not know which of the two did it.",
};

/** What a driver reported after a run of the example; run 1 is the first. */
export function exampleReports(run: number, driver: string): Report[] {
  const column = exampleDrivers.indexOf(driver);
  return places.map(({ corner, phase, input, balance }): Report => {
    const now = balance[run - 1]?.[column] ?? 0;
    const before = balance[run - 2]?.[column];
    const said = words[`${run} ${driver} ${corner}`];
    return {
      corner,
      phase,
      input,
      balance: now,
      howOften: Math.abs(now) === GREATEST_BALANCE ? "every lap" : "most laps",
      ...(before !== undefined && { againstLastRun: comparison(before, now) }),
      confidence: sure[column] ?? "fairly sure",
      ...(said !== undefined && { words: said }),
    };
  });
}

/** Nearer to 0 is better; as far away on the other side cannot be told. */
function comparison(before: number, now: number): Comparison {
  if (now === before) return "same";
  if (Math.abs(now) === Math.abs(before)) return "cannot tell";
  return Math.abs(now) < Math.abs(before) ? "better" : "worse";
}
