import { phaseNames } from "../../balance/phases.js";
import {
  count,
  type GroupShape,
  group,
  list,
  numberWithin,
  optional,
  type Shape,
  text,
} from "../../car/file/shape.js";
import { carLenses, endLenses } from "../../change/levers.js";
import { stages } from "../plan/minutes.js";
import { MOST_STEPS } from "../plan/plan.js";
import { venueShape } from "../plan/venue-file.js";
import { MOST_LAPS } from "./lap-times.js";
import { type EntryKind, expectations, happeningKinds, roadStates } from "./log.js";
import { confidences } from "./report.js";
import { reportShape } from "./report-file.js";

const measurements = list(
  "What was measured",
  group("A number that somebody measured", {
    what: text("What was measured, as a code"),
    value: numberWithin("In the SI unit of its quantity", "ratio", -1e12, 1e12),
    quantity: text("What kind of number it is"),
    end: optional(text("At which end", ["front", "rear"])),
    side: optional(text("On which side", ["left", "right"])),
    spread: optional(numberWithin("One standard deviation", "ratio", 0, 1e12)),
    by: optional(text("Who measured it")),
    how: optional(text("With what, and in which way")),
  }),
  1000,
);

const head = {
  id: text("Device and number"),
  at: text("When it was written, UTC"),
  author: text("Who wrote it: a person, or else a device"),
  replaces: optional(text("The entry that this one stands for now")),
  carNumber: optional(count("Which car of the day", 1, 50)),
  setUp: optional(text("The set-up that it is about")),
  run: optional(text("The run that it is about")),
  conditions: optional(
    group("What it is like outside", {
      road: optional(text("How wet the road is", roadStates)),
      words: optional(text("Weather, tyres, traffic")),
    }),
  ),
  measurements: optional(measurements),
};

const levers = [...Object.keys(endLenses), ...Object.keys(carLenses)];

const change = group("A change of the set-up", {
  lever: text("What is changed", levers),
  end: optional(text("At which end", ["front", "rear"])),
  side: optional(text("On which side; left out: both", ["left", "right"])),
  by: numberWithin("How much is added, SI", "ratio", -1e6, 1e6),
});

const minutes = group(
  "Minutes that differ from the usual ones",
  Object.fromEntries(
    stages.map((stage) => [stage, optional(numberWithin(stage, "ratio", 0, 1440))]),
  ) as Record<string, Shape>,
);

const step = group("One run of the plan", {
  kind: text("What is done before it", ["baseline", "change", "return", "no change"]),
  change: optional(change),
  putBack: optional(text("Whether the seats are turned back", ["seats", "nothing"])),
  outsideClass: optional(text("Kept though it breaks the class", ["kept"])),
  minutes: optional(minutes),
  note: optional(text("Anything worth knowing")),
  on: optional(text("Where it is driven; left out: at the corners of the venue", ["circle"])),
});

const steps = list("The runs", step, MOST_STEPS);

const otherCar = group("A car that is not like the first", {
  carNumber: count("Which car of the day", 2, 50),
  setUp: text("The set-up its runs start from"),
  steps,
  changeMinutes: optional(numberWithin("Minutes for a change", "ratio", 0, 1440)),
});

const votes = (letter: string) => count(`Cards ${letter}`, 0, 10_000);

/** What an entry of any kind has. */
export const headShape: GroupShape = group("An entry", head);

/** Every kind of entry, field by field; the car of a set-up is read as a car file. */
export const entryShapes: Readonly<Record<EntryKind, GroupShape>> = {
  event: group("A day", {
    ...head,
    name: text("What it is called"),
    venue: venueShape as Shape,
    minutes: numberWithin("Minutes of the day", "ratio", 0, 10_000),
    drivers: list("Names", text("A name"), 200),
    cars: count("How many cars", 1, 50),
    steps,
    setUp: text("The set-up it starts from"),
    usual: optional(minutes),
    swap: optional(numberWithin("Minutes between rounds", "ratio", 0, 60)),
    others: optional(list("Cars that are not like the first", otherCar, 49)),
  }),
  "set-up": group("A version of a set-up", {
    ...head,
    car: group("The car", {}),
    follows: optional(text("The version it was made from")),
    note: optional(text("Anything worth knowing")),
  }),
  run: group("A run", {
    ...head,
    setUp: text("The set-up that was driven"),
    driver: text("Who drove"),
    runNumber: optional(count("Which run of the plan", 1, 1000)),
    round: optional(count("Which round of the run", 1, 200)),
    lapTimes: optional(list("Lap times", numberWithin("A lap", "time", 1, 10_000), MOST_LAPS)),
  }),
  report: group("A report", {
    ...head,
    run: text("The run it is about"),
    report: reportShape as Shape,
  }),
  prediction: group("A prediction", {
    ...head,
    setUp: text("The set-up it is about"),
    by: optional(text("Who expects it")),
    corner: optional(text("In which corner")),
    phase: optional(text("In which part of the corner", phaseNames)),
    expects: text("What is expected", expectations),
    reason: text("Why"),
    confidence: optional(text("How sure", confidences)),
  }),
  poll: group("A vote with cards", {
    ...head,
    question: text("The question"),
    right: text("The right answer", ["a", "b", "c", "d"]),
    vote: count("First or second vote", 1, 2),
    count: group("Cards", { a: votes("A"), b: votes("B"), c: votes("C"), d: votes("D") }),
  }),
  note: group("A note", {
    ...head,
    words: text("The note"),
    about: optional(text("The entry it is about")),
  }),
  question: group("A question to vote on", {
    ...head,
    ask: text("What is asked"),
    choices: list("The answers", text("An answer"), 4),
    vote: count("First or second vote", 1, 2),
    state: text("Whether votes are still taken", ["open", "closed"]),
  }),
  vote: group("What one person chose", {
    ...head,
    question: text("The question"),
    letter: text("The answer", ["a", "b", "c", "d"]),
    by: text("Who voted"),
  }),
  happening: group("What happened on the day", {
    ...head,
    what: text("What happened", happeningKinds),
    day: text("The day"),
    runNumber: count("Which run of the plan", 1, 1000),
    stage: optional(text("How far the run was", stages)),
    driver: optional(text("Who")),
    other: optional(text("With whom")),
    change: optional(change),
    minutes: optional(numberWithin("How long", "ratio", 0, 1440)),
  }),
  measurement: group("What was measured in a run", {
    ...head,
    day: text("The day"),
    runNumber: count("Which run of the plan", 1, 1000),
    driver: optional(text("Who drove")),
    measurements,
  }),
  withdrawal: group("Takes an entry back", {
    ...head,
    of: text("The entry that is taken back"),
    reason: text("Why"),
  }),
};
