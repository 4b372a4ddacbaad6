import { execFileSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { readNotebooks } from "../../site/build/build.js";
import { cachedOutputs } from "../../site/build/cache.js";
import { inRoot } from "../../site/build/paths.js";
import { debianPython } from "../../site/commands/needs.js";

interface WireCell {
  readonly id: string;
  readonly cell_type: string;
  readonly outputs?: readonly {
    readonly output_type: string;
    readonly data?: { "text/html"?: string | readonly string[] };
  }[];
}

const jupyterPath = inRoot(".cache/jupyter");
const [notebook] = readNotebooks();

/** A kernel specification of our own, so that nothing has to be installed for the user. */
function writeKernelSpecification(): void {
  const folder = `${jupyterPath}/kernels/tslab`;
  const tslab = inRoot("node_modules/tslab/bin/tslab");
  const argv = [process.execPath, tslab, "kernel", "--config-path", "{connection_file}"];
  mkdirSync(folder, { recursive: true });
  writeFileSync(
    `${folder}/kernel.json`,
    JSON.stringify({ argv, display_name: "TypeScript", language: "typescript" }),
  );
}

function runOverTheWire(): WireCell[] {
  const script = inRoot("test/notebooks/run_notebook.py");
  const path = inRoot(`notebooks/${notebook?.name}.ipynb`);
  const printed = execFileSync(debianPython, [script, path, inRoot("notebooks")], {
    env: { ...process.env, JUPYTER_PATH: jupyterPath },
    encoding: "utf8",
    maxBuffer: 64e6,
    stdio: ["ignore", "pipe", "pipe"],
  });
  return JSON.parse(printed).cells;
}

describe("a Jupyter client with the tslab kernel", () => {
  let cells: WireCell[] = [];
  beforeAll(() => {
    writeKernelSpecification();
    cells = runOverTheWire();
  });

  it("runs a chapter from start to end without an error", () => {
    const outputs = cells.flatMap((cell) => cell.outputs ?? []);
    expect(outputs.length).toBeGreaterThan(10);
    expect(outputs.filter(({ output_type }) => output_type !== "display_data")).toEqual([]);
  });

  it("shows what the build's own kernel shows, to the letter", async () => {
    const built = await cachedOutputs(notebook ? [notebook] : [], () => {});
    const overTheWire = Object.fromEntries(
      cells
        .filter(({ cell_type }) => cell_type === "code")
        .map(({ id, outputs = [] }) => [
          id,
          outputs.map(({ data }) => [data?.["text/html"]].flat().join("")),
        ]),
    );
    expect(overTheWire).toEqual(built.get(notebook?.name ?? ""));
  });
});
