import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, isAbsolute, join } from "node:path";
import { afterAll, expect, it } from "vitest";
import {
  dataFolder,
  presentSpec,
  removeSpec,
  specFile,
  writeSpec,
} from "../../site/commands/jupyter/kernelspec.js";

const data = mkdtempSync(join(tmpdir(), "rollbook-jupyter-"));
afterAll(() => rmSync(data, { recursive: true, force: true }));
const file = specFile(data);

it("the kernel is written with whole paths to what is there, and goes without a trace", () => {
  writeSpec(file);
  const [node, tslab, ...rest] = JSON.parse(readFileSync(file, "utf8")).argv as string[];
  expect([node, tslab].every((path) => path && isAbsolute(path) && existsSync(path))).toBe(true);
  expect(rest).toEqual(["kernel", "--config-path", "{connection_file}"]);
  expect(presentSpec(file)).toBe("ours");
  expect(removeSpec(file)).toBe(true);
  expect(existsSync(dirname(file))).toBe(false);
  expect(removeSpec(file)).toBe(false);
});

it("a kernel of somebody else's is put aside and comes back", () => {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, '{"argv":["other"]}');
  writeSpec(file);
  writeSpec(file); // a second time puts nothing of ours aside
  expect(presentSpec(file)).toBe("ours");
  removeSpec(file);
  expect(readFileSync(file, "utf8")).toBe('{"argv":["other"]}');
});

// https://docs.jupyter.org/en/latest/use/jupyter-directories.html, "Data files"
it.each([
  ["linux", {}, "/home/ann/.local/share/jupyter"],
  ["linux", { XDG_DATA_HOME: "/d" }, "/d/jupyter"],
  ["darwin", {}, "/home/ann/Library/Jupyter"],
  ["win32", { APPDATA: "C:/Users/ann/Roaming" }, "C:/Users/ann/Roaming/jupyter"],
  ["linux", { JUPYTER_DATA_DIR: "/own" }, "/own"],
] as const)("on %s with %o Jupyter looks below %s", (platform, env, folder) => {
  expect(dataFolder(env, platform, "/home/ann")).toBe(folder);
});
