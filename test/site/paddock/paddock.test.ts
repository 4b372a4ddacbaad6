import { canonical } from "@rollbook/lib";
import fc from "fast-check";
import { describe, expect, it, vi } from "vitest";
import { networkCode } from "../../../site/paddock/addresses.js";
import { Buckets } from "../../../site/paddock/buckets.js";
import { isForPhone } from "../../../site/paddock/rights.js";
import { EventCutter } from "../../../site/pages/workshop/paddock/events.js";
import { at, event, memory, paddock, reportOf, setUp } from "./paddock.js";

describe("a phone", () => {
  it("joins by the code under a name, and no other way", async () => {
    const { ask, join, day } = await paddock();
    expect((await ask("hello", "", { code: "wrong" })).status).toBe(403);
    expect((await ask("join", "", { code: "abcdef", name: "  " })).status).toBe(400);
    expect((await ask("entries", "nobody", { entries: [] })).status).toBe(401);
    const token = await join("Ada");
    expect((await ask("entries", token, { entries: [] })).status).toBe(200);
    expect(day.phones.all().map(({ name }) => name)).toEqual(["Ada"]);
    expect(JSON.stringify(day.phones.all())).not.toContain(token); // its hash alone
  });

  it("sees who drives once it has the code", async () => {
    const { ask, file, desk } = await paddock();
    await file(desk, setUp, event);
    const { fields } = await ask("hello", "", { code: " ABCDEF " });
    expect(fields).toEqual({ day: "Saturday", drivers: ["Ada", "Bela"] });
  });

  it("files what it wrote as often as it likes, and it is there once", async () => {
    const { join, file, day } = await paddock();
    const ada = await join("Ada");
    const own = reportOf("adaaaaaa", "Ada");
    await Promise.all([file(ada, ...own), file(ada, ...own, ...own)]);
    const { fields } = await file(ada, ...own);
    expect(fields.filed).toEqual(own.map(({ id }) => id));
    expect(day.filed.map(({ entry }) => canonical(entry))).toEqual(own.map(canonical));
  });

  it("files under its own names only, and only what a driver files", async () => {
    const { join, file, desk } = await paddock();
    await file(desk, setUp, event);
    const [ada, bela] = [await join("Ada"), await join("Bela")];
    await file(bela, ...reportOf("belaaaaa", "Bela"));
    const whyNot = async (...entries: unknown[]) =>
      (await file(ada, ...entries)).fields.refused.map(({ why }: { why: string }) => why);
    expect(await whyNot(...reportOf("adaaaaaa", "Bela"))).toEqual([
      "another's name",
      "another's name",
    ]);
    expect(await whyNot({ ...event, id: "adaaaaaa-9" })).toEqual(["kind"]);
    const withdrawal = { kind: "withdrawal", id: "adaaaaaa-5", at, author: "Ada", reason: "no" };
    expect(await whyNot({ ...withdrawal, of: "belaaaaa-2" })).toEqual(["another's entry"]);
    expect(await whyNot({ ...withdrawal, of: event.id })).toEqual(["another's entry"]);
    const [run, report] = reportOf("adaaaaaa", "Ada", 4);
    expect(await whyNot({ ...run, id: event.id })).toEqual(["id is taken"]);
    expect(await whyNot({ ...run, replaces: "belaaaaa-1" })).toEqual(["another's entry"]);
    expect(await whyNot({ ...report, run: "belaaaaa-1" })).toEqual(["another's name"]);
    expect(await whyNot("junk", 7, null, { kind: "report" })).toEqual(
      Array(4).fill("not an entry"),
    );
    expect(await whyNot({ ...run, later: "x".repeat(30_000) })).toEqual(["too long"]);
    expect(
      await whyNot({ ...withdrawal, of: "adaaaaaa-1" }, ...reportOf("adaaaaaa", "Ada")),
    ).toEqual(["another's entry"]);
    expect(await whyNot({ ...withdrawal, of: "adaaaaaa-1" })).toEqual([]); // its own by now
  });

  it("votes under its own name until the vote is closed, and sees nobody else's vote", async () => {
    const { join, file, day, desk } = await paddock();
    const [ada, bela] = [await join("Ada"), await join("Bela")];
    const question = {
      kind: "question",
      at,
      author: "desk",
      ask: "Why?",
      choices: ["a", "b"],
      vote: 1,
    };
    await file(desk, { ...question, id: "deskaaaa-7", state: "open" });
    const vote = { kind: "vote", at, author: "Ada", question: "deskaaaa-7", letter: "a" };
    const whyNot = async (token: string, entry: object) =>
      (await file(token, entry)).fields.refused.map(({ why }: { why: string }) => why);
    expect(await whyNot(ada, { ...vote, id: "adaaaaaa-1", by: "Ada" })).toEqual([]);
    expect(await whyNot(bela, { ...vote, id: "belaaaaa-1", by: "Ada" })).toEqual([
      "another's name",
    ]);
    const phone = day.phones.all().find(({ name }) => name === "Bela");
    const seen = day.filed.filter((one) => phone && isForPhone(one, phone));
    expect(seen.map(({ entry }) => entry.kind)).toEqual(["question"]);
    await file(desk, { ...question, id: "deskaaaa-8", state: "closed", replaces: "deskaaaa-7" });
    expect(await whyNot(ada, { ...vote, id: "adaaaaaa-2", by: "Ada", letter: "b" })).toEqual([
      "closed",
    ]);
  });

  it("that is renamed still files what it wrote under the name before; one that was removed files nothing", async () => {
    const { ask, join, file, day, desk } = await paddock();
    const ada = await join("Ada");
    const [{ id } = { id: "" }] = day.phones.all();
    expect((await ask(`phones/${id}`, ada, { removed: true })).status).toBe(403);
    await ask(`phones/${id}`, desk, { name: "Ada B." });
    expect((await file(ada, ...reportOf("adaaaaaa", "Ada"))).fields.refused).toEqual([]);
    expect((await file(ada, ...reportOf("adaaaaaa", "Ada B.", 2))).fields.refused).toEqual([]);
    await ask(`phones/${id}`, desk, { removed: true });
    expect((await file(ada)).status).toBe(401);
    expect(day.filed).toHaveLength(4);
  });
});

