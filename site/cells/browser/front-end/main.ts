/** The entry of what a notebook's outputs live on in a Jupyter front end; carried once a notebook. */

import { frame } from "../../../frame/axes.js";
import { followOtherPages, openAll } from "../../../store/document.js";
import { offerFrame } from "../frames.js";
import { enliven, sayWhyStill } from "./enliven.js";
import { type Ran, type Run, replay } from "./replay.js";
import { followTheme } from "./theme.js";

/** What each run of a cell did, by its name. */
const done = new Map<string, Promise<Ran>>();
/** The notebook of each run; its outputs may not stand in the document yet. */
const notebooks = new Map<string, string>();

async function bring(place: HTMLElement, ran: Promise<Ran>, notebook: string): Promise<void> {
  place.dataset.taken = "";
  try {
    enliven(place, await ran, notebook);
    void openAll("");
  } catch (error) {
    sayWhyStill(place, error);
  }
}

/** Brings to life what has come into the document since. */
function look(): void {
  for (const note of document.querySelectorAll('[data-still="all"]')) note.remove();
  const places = document.querySelectorAll<HTMLElement>("[data-rollbook]:not([data-taken])");
  for (const place of places) {
    const { rollbook: run = "" } = place.dataset;
    const ran = done.get(run);
    if (ran) void bring(place, ran, notebooks.get(run) ?? "");
  }
}

function take({ run, notebook, kernel = run, cells }: Run): void {
  if (cells && !done.has(run)) done.set(run, replay(kernel, cells));
  notebooks.set(run, notebook);
  look();
}

const page = globalThis as { rollbookRuns?: readonly Run[] | { push(run: Run): void } };
const waiting = page.rollbookRuns ?? [];
if (Array.isArray(waiting)) {
  followOtherPages();
  offerFrame(frame);
  page.rollbookRuns = { push: take };
  for (const run of waiting as readonly Run[]) take(run);
  new MutationObserver(look).observe(document.body, { childList: true, subtree: true });
  followTheme();
} else look();
