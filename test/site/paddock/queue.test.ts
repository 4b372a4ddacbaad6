import type { LogEntry } from "@rollbook/lib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Queue } from "../../../site/pages/workshop/paddock/queue.js";
import { reportOf } from "./paddock.js";

/** Runs with their reports, as a phone writes them: ids phone-1 to phone-2n. */
const written = (count: number): LogEntry[] =>
  Array.from({ length: count }, (_, i) => reportOf("phone", "Ada", i + 1)).flat();

/** A phone and a desk whose program fails on whatever holds one of some entries; plays so many messages. */
function play(
  entries: readonly LogEntry[],
  fails: (id: string, now: number) => boolean,
  turns: number,
) {
  const queue = new Queue();
  const there: string[] = [];
  const sent: string[][] = [];
  for (let now = 1e6; now < 1e6 + turns * 2000; now += 2000) {
    const waiting = entries.filter(({ id }) => !there.includes(id));
    const some = queue.next(waiting, now);
    const ids = some.map(({ id }) => id);
    if (ids.length > 0) sent.push(ids);
    const chokes = ids.some((id) => fails(id, now));
    if (!chokes) there.push(...ids);
    queue.hear(some, chokes ? "choked" : "answered", now);
  }
  const aside = entries.filter((one) => !there.includes(one.id) && queue.isAside(one));
  return { there, sent, aside: aside.map(({ id }) => id) };
}

describe("the queue of a phone", () => {
  it("sends all at once, in the order in which it was written", () => {
    const entries = written(3);
    const { sent } = play(entries, () => false, 3);
    expect(sent).toEqual([entries.map(({ id }) => id)]);
  });

  it("lets the entry on which the desk's program fails stand aside, and what refers to it; the others go on", () => {
    const { there, aside } = play(written(20), (id) => id === "phone-7", 60);
    expect(aside).toEqual(["phone-7", "phone-8"]); // a run and its report
    expect(there).toHaveLength(38);
  });

  it("tries what stands aside again now and then, alone, and files it with its report once that goes", () => {
    const mended = 1e6 + 120_000;
    const { there, sent, aside } = play(
      written(2),
      (id, now) => id === "phone-1" && now < mended,
      120,
    );
    expect(aside).toEqual([]);
    expect(there).toEqual(["phone-3", "phone-4", "phone-1", "phone-2"]);
    expect(sent.filter((ids) => ids.includes("phone-1")).length).toBeLessThan(20);
  });

  it("waits with everything in its place while the desk is out of reach or its disk is full", () => {
    const queue = new Queue();
    const entries = written(2);
    for (let now = 0; now < 1e6; now += 2000) {
      expect(queue.next(entries, now)).toEqual(entries);
      queue.hear(entries, "not now", now);
    }
    expect(entries.some((entry) => queue.isAside(entry))).toBe(false);
  });

  it("brings every entry there that can be filed, whichever the program fails on (60 queues)", () => {
    const bad = fc.uniqueArray(fc.integer({ min: 1, max: 60 }), { maxLength: 5 });
    fc.assert(
      fc.property(bad, (numbers) => {
        const entries = written(30);
        const fails = new Set(numbers.map((number) => `phone-${number}`));
        const { there, aside } = play(entries, (id) => fails.has(id), 300);
        expect([...there, ...aside].sort()).toEqual(entries.map(({ id }) => id).sort());
        for (const id of aside) {
          const number = Number(id.split("-")[1]);
          const run = `phone-${number - (number % 2 === 0 ? 1 : 0)}`;
          expect(fails.has(id) || fails.has(run)).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});
