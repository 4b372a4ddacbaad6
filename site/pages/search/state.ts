import type { Found } from "./find.js";

export const longestQuery = 100;
const most = 25;

/** What the search says: nothing yet, that it loads, that it cannot, or what it found. */
export type Result =
  | { readonly code: "empty" | "loading" | "not-loaded" }
  | { readonly code: "found"; readonly query: string; readonly found: readonly Found[] };

/** Whether there were more answers than are shown. */
export const isCut = (found: readonly Found[]): boolean => found.length >= most;

/** The query that an address brings along. */
export const queryIn = (search: string): string =>
  new URLSearchParams(search).get("q")?.slice(0, longestQuery) ?? "";

/** The address with the query, so that a look at an answer and back finds it again. */
export function withQuery(address: string, query: string): URL {
  const changed = new URL(address);
  if (query) changed.searchParams.set("q", query);
  else changed.searchParams.delete("q");
  return changed;
}
