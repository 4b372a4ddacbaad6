import { element, placeOf } from "@rollbook/page";
import { answer } from "./answer.js";
import { type Found, searcher } from "./find.js";
import { searchData } from "./index-script.js";
import { words } from "./words.js";

const pause = 200;
const most = 25;

const box = element("input", {
  type: "search",
  id: "query",
  maxlength: 100,
  autocomplete: "off",
  spellcheck: "false",
  "aria-describedby": "query-help",
});
const status = element("p", { role: "status" });
const list = element("ol", { class: "answers" });
let find: ((query: string) => Found[]) | undefined;

function summary(count: number, query: string): string {
  if (count === 0) return words.nothing(query);
  if (count === 1) return words.one(query);
  return count < most ? words.many(count, query) : words.first(count, query);
}

/** The question stays in the address, so that a look at an answer and back finds it again. */
function keepInAddress(query: string): void {
  const address = new URL(location.href);
  if (query) address.searchParams.set("q", query);
  else address.searchParams.delete("q");
  history.replaceState(null, "", address);
}

async function look(): Promise<void> {
  const query = box.value.trim();
  keepInAddress(query);
  list.replaceChildren();
  status.textContent = "";
  if (!query) return;
  try {
    if (!find) status.textContent = words.loading;
    find ??= searcher(await searchData());
    if (query !== box.value.trim()) return;
    const found = find(query);
    list.replaceChildren(...found.map(answer));
    status.textContent = summary(found.length, query);
  } catch {
    status.textContent = words.notLoaded;
  }
}

/** Up and down go through box and answers; Escape comes back to the box. */
function walk(event: KeyboardEvent): void {
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (event.key === "Escape") box.focus();
  if (!step) return;
  const stops: HTMLElement[] = [box, ...list.querySelectorAll("a")];
  const at = stops.indexOf(document.activeElement as HTMLElement);
  const next = at < 0 ? undefined : stops[at + step];
  if (!next) return;
  event.preventDefault();
  next.focus();
}

const place = placeOf("search");
if (place) {
  let timer = 0;
  box.addEventListener("focus", () => void searchData().catch(() => {}));
  box.addEventListener("input", () => {
    clearTimeout(timer);
    timer = window.setTimeout(look, pause);
  });
  place.addEventListener("keydown", walk);
  place.replaceChildren(
    element("label", { for: "query" }, words.what),
    box,
    element("p", { id: "query-help", class: "help" }, words.example),
    status,
    list,
  );
  box.value = new URLSearchParams(location.search).get("q")?.slice(0, 100) ?? "";
  void look();
}
