import { useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import { words } from "../../say/search.js";
import { Answer } from "./answer.js";
import { searcher } from "./find.js";
import { searchData } from "./index-script.js";
import { isCut, longestQuery, queryIn, type Result, withQuery } from "./state.js";

const pause = 200; // ms without a letter before the search begins

function said(result: Result): string {
  if (result.code !== "found")
    return { empty: "", loading: words.loading, "not-loaded": words.notLoaded }[result.code];
  const { query, found } = result;
  if (found.length === 0) return words.nothing(query);
  if (found.length === 1) return words.one(query);
  return isCut(found) ? words.first(found.length, query) : words.many(found.length, query);
}

let find: ReturnType<typeof searcher> | undefined;

/** What is found for a query; the index is loaded for the first. */
async function resultOf(query: string): Promise<Result> {
  try {
    find ??= searcher(await searchData());
    return { code: "found", query, found: find(query) };
  } catch {
    return { code: "not-loaded" };
  }
}

/** Up and down go through box and answers; Escape comes back to the box. */
function walk(event: KeyboardEvent, stops: readonly HTMLElement[]): void {
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (event.key === "Escape") stops[0]?.focus();
  if (!step) return;
  const at = stops.indexOf(document.activeElement as HTMLElement);
  const next = at < 0 ? undefined : stops[at + step];
  if (!next) return;
  event.preventDefault();
  next.focus();
}

/** What is typed, and what comes of it a moment after the last letter. */
function useSearch() {
  const typed = useSignal(queryIn(location.search));
  const result = useSignal<Result>({ code: "empty" });
  const look = async () => {
    const query = typed.value.trim();
    history.replaceState(null, "", withQuery(location.href, query));
    result.value = { code: query && !find ? "loading" : "empty" };
    if (!query) return;
    const found = await resultOf(query);
    if (query === typed.value.trim()) result.value = found;
  };
  const timer = useRef(0);
  const type = (text: string) => {
    typed.value = text;
    clearTimeout(timer.current);
    timer.current = window.setTimeout(look, pause);
  };
  useEffect(() => void look(), []);
  return { typed, result, type };
}

export function Search() {
  const { typed, result, type } = useSearch();
  const place = useRef<HTMLDivElement>(null);
  const stops = () => [...(place.current?.querySelectorAll<HTMLElement>("input, ol a") ?? [])];
  return (
    <div role="search" ref={place} onKeyDown={(event) => walk(event, stops())}>
      <label for="query">{words.what}</label>
      <input
        type="search"
        id="query"
        maxLength={longestQuery}
        autocomplete="off"
        spellcheck={false}
        aria-describedby="query-help"
        value={typed.value}
        onFocus={() => void searchData().catch(() => {})}
        onInput={({ currentTarget }) => type(currentTarget.value)}
      />
      <p id="query-help" class="help">
        {words.example}
      </p>
      <p role="status">{said(result.value)}</p>
      <ol class="answers">
        {result.value.code === "found" &&
          result.value.found.map((found) => <Answer key={found.id} {...found} />)}
      </ol>
    </div>
  );
}
