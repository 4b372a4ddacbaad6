import { expect, test } from "vitest";
import { exampleLog } from "../../../../lib/day/example/example-event.js";
import type { LogEntry } from "../../../../lib/day/log/log.js";
import { saidIn } from "../../../../lib/day/log/said.js";

test("what was said comes by time, of whatever kind, and not once it is withdrawn", () => {
  const said = saidIn(exampleLog);
  const kinds = new Set(said.map(({ kind }) => kind));
  expect(kinds).toEqual(new Set(["prediction", "poll", "note"]));
  const times = said.map(({ at }) => at);
  expect(times).toEqual([...times].sort());
  const [first, ...rest] = said;
  const withdrawal = { ...first, kind: "withdrawal", id: "late-1", of: first?.id, reason: "-" };
  expect(saidIn({ entries: [...exampleLog.entries, withdrawal as LogEntry] })).toEqual(rest);
});
