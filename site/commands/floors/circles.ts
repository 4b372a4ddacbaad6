import type { Imports } from "./imports.js";

/**
 * Files that import each other, directly or through others: each circle once, in the order in which
 * one imports the next.
 */
export function circlesIn(imports: Imports): string[][] {
  const circles: string[][] = [];
  const done = new Set<string>();
  const follow = (file: string, path: readonly string[]): void => {
    const start = path.indexOf(file);
    if (start >= 0) circles.push(path.slice(start));
    if (start >= 0 || done.has(file)) return;
    for (const next of imports.get(file) ?? []) follow(next, [...path, file]);
    done.add(file);
  };
  for (const file of imports.keys()) follow(file, []);
  return circles;
}
