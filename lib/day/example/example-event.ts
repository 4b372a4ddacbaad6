import type { EventEntry, Log, LogEntry, RunEntry, SetUpEntry } from "../log/log.js";
import { measurable } from "../log/measured-entries.js";
import { mergeLogs } from "../log/merge.js";
import { exampleCars, exampleChanges } from "./example-cars.js";
import { exampleDrivers, exampleReports } from "./example-reports.js";
import { exampleVenue } from "./example-venue.js";

const START = Date.UTC(2031, 4, 10, 9); // a Saturday

/** A time of the example day, from minutes after its start. */
function at(minutes: number): string {
  return new Date(START + minutes * 60e3).toISOString();
}

const setUps: readonly SetUpEntry[] = [
  {
    kind: "set-up",
    id: "desk-1",
    author: "desk",
    at: at(-30),
    car: exampleCars.baseline,
    note: "As measured.",
  },
  {
    kind: "set-up",
    id: "desk-3",
    author: "desk",
    at: at(54),
    follows: "desk-1",
    car: exampleCars.stifferFront,
  },
  {
    kind: "set-up",
    id: "desk-4",
    author: "desk",
    at: at(99),
    follows: "desk-3",
    car: exampleCars.baseline,
  },
  {
    kind: "set-up",
    id: "desk-5",
    author: "desk",
    at: at(144),
    follows: "desk-4",
    car: exampleCars.stifferRear,
  },
  {
    kind: "set-up",
    id: "desk-6",
    author: "desk",
    at: at(230),
    follows: "desk-5",
    car: exampleCars.twoChanges,
    note: "Planned: the front bar only. The front pressures were let down as well, to save time.",
  },
];

const event: EventEntry = {
  kind: "event",
  id: "desk-2",
  author: "desk",
  at: at(-20),
  name: "Club day of the Plover Heath drivers",
  venue: exampleVenue,
  minutes: 300,
  drivers: exampleDrivers,
  cars: 2,
  steps: [
    { kind: "baseline" },
    { kind: "change", change: exampleChanges.stifferFrontBar },
    { kind: "return" },
    { kind: "change", change: exampleChanges.stifferRearBar },
    { kind: "no change", note: "Announced: the car stays as it is." },
    { kind: "change", change: exampleChanges.stifferFrontBar },
  ],
  setUp: "desk-1",
};

/** Set-up, minute of the first stint and conditions of each run. */
const runs = [
  { setUp: "desk-1", minute: 9, conditions: { road: "dry", words: "cool tyres at first" } },
  { setUp: "desk-3", minute: 54, conditions: { road: "dry" } },
  { setUp: "desk-4", minute: 99, conditions: { road: "dry" } },
  { setUp: "desk-5", minute: 144, conditions: { road: "dry", words: "light wind" } },
  { setUp: "desk-5", minute: 185, conditions: { road: "dry", words: "light wind" } },
  { setUp: "desk-6", minute: 230, conditions: { road: "dry", words: "warmer" } },
] as const;

/** Both cars drive three rounds of eight minutes; each driver writes on a phone of their own. */
function entriesOf(driver: string, column: number): LogEntry[] {
  const phone = `phone${column + 1}`;
  const [carNumber, round] = [(column % 2) + 1, Math.floor(column / 2)];
  const number = (run: number, place: number) => `${phone}-${run * 5 + place + 1}`;
  return runs.flatMap(({ setUp, minute, conditions }, i) => {
    const driven = minute + 8 * ((round - i + 6) % 3); // who goes first moves on by one from run to run
    const id = number(i, 0);
    const run: RunEntry = {
      kind: "run",
      id,
      at: at(driven),
      setUp,
      author: driver,
      driver,
      runNumber: i + 1,
      carNumber,
      conditions,
    };
    const reports = exampleReports(i + 1, driver).map(
      (report, place): LogEntry => ({
        kind: "report",
        id: number(i, place + 1),
        at: at(driven + 9),
        author: driver,
        run: id,
        report,
      }),
    );
    return [run, ...reports];
  });
}

const spoken: readonly LogEntry[] = [
  {
    kind: "prediction",
    id: "desk-7",
    author: "desk",
    at: at(50),
    setUp: "desk-3",
    by: "Bela",
    corner: "Long Left",
    phase: "middle",
    expects: "rear slides first",
    reason: "A stiffer end has to hold better.",
    confidence: "fairly sure",
  },
  {
    kind: "prediction",
    id: "desk-8",
    author: "desk",
    at: at(51),
    setUp: "desk-3",
    by: "Dana",
    corner: "Long Left",
    phase: "middle",
    expects: "front slides first",
    reason: "The front takes more of the load transfer and loses grip by it.",
    confidence: "certain",
  },
  {
    kind: "poll",
    id: "desk-9",
    author: "desk",
    at: at(46),
    question: "What does a stiffer front bar do to the total load transfer?",
    right: "c",
    vote: 1,
    count: { a: 2, b: 1, c: 3, d: 0 },
  },
  {
    kind: "poll",
    id: "desk-10",
    author: "desk",
    at: at(49),
    question: "What does a stiffer front bar do to the total load transfer?",
    right: "c",
    vote: 2,
    count: { a: 1, b: 0, c: 5, d: 0 },
  },
  {
    kind: "note",
    id: "desk-11",
    author: "desk",
    at: at(265),
    about: "desk-6",
    words: "Two changes at once: drive the front bar alone next time.",
  },
];

const RADIUS = 20; // m
const firstId = { Ada: 20, Bela: 40 } as const;

/** Laps of the circle after each run, s by hand, as two drivers drove them. */
const circleLaps = {
  Ada: [
    [9.21, 9.14, 9.19],
    [9.16, 9.24, 9.2],
    [9.15, 9.18, 9.11],
    [9.08, 9.15, 9.1],
    [9.12, 9.06, 9.17],
    [9.19, 9.13, 9.22],
  ],
  Bela: [
    [9.36, 9.29, 9.41],
    [9.33, 9.42, 9.35],
    [9.3, 9.27, 9.38],
    [9.22, 9.31, 9.25],
    [9.29, 9.21, 9.27],
    [9.33, 9.26, 9.37],
  ],
} as const;

const onTheCircle = (driver: keyof typeof circleLaps): LogEntry[] =>
  circleLaps[driver].map((laps, i) => ({
    kind: "measurement",
    id: `desk-${firstId[driver] + i}`,
    author: "desk",
    at: at((runs[i]?.minute ?? 0) + 26),
    day: event.id,
    runNumber: i + 1,
    driver,
    measurements: [
      { ...measurable.circleRadius, value: RADIUS },
      ...laps.map((value) => ({ ...measurable.circleLap, value })),
    ],
  }));

/** A complete invented day: plan, set-ups, runs, reports, laps of a circle, predictions, votes and notes. */
export const exampleLog: Log = mergeLogs({
  entries: [
    ...setUps,
    event,
    ...exampleDrivers.flatMap(entriesOf),
    ...onTheCircle("Ada"),
    ...onTheCircle("Bela"),
    ...spoken,
  ],
});
