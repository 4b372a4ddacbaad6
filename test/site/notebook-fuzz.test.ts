import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, it, vi } from "vitest";
import { CourseError, type Notebook, parseNotebook } from "../../site/build/notebook.js";
import { inRoot } from "../../site/build/paths.js";
import { FUZZ_RUNS, hurt, junk } from "../fuzz.js";

vi.setConfig({ testTimeout: 60_000 + 10 * FUZZ_RUNS });

const whole = JSON.parse(readFileSync(inRoot("notebooks/01-load-transfer.ipynb"), "utf8"));
const short = JSON.stringify({ ...whole, cells: whole.cells.slice(0, 6) });

/** A notebook with sound cells, or one sentence that names it. */
function readOrRefused(text: string): void {
  let notebook: Notebook | undefined;
  try {
    notebook = parseNotebook("broken", text);
  } catch (error) {
    expect(error).toBeInstanceOf(CourseError);
    expect((error as Error).message).toMatch(/^broken[:,] /);
  }
  for (const { id, kind, source } of notebook?.cells ?? []) {
    expect(id).not.toBe("");
    expect(["code", "markdown"]).toContain(kind);
    expect(typeof source).toBe("string");
  }
}

it("a notebook cut, doubled or written over is read or refused by name", () => {
  fc.assert(fc.property(hurt(short), readOrRefused), { numRuns: FUZZ_RUNS });
});

it("whatever stands in place of its parts, a notebook is read or refused by name", () => {
  const cell = fc.oneof(
    junk,
    fc.record(
      {
        id: fc.oneof(junk, fc.constant("a")),
        cell_type: fc.oneof(junk, fc.constant("code")),
        source: junk,
      },
      { requiredKeys: [] },
    ),
  );
  const notebook = fc.record(
    { nbformat: fc.oneof(fc.constant(4), junk), cells: fc.oneof(fc.array(cell), junk) },
    { requiredKeys: [] },
  );
  fc.assert(
    fc.property(fc.oneof(notebook, junk), (content) =>
      readOrRefused(JSON.stringify(content) ?? ""),
    ),
    { numRuns: FUZZ_RUNS },
  );
});
