import { entriesOfDay, exampleLog, mergeLogs, readLog, standing } from "@rollbook/lib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { entriesInCodes, LONGEST_CODE } from "../../../site/hand-over/entries-in-codes.js";
import {
  dayNamedIn,
  dayText,
  handOverText,
  howFarIn,
  lettersIn,
  lettersOfLinks,
} from "../../../site/hand-over/log-text.js";
import { pack, unpack } from "../../../site/hand-over/packed.js";
import { readFile } from "../../../site/pages/workshop/log/take-in.js";
import { viewOf } from "../../../site/pages/workshop/route.js";

const fresh = () => ({ id: "new-1", at: "2031-05-11T08:00:00.000Z" });

describe("handing entries over in a link", () => {
  it("brings back every text, letter by letter", async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: "grapheme" }), async (text) => {
        const packed = await pack(text);
        expect(packed).toMatch(/^[\w-]+$/);
        expect(await unpack(packed)).toBe(text);
      }),
    );
  });

  it("reads nothing from letters that hold nothing, and never throws", async () => {
    const letters = fc.stringMatching(/^[pz]?[\w-]{0,80}$/);
    await fc.assert(
      fc.asyncProperty(letters, async (text) => {
        const read = await unpack(text);
        expect(["string", "undefined"]).toContain(typeof read);
      }),
    );
    expect(await unpack("")).toBeUndefined();
    expect(await unpack("zz%%")).toBeUndefined();
  });

  it("stops reading a small link that would fill the memory", async () => {
    const bomb = await pack("a".repeat(3_000_000));
    expect(bomb.length).toBeLessThan(10_000);
    expect(await unpack(bomb)).toBeUndefined();
  });

  it("puts the reports of a driver into codes that a phone can read, none lost", async () => {
    const own = exampleLog.entries.filter(({ id }) => id.startsWith("phone1-"));
    const { packed, tooLarge } = await entriesInCodes(own);
    expect(tooLarge).toEqual([]);
    expect(Math.max(...packed.map(({ length }) => length))).toBeLessThanOrEqual(LONGEST_CODE);
    const texts = await Promise.all(packed.map(unpack));
    const logs = texts.map((text) => {
      const taken = readFile(text ?? "", fresh);
      return taken.log ?? { entries: [] };
    });
    expect(mergeLogs(...logs)).toEqual(mergeLogs({ entries: own }));
  });

  it("puts a whole day without its car into one code", async () => {
    const { packed, tooLarge } = await entriesInCodes(standing(exampleLog, "event"));
    expect([packed.length, tooLarge.length]).toEqual([1, 0]);
  });

  it("names the day they belong to, in every code and in a file, and nothing else is read as a day", async () => {
    const [event] = standing(exampleLog, "event");
    const own = exampleLog.entries.filter(({ id }) => id.startsWith("phone1-"));
    const { packed } = await entriesInCodes(own, event);
    const texts = await Promise.all(packed.map(unpack));
    const day = { id: event?.id, name: event?.name };
    for (const text of texts) expect(dayNamedIn(text ?? "")).toEqual(day);
    expect(readFile(handOverText(own, event), fresh)).toEqual({ log: mergeLogs({ entries: own }) });
    const others = [
      "",
      "{",
      "null",
      "[]",
      '{"day":3}',
      '{"day":{"id":1,"name":{}}}',
      handOverText(own),
    ];
    for (const text of others) expect(dayNamedIn(text)).toBeUndefined();
  });

  it("finds what pasted links bring, and takes no other text for links", () => {
    const link = "https://club.example/rollbook/workshop.html#log?take=zab-_1";
    expect(lettersIn(link)).toBe("zab-_1");
    expect(lettersOfLinks(` ${link}\n${link} `)).toEqual(["zab-_1", "zab-_1"]);
    for (const text of ["", "run,balance\n1,2", `${link} and more`, "{}", "#log?take=a b"])
      expect(lettersOfLinks(text)).toBeUndefined();
  });

  it("says which entries are too large for any code", async () => {
    const [setUp] = standing(exampleLog, "set-up");
    const { packed, tooLarge } = await entriesInCodes(
      setUp === undefined ? [] : [setUp],
      undefined,
      500,
    );
    expect([packed.length, tooLarge.length]).toEqual([0, 1]);
  });
});

it("opens the view of a link whatever it brings along, and the plan where it names none", () => {
  expect(["#log", "#log?take=zabc", "#talk", "", "#elsewhere"].map(viewOf)).toEqual([
    "log",
    "log",
    "talk",
    "plan",
    "plan",
  ]);
});

describe("a whole day as one file", () => {
  const [event] = standing(exampleLog, "event");
  if (event === undefined) throw new Error("the example has a day");

  it("is all of the day and nothing of another, and says how far it was", () => {
    const other = { ...event, id: "club-2", setUp: "club-1", at: "2031-06-01T08:00:00.000Z" };
    const car = exampleLog.entries.find(({ id }) => id === "desk-1");
    const setUp = { ...car, id: "club-1", at: other.at } as (typeof exampleLog.entries)[number];
    const note = { kind: "note", id: "club-3", at: "2031-06-01T09:00:00.000Z", author: "club" };
    const more = [other, setUp, { ...note, kind: "note" as const, words: "of the other day" }];
    const both = mergeLogs(exampleLog, { entries: more });
    expect(entriesOfDay(both, event)).toEqual(exampleLog);
    expect(entriesOfDay(both, other).entries.map(({ id }) => id)).toEqual(
      expect.arrayContaining(["club-1", "club-2", "club-3"]),
    );
    expect(entriesOfDay(both, other).entries).toHaveLength(3);
  });

  it("is a log as any other to whoever reads only that", () => {
    const howFar = { clock: { run: 3, stage: 1, spent: 5 }, vote: { ready: "", text: "Why?" } };
    const text = dayText(exampleLog.entries, event, howFar);
    expect(readLog(text).log).toEqual(exampleLog);
    expect([dayNamedIn(text)?.id, howFarIn(text)]).toEqual([event.id, howFar]);
    for (const none of ["", "{", "[]", "null", '{"howFar":1}'])
      expect(howFarIn(none)).toBeUndefined();
  });
});
