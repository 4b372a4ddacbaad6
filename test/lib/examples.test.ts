import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import * as lib from "../../lib/index.js";
import { readNotebooks } from "../../site/build/build.js";
import { join, namesFromLib } from "../../site/build/join.js";
import { inRoot } from "../../site/build/paths.js";

/** What is called in an example, and what it must come to. */
interface Line {
  readonly call: string;
  readonly value: string;
}

const files = readdirSync(inRoot("lib"), { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !file.startsWith("dist/"))
  .sort();
const textOf = (file: string) => readFileSync(inRoot(`lib/${file}`), "utf8");

/** The lines of all `@example` blocks of a file; what one block names, the next may use. */
function exampleLines(text: string): string[] {
  const blocks = [...text.matchAll(/@example\n([\s\S]*?)(?=\n \* @|\n \*\/)/g)];
  return blocks.flatMap(([, block = ""]) =>
    block
      .replace(/^ \* ?/gm, "")
      .replaceAll("\n// →", " // →")
      .split("\n"),
  );
}

/** `call // → value`, or the value on a line of its own, with how one knows it after a comma. */
const asserted = /^(.*?)\s*\/\/ → ("[^"]*"|\[.*?\]|[^,\s]+)/;

function toRun(lines: readonly string[]): string {
  const run = lines.map((line) => {
    const [, call, value] = asserted.exec(line) ?? [];
    return call === undefined ? line : `check(${JSON.stringify({ call, value })}, (${call}));`;
  });
  return run.join("\n");
}

function holds({ call, value }: Line, got: unknown): void {
  const number = Number(value);
  if (value === "Infinity" || Number.isNaN(number)) {
    expect(got, call).toEqual(value === "Infinity" ? Infinity : JSON.parse(value));
    return;
  }
  const decimals = /\.(\d+)$/.exec(value)?.[1]?.length ?? 0;
  expect(Math.abs((got as number) - number), `${call} is ${got}`).toBeLessThanOrEqual(
    0.5001 * 10 ** -decimals,
  );
}

/** What chapters take from the library by name, types apart. */
const calledByChapters = (): string[] => [
  ...new Set(readNotebooks().flatMap((notebook) => namesFromLib(join(notebook).source))),
];

test("each function of lib that a chapter calls has an example", () => {
  const all = files.map(textOf).join("\n");
  const functions = calledByChapters().filter((name) =>
    new RegExp(`export function ${name}\\b`).test(all),
  );
  expect(functions.length).toBeGreaterThan(100);
  const without = functions.filter((name) => {
    const before = all.slice(0, all.search(new RegExp(`export function ${name}\\b`)));
    return !before.slice(before.lastIndexOf("/**")).includes("@example");
  });
  expect(without).toEqual([]);
});

describe("examples in the docstrings of lib come to what stands beside them", () => {
  const withExamples = files.filter((file) => textOf(file).includes("@example"));
  test.each(withExamples)("%s", (file) => {
    const lines = exampleLines(textOf(file));
    const checked: string[] = [];
    const check = (line: Line, got: unknown) => {
      checked.push(line.call);
      holds(line, got);
    };
    new Function("check", ...Object.keys(lib), toRun(lines))(check, ...Object.values(lib));
    expect(checked.length).toBeGreaterThan(0);
    expect(checked).toHaveLength(lines.filter((line) => line.includes("// →")).length);
  });
});