describe("the desk's machine", () => {
  it("is the same day after it was started again: entries, phones, clock", async () => {
    const disk = memory();
    const before = await paddock(disk);
    const ada = await before.join("Ada");
    await before.file(before.desk, setUp, event);
    await before.file(ada, ...reportOf("adaaaaaa", "Ada"));
    const clock = { run: 1, stage: 3, spent: 5, since: 9 };
    await before.ask("clock", before.desk, { clock });
    const after = await paddock(disk);
    expect(after.opened).toEqual({ torn: 0, unreadable: 0 });
    expect(after.day.filed).toEqual(before.day.filed);
    expect(after.day.clock?.clock).toEqual(clock);
    expect((await after.file(ada, ...reportOf("adaaaaaa", "Ada"))).status).toBe(200);
    expect(after.day.filed).toHaveLength(4);
  });

  it("says that it cannot keep while its disk is full, keeps the day, and goes on after", async () => {
    const { join, file, day, disk } = await paddock();
    const ada = await join("Ada");
    disk.full = true;
    const refused = await file(ada, ...reportOf("adaaaaaa", "Ada"));
    expect([refused.status, day.filed.length]).toEqual([507, 0]);
    expect(refused.fields.fault).toContain("its disk refuses");
    disk.full = false;
    expect((await file(ada, ...reportOf("adaaaaaa", "Ada"))).status).toBe(200);
    expect(day.filed).toHaveLength(2);
  });

  it("tells a fault of its program apart from a full disk, and goes on after", async () => {
    const { join, file, day } = await paddock();
    const ada = await join("Ada");
    const told = vi.spyOn(console, "error").mockImplementation(() => {});
    const broken = vi.spyOn(day, "hasRoom").mockImplementation(() => {
      throw new TypeError("a slip of the program");
    });
    const refused = await file(ada, ...reportOf("adaaaaaa", "Ada"));
    expect([refused.status, day.filed.length]).toEqual([500, 0]);
    expect(refused.fields.fault).toContain("A fault of the desk’s program");
    expect(told).toHaveBeenCalledWith(expect.any(TypeError));
    broken.mockRestore();
    told.mockRestore();
    expect((await file(ada, ...reportOf("adaaaaaa", "Ada"))).status).toBe(200);
  });

  it("lets a phone neither set the clock nor see how to be the desk", async () => {
    const { ask, join } = await paddock();
    const ada = await join("Ada");
    expect((await ask("clock", ada, { clock: {} })).status).toBe(403);
    expect((await ask("place", ada)).status).toBe(403);
    expect((await ask("desk", "", { secret: "guess" })).status).toBe(403);
  });

  it("answers ten thousand posts of junk with refusals, and loses nothing by them", async () => {
    const { ask, join, file, day, desk } = await paddock();
    await file(desk, setUp, event);
    const ada = await join("Ada");
    await file(ada, ...reportOf("adaaaaaa", "Ada"));
    const statuses = new Set<number>();
    const junk = ["{", "[]", '{"entries":7}', '{"entries":[{"id":{}}]}', '"x"', "\u0000"];
    for (let i = 0; i < 10_000; i++) {
      const body = junk[i % junk.length];
      const token = i % 3 === 0 ? "" : i % 3 === 1 ? "guessed" : ada;
      statuses.add((await ask(i % 5 === 0 ? "join" : "entries", token, body)).status);
    }
    expect([...statuses].sort()).toEqual(expect.arrayContaining([401, 403, 429]));
    expect([...statuses].every((status) => status === 200 || (status >= 400 && status < 500))).toBe(
      true,
    );
    expect(day.filed).toHaveLength(4);
    expect((await file(desk, ...reportOf("bbbbbbbb", "Bela"))).fields.filed).toHaveLength(2);
  });

  it("takes too much for one message from nobody", async () => {
    const { join, file } = await paddock();
    const ada = await join("Ada");
    expect((await file(ada, ...Array(201).fill(0))).status).toBe(413);
    expect((await file(ada, "x".repeat(400_000))).status).toBe(413);
  });
});

