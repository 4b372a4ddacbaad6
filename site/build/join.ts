import { codeCells, type Notebook } from "./notebook.js";

/** All code cells of a chapter as one module, and the way back to the cells. */
interface Joined {
  readonly source: string;
  /** First line of each cell, counted from 1. */
  readonly starts: readonly { readonly id: string; readonly line: number }[];
}

export function join(notebook: Notebook): Joined {
  const starts: { id: string; line: number }[] = [];
  const lines: string[] = [];
  for (const { id, source } of codeCells(notebook)) {
    starts.push({ id, line: lines.length + 1 });
    lines.push(...source.split("\n"));
  }
  return { source: `${lines.join("\n")}\nexport {};\n`, starts };
}

/** Cell and line inside it of a line of the joined module. */
export function cellAt({ starts }: Joined, line: number): { id: string; line: number } | undefined {
  const start = starts.findLast((candidate) => candidate.line <= line);
  return start && { id: start.id, line: line - start.line + 1 };
}

/** Names that a module imports from the physics, types apart. */
export function namesFromLib(source: string): string[] {
  const lists = [...source.matchAll(/import \{([^}]*)\} from "@rollbook\/lib"/g)];
  const names = lists.flatMap(([, list = ""]) => list.split(",").map((name) => name.trim()));
  return names.filter((name) => /^\w+$/.test(name));
}
