import { existsSync } from "node:fs";
import { basename } from "node:path";
import { inRoot } from "../../build/paths.js";
import type { Graph } from "./graph.js";

/** Where a change shows in every page. */
const everywhere = /^site\/(build|cells|frame|offline|styles|kernel|store)\//;

/** Pages that changed files show in, with how far away the nearest of them is. */
export function pagesOf(
  changed: readonly string[],
  graph: Graph,
  pages: readonly string[],
): Map<string, number> {
  const found = new Map<string, number>();
  const add = (page: string, distance: number) =>
    found.set(page, Math.min(distance, found.get(page) ?? Number.POSITIVE_INFINITY));
  for (const file of changed) {
    const [, own] = /^site\/pages\/([^/]+)\//.exec(file) ?? [];
    if (own) add(own, 0);
    if (/^notebooks\/.*\.ipynb$/.test(file)) add(basename(file, ".ipynb"), 0);
    if (everywhere.test(file)) for (const page of pages) add(page, 1);
    for (const page of pages) {
      const distance = graph.get(scriptOf(page))?.get(file);
      if (distance !== undefined) add(page, distance + 1);
    }
  }
  return found;
}

/** The entry of a page's script; chapters share one. */
export const scriptOf = (page: string): string =>
  /^\d\d-/.test(page) || page === "index"
    ? "site/cells/browser/shared.ts"
    : `site/pages/${page}/main.${existsSync(inRoot(`site/pages/${page}/main.tsx`)) ? "tsx" : "ts"}`;