it("a limit fills up again with time", () => {
  let now = 0;
  const buckets = new Buckets({ atOnce: 2, aSecond: 1 }, () => now);
  expect([1, 2, 3].map(() => buckets.take("a"))).toEqual([true, true, false]);
  expect(buckets.take("b")).toBe(true);
  now = 1000;
  expect([buckets.take("a"), buckets.take("a")]).toEqual([true, false]);
});

it("a network is told as a camera reads it, odd letters guarded", () => {
  expect(networkCode("Club; tent", 'a"b\\c')).toBe('WIFI:S:Club\\; tent;T:WPA;P:a\\"b\\\\c;;');
  expect(networkCode("Open", "")).toBe("WIFI:S:Open;T:nopass;;");
});

it("a stream of events is the same however it is cut into pieces (100 cuts)", () => {
  const text =
    'event: entries\ndata: {"a":"ä"}\nid: 3\n\n: a word\n\nevent: alive\r\ndata: {}\r\n\r\n';
  const whole = [
    { event: "entries", data: { a: "ä" } },
    { event: "alive", data: {} },
  ];
  fc.assert(
    fc.property(fc.array(fc.nat(text.length), { maxLength: 6 }), (cuts) => {
      const at = [0, ...cuts.sort((a, b) => a - b), text.length];
      const cutter = new EventCutter();
      const events = at.slice(1).flatMap((end, i) => cutter.take(text.slice(at[i], end)));
      expect(events).toEqual(whole);
    }),
    { numRuns: 100 },
  );
});
