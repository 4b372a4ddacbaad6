import { transformSync } from "esbuild";
import { describe, expect, it } from "vitest";
import { readNotebooks } from "../../../site/build/build.js";
import { codeCells } from "../../../site/build/notebook.js";
import { CellFault, stripTypes } from "../../../site/workbench/model/strip-types.js";

const imports = /^import [\s\S]*? from ".*";$|^const \{[^}]*\} = rollbookRequire\( ?".*"\);$/gm;
const plain = (source: string, loader: "ts" | "js"): string =>
  transformSync(source.replace(imports, ""), { loader, tsconfigRaw: {} }).code;

describe("a cell's types taken away", () => {
  it.each(readNotebooks())("leave what the compiler leaves, in all cells of $name", (notebook) => {
    for (const { id, source } of codeCells(notebook)) {
      expect(plain(stripTypes(source), "js"), id).toBe(plain(source, "ts"));
    }
  });

  it.each([
    "const f = (a: number, b?: string, ...c: readonly string[]): [number, string?] => [a, b];",
    "const g = { a: 1 } as const satisfies { readonly a: number };",
    "const h = x! + y!.z + (w as unknown as number);",
    "type A = { b: 1 }; interface B { c: 2 }\nconst i = 1;",
    "const j = new Map<string, number>(); f<number>(1);",
    "class K<T> extends L<T> implements M { private readonly x: number = 1; m<U>(u: U): void {} }",
    "function over(a: string): void;\nfunction over(a: unknown) {}",
    "const k = <T,>(t: T): T => t;",
    "declare const w: number;\nconst m = w;",
    "const n = a < b ? c : d; const o = a < b && c > d;",
    "const p = { q: (r: number) => r, s: t ? u : v };",
  ])("leave what the compiler leaves of %s", (source) => {
    expect(plain(stripTypes(source), "js")).toBe(plain(source, "ts"));
  });

  it("leave every line where it was", () => {
    const source = "type A = {\n  b: 1;\n};\nconst c: A = {\n  b: 1,\n};";
    const lines = stripTypes(source).split("\n");
    expect(lines.length).toBe(6);
    expect(lines[4]).toBe("  b: 1,");
  });

  it("turn imports into what the sandbox offers, types left out", () => {
    expect(stripTypes('import { a, type B, c as d } from "@rollbook/lib";')).toMatch(
      /^const \{ a, +c : d \} = rollbookRequire\( "@rollbook\/lib"\);$/,
    );
    expect(stripTypes('import type { B } from "x";').trim()).toBe("");
    expect(stripTypes('import * as lib from "x";').replace(/\s+/g, " ")).toBe(
      'const lib = rollbookRequire( "x");',
    );
  });

  it.each([
    ["const a = 1;\nconst b = ;", 2],
    ["const a = (1;", 1],
    ["enum E { A }", 1],
    ["\n\nexport const a = 1;", 3],
    ["class A { constructor(private b: number) {} }", 1],
  ])("are refused with the line where a cell cannot be read: %s", (source, line) => {
    expect(() => stripTypes(source)).toThrow(CellFault);
    try {
      stripTypes(source);
    } catch (fault) {
      expect((fault as CellFault).line).toBe(line);
    }
  });
});
