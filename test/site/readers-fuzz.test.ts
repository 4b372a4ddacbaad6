import {
  asClock,
  asGiven,
  type Car,
  type ClassRule,
  exampleLog,
  formatClass,
  formatLog,
  formatReports,
  parseClass,
  parseReports,
  standing,
} from "@rollbook/lib";
import fc from "fast-check";
import { expect, it, vi } from "vitest";
import { inShort } from "../../lib/car/file/in-short.js";
import { readEntry } from "../../lib/day/log/entry-file.js";
import { asReporting } from "../../lib/day/log/report-answers.js";
import { courseAt, viewIn } from "../../site/hand-over/course.js";
import { dayNamedIn, lettersIn, lettersOfLinks } from "../../site/hand-over/log-text.js";
import { unpack } from "../../site/hand-over/packed.js";
import { asDraft as asDay } from "../../site/pages/workshop/day/draft.js";
import { readFile } from "../../site/pages/workshop/log/take-in.js";
import {
  asDraft as asOwnDraft,
  contentOf,
  draftOf,
} from "../../site/pages/your-car/model/draft.js";
import { takeIn } from "../../site/pages/your-car/model/take-in.js";
import { asCars } from "../../site/store/cars.js";
import { merged } from "../../site/store/merged.js";
import { stamped } from "../../site/store/stamped.js";
import { FUZZ_RUNS, hurt, junk } from "../fuzz.js";

vi.setConfig({ testTimeout: 60_000 + 10 * FUZZ_RUNS });

const [event] = standing(exampleLog, "event");
const day = { log: exampleLog, event };
const fresh = () => ({ id: "new-1", at: "2031-05-11T08:00:00.000Z" });

/** Names that every object has from its prototype, and values that break what trusts them. */
const names = fc.constantFrom("constructor", "__proto__", "toString", "hasOwnProperty", "a");
const deep = fc.integer({ min: 1, max: 3000 }).map((levels) => {
  let value: unknown = 1;
  for (let level = 0; level < levels; level++) value = level % 2 === 0 ? [value] : { a: value };
  return value;
});
const hostile: fc.Arbitrary<unknown> = fc.oneof(
  junk,
  deep,
  fc.record({ toString: junk, toJSON: junk }, { requiredKeys: [] }),
  fc.integer({ min: 1, max: 20_000 }).map((length) => "x".repeat(length)),
  fc.array(junk, { minLength: 100, maxLength: 600 }),
  fc.dictionary(names, junk),
);

/** A value with something hostile in the place of one of its parts. */
function withHostile(value: unknown): fc.Arbitrary<unknown> {
  return fc.tuple(fc.nat(), hostile).map(([at, put]) => {
    const copy = structuredClone(value) as Record<string, unknown>;
    const holders: Record<string, unknown>[] = [copy];
    for (const holder of holders)
      for (const part of Object.values(holder))
        if (typeof part === "object" && part !== null)
          holders.push(part as Record<string, unknown>);
    const holder = holders[at % holders.length] ?? copy;
    const keys = Object.keys(holder);
    if (!Array.isArray(holder)) keys.push("constructor"); // JSON gives a list no field of that name
    holder[keys[Math.floor(at / holders.length) % keys.length] ?? "0"] = put;
    return copy;
  });
}

/** Every fault is a sentence that repeats little of what was given. */
function areShort(faults: readonly string[] = []): void {
  for (const fault of faults) expect(fault.length).toBeLessThan(1000);
}

it("an entry with anything in the place of any of its parts is read or refused in short sentences", () => {
  const entries = [...new Map(exampleLog.entries.map((one) => [one.kind, one])).values()];
  const broken = fc.oneof(hostile, ...entries.map(withHostile));
  fc.assert(
    fc.property(broken, (value) => areShort(readEntry(value).faults)),
    { numRuns: FUZZ_RUNS / 10 },
  );
});

it("a car file with anything in the place of any of its parts is taken in or refused in short sentences", () => {
  const car = standing(exampleLog, "set-up")[0]?.car;
  fc.assert(
    fc.property(withHostile(car), (value) => {
      const read = takeIn(JSON.stringify(value), [], "x");
      areShort("car" in read ? read.notes : read.faults);
    }),
    { numRuns: FUZZ_RUNS / 20 },
  );
});

