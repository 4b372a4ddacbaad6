import { createRequire } from "node:module";
import { expect, it } from "vitest";
import { readNotebooks } from "../../site/build/build.js";
import { inRoot } from "../../site/build/paths.js";
import { writeJoined } from "../../site/build/typecheck.js";

const require = createRequire(import.meta.url);
const ofTslab = createRequire(require.resolve("tslab/package.json"));
const ts = ofTslab("@tslab/typescript-for-tslab") as typeof import("@tslab/typescript-for-tslab");

// The build leaves types to the strict compiler alone; tslab's, older by years, meets the cells in Jupyter.
it("tslab's own compiler takes every chapter that the strict one takes", () => {
  const notebooks = readNotebooks();
  const joined = inRoot(".cache/joined-older");
  writeJoined(notebooks, joined);
  const program = ts.createProgram(
    notebooks.map(({ name }) => `${joined}/${name}.ts`),
    {
      ...{ module: ts.ModuleKind.ESNext, moduleResolution: ts.ModuleResolutionKind.Node10 },
      ...{ target: ts.ScriptTarget.ES2022, lib: ["lib.es2022.d.ts"], types: [], noEmit: true },
      ...{ esModuleInterop: true, skipLibCheck: true },
    },
  );
  const faults = ts.getPreEmitDiagnostics(program).map(({ file, start, messageText }) => {
    const { line = 0 } = file ? ts.getLineAndCharacterOfPosition(file, start ?? 0) : {};
    return `${file?.fileName}:${line + 1} ${ts.flattenDiagnosticMessageText(messageText, "\n")}`;
  });
  expect(faults).toEqual([]);
  expect(program.getSourceFiles().some(({ fileName }) => fileName.includes("lib/dist/"))).toBe(
    true,
  );
});
