import fc from "fast-check";
import { phaseNames } from "../../../../lib/balance/phases.js";
import { demoCar } from "../../../../lib/car/demo-car.js";
import { applyChange } from "../../../../lib/change/apply.js";
import { possibleChanges } from "../../../../lib/change/steps.js";
import { exampleLog } from "../../../../lib/day/example/example-event.js";
import {
  expectations,
  type LaterEntry,
  type Log,
  type LogEntry,
} from "../../../../lib/day/log/log.js";
import {
  comparisons,
  confidences,
  driverInputs,
  grades,
  howOften,
  type Report,
  speedClasses,
} from "../../../../lib/day/log/report.js";

/** Any text, those that spreadsheets and parsers stumble over among them. */
export const anyText: fc.Arbitrary<string> = fc.oneof(
  fc.string({ unit: "grapheme", maxLength: 40 }),
  fc.constantFrom(
    "=1+1",
    "'=x",
    "-2",
    "@a",
    "a,b",
    'say "so"',
    "two\r\nlines",
    "; ",
    " ",
    "'",
    "\ttab",
  ),
);

/** Any report, complete or not. */
export const anyReport: fc.Arbitrary<Report> = fc.record(
  {
    corner: anyText,
    phase: fc.constantFrom(...phaseNames),
    speedClass: fc.constantFrom(...speedClasses),
    input: fc.constantFrom(...driverInputs),
    grade: fc.constantFrom(...grades),
    balance: fc.integer({ min: -3, max: 3 }),
    howOften: fc.constantFrom(...howOften),
    againstLastRun: fc.constantFrom(...comparisons),
    confidence: fc.constantFrom(...confidences),
    words: anyText,
  },
  { requiredKeys: [] },
);

const ids = fc
  .tuple(fc.constantFrom("desk", "phone1", "k3f9"), fc.integer({ min: 1, max: 6 }))
  .map(([device, number]) => `${device}-${number}`);

const head = {
  id: ids,
  at: fc
    .integer({ min: Date.UTC(2031, 0), max: Date.UTC(2031, 0) + 1e6 })
    .map((time) => new Date(time).toISOString()),
  author: fc.constantFrom("desk", "Ada"),
};

const changes = possibleChanges(demoCar);
const anyCar = fc
  .constantFrom(undefined, ...changes)
  .map((change) => (change === undefined ? demoCar : applyChange(demoCar, change)));

/** What JSON can hold. */
const withoutMinusZero = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

/** Any entry but events, whose many fields the example log covers. */
export const anyEntry: fc.Arbitrary<LogEntry> = fc.oneof(
  fc.record({ ...head, kind: fc.constant("set-up" as const), car: anyCar }),
  fc.record({ ...head, kind: fc.constant("run" as const), setUp: ids, driver: anyText }),
  fc.record({ ...head, kind: fc.constant("report" as const), run: ids, report: anyReport }),
  fc.record({
    ...head,
    kind: fc.constant("prediction" as const),
    setUp: ids,
    expects: fc.constantFrom(...expectations),
    reason: anyText,
  }),
  fc.record({ ...head, kind: fc.constant("note" as const), words: anyText }),
  fc.record({
    ...head,
    kind: fc
      .constantFrom("tyre-temperatures", "car-swap")
      .map((kind) => kind as LaterEntry["kind"]),
    carNumber: fc.integer({ min: 1, max: 50 }),
    more: fc.jsonValue({ maxDepth: 3 }).map(withoutMinusZero),
  }),
  fc.record({ ...head, kind: fc.constant("withdrawal" as const), of: ids, reason: anyText }),
);

/** Any log; the same id may stand for different things in it. */
export const anyLog: fc.Arbitrary<Log> = fc
  .oneof(
    { weight: 9, arbitrary: fc.array(anyEntry, { maxLength: 12 }) },
    { weight: 1, arbitrary: fc.constant([...exampleLog.entries]) },
  )
  .map((entries) => ({ entries }));
