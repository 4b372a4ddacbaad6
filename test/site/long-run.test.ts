import { describe, expect, it } from "vitest";
import { type ShardRecord, tableOf } from "../../site/commands/long/record.js";
import { countsOf, kindOf, kinds } from "../../site/commands/long/tally.js";

describe("the count of a long run", () => {
  it("knows by the place of a law what it is tried on", () => {
    const kind = (file: string) => kindOf(`/home/r/test/${file}.test.ts`);
    expect(kind("lib/edge/laws")).toBe("cars at the edge");
    expect(kind("lib/balance/laws")).toBe("cars");
    expect(kind("lib/transient/laws")).toBe("drives");
    expect(kind("lib/car/file/parse")).toBe("files");
    expect(kind("site/cells/figure-link-fuzz")).toBe("links");
    expect(kind("lib/units")).toBe("other cases");
  });

  it("adds up by kind, with what was cut short", () => {
    const counts = countsOf([
      { kind: "cars", tried: 300, cut: false },
      { kind: "cars", tried: 20, cut: true },
      { kind: "links", tried: 7, cut: false },
    ]);
    expect(counts.cars).toEqual({ laws: 2, tried: 320, cut: 1 });
    expect(counts.links).toEqual({ laws: 1, tried: 7, cut: 0 });
    expect(counts.files).toEqual({ laws: 0, tried: 0, cut: 0 });
  });
});

describe("the table of a long run", () => {
  const record = (shard: number, tried: number): ShardRecord => ({
    ...{ shard, of: 3, seed: 1000 + shard, commit: "abc", date: "2026-11-28", minutes: 30 },
    only: [],
    passed: true,
    counts: countsOf(kinds.map((kind) => ({ kind, tried, cut: false }))),
  });

  it("adds its shards up and says which are missing", () => {
    const table = tableOf([record(1, 1200), record(3, 800)], 3);
    expect(table).toMatch(/^Commit abc, 2 of 3 shards\. Missing: 2\/3\.$/m);
    expect(table).toMatch(/^\| together \| {2}\| {2}\| 60 \| 2\u00a0000 \| 2\u00a0000 /m);
  });

  it("misses none when all are there", () => {
    expect(
      tableOf(
        [1, 2, 3].map((shard) => record(shard, 1)),
        3,
      ),
    ).not.toContain("Missing");
  });

  it("says to which laws it kept", () => {
    expect(tableOf([{ ...record(1, 1), only: ["edge", "fuzz"] }], 1)).toMatch(
      /^Commit abc, 1 of 1 shards\. Laws of files with \*edge\* or \*fuzz\* in their names only\.$/m,
    );
  });

  it("shows a shard that failed as red, and what time cut short", () => {
    const cut = countsOf([{ kind: "cars", tried: 1, cut: true }]);
    expect(tableOf([{ ...record(1, 1), passed: false, counts: cut }], 3)).toMatch(
      /\| 1 \| red \|$/m,
    );
  });
});