it("a class file with anything in the place of any of its parts is read or refused in short sentences", () => {
  const baseCar = standing(exampleLog, "set-up")[0]?.car;
  const rules: ClassRule[] = [
    { kind: "camber", name: "4", end: "front", least: -0.06, greatest: 0 },
    { kind: "fixed", levers: ["toe"] },
    { kind: "tyre", tyre: "club" },
  ];
  const whole = { name: "Club", rules, ...(event && { venue: event.venue }), briefing: "Helmets." };
  const text = formatClass({ ...whole, ...(baseCar && { baseCar }), course: "https://a.example/" });
  const broken = fc.oneof(
    withHostile(JSON.parse(formatClass(whole))).map((value) => JSON.stringify(value)),
    withHostile(JSON.parse(text)).map((value) => JSON.stringify(value)),
    hurt(text),
  );
  fc.assert(
    fc.property(broken, (given) => {
      const { carClass, notes, faults } = { notes: undefined, ...parseClass(given) };
      areShort(notes ?? faults);
      if (carClass) expect(parseClass(formatClass(carClass)).carClass).toEqual(carClass);
    }),
    { numRuns: FUZZ_RUNS / 20 },
  );
});

it("a table of reports, cut, doubled or written over, is taken in or refused line by line", () => {
  const saved = formatReports({ entries: exampleLog.entries.slice(0, 40) });
  const hand = "driver,run,corner,phase,input,balance\nAda,3,Gate,middle,steady,2\n\nBela,2,,,,\n";
  const any = fc.string({
    unit: fc.constantFrom(",", ";", "\t", '"', "\n", "\r", "1", "run", "'"),
  });
  fc.assert(
    fc.property(fc.oneof(hurt(saved), hurt(hand), any), (text) => {
      const read = parseReports(text, fresh, day);
      areShort(read.faults);
      for (const entry of read.log?.entries ?? []) expect(readEntry(entry).faults).toBeUndefined();
    }),
    { numRuns: FUZZ_RUNS / 4 },
  );
});

it("whatever a link, a code or an address holds, its reader answers", async () => {
  const link = `https://club.example/rollbook/workshop.html#log?take=zab`;
  const course = new URL("https://club.example/rollbook/");
  const text = fc.oneof(
    fc.string(),
    hurt(link),
    fc.webUrl(),
    hostile.map((one) => inShort(one)),
  );
  await fc.assert(
    fc.asyncProperty(text, async (given) => {
      for (const letters of lettersOfLinks(given) ?? [lettersIn(given) ?? given])
        await unpack(letters);
      viewIn(course, given);
      expect(courseAt(given)?.pathname.endsWith("/") ?? true).toBe(true);
    }),
    { numRuns: FUZZ_RUNS / 20 },
  );
});

it("whatever is handed over or half written, its reader answers", () => {
  const whole = formatLog({ entries: exampleLog.entries.slice(0, 3) });
  const object = fc.oneof(hostile, fc.constant({})).map((value) => Object(value));
  fc.assert(
    fc.property(fc.oneof(hurt(whole), fc.json()), object, (text, value) => {
      areShort(readFile(text, fresh, day).faults);
      dayNamedIn(text);
      asReporting(value);
      expect(inShort(value).length).toBeLessThan(45);
    }),
    { numRuns: FUZZ_RUNS / 10 },
  );
});

it("whatever a device has kept, its reader answers", () => {
  const car = standing(exampleLog, "set-up")[0]?.car as Car;
  const draft = draftOf("new-1", car);
  const record = { stamp: 3, version: 1, value: { cars: [car], current: car.name }, aside: [] };
  const clock = { run: 2, stage: 1, spent: 60_000, since: 1, begun: 1 };
  const given = { item: "bar-helps-own-end", idea: undefined, day: 20_000, occasion: "single" };
  const plan = { ...event, car, setUp: "set-up-1" };
  const kept = fc.oneof(hostile, ...[record, draft, clock, given, plan].map(withHostile));
  const aside = (part: unknown) => void inShort(part);
  fc.assert(
    fc.property(kept, (value) => {
      const { value: cars } = stamped(value);
      for (const one of asCars(cars, aside)?.cars ?? []) expect(one.wheelbase).toBeGreaterThan(1);
      const own = asOwnDraft(value);
      if (own !== undefined) contentOf(own);
      asDay(value);
      asClock(value);
      asGiven(value);
      merged(value, record, draft);
      merged(record, value, draft);
    }),
    { numRuns: FUZZ_RUNS / 10 },
  );
});
