import { element, placeOf } from "@rollbook/page";
import { onShelved, openLogbook } from "./day/logbook.js";
import { onDraftRefused, reopenDay } from "./day/open-day.js";
import { logView } from "./log/view.js";
import { notice, say } from "./parts/notice.js";
import { planView } from "./plan/view.js";
import { reportView } from "./report/view.js";
import { type View, viewOf, views } from "./route.js";
import { runView } from "./run/view.js";
import { sheetsView } from "./sheets/view.js";
import { talkView } from "./talk/view.js";
import { words } from "./words.js";

const makers: Readonly<Record<View, (section: HTMLElement) => () => void>> = {
  plan: planView,
  sheets: sheetsView,
  run: runView,
  report: reportView,
  talk: talkView,
  log: logView,
};

function start(place: HTMLElement): void {
  const links = views.map((view) => element("a", { href: `#${view}` }, words.views[view]));
  const sections = views.map((view) => element("section", { id: view, hidden: true }));
  const shows = views.map((view, i) => makers[view](sections[i] ?? place));
  place.replaceChildren(
    element("nav", { class: "views", "aria-label": words.title }, ...links),
    notice,
    ...sections,
  );

  function show(moved: boolean): void {
    const at = views.indexOf(viewOf(location.hash));
    document.documentElement.dataset.view = views[at] ?? "plan";
    links.forEach((link, i) => {
      if (i === at) link.setAttribute("aria-current", "page");
      else link.removeAttribute("aria-current");
    });
    sections.forEach((section, i) => {
      section.hidden = i !== at;
    });
    if (moved) notice.replaceChildren();
    shows[at]?.();
    if (!moved) return;
    scrollTo(0, 0);
    sections[at]?.querySelector("h2")?.focus({ preventScroll: true });
  }
  addEventListener("hashchange", () => show(true));
  show(false);
}

async function open(place: HTMLElement): Promise<void> {
  notice.textContent = words.opensOn;
  place.replaceChildren(notice);
  await openLogbook();
  await reopenDay();
  notice.textContent = "";
  onShelved(({ refused }) => {
    document.documentElement.dataset.kept = refused === 0 ? "yes" : "no";
    if (refused > 0) say(words.refused(refused));
  });
  onDraftRefused(() => say(words.draftRefused));
  start(place);
}

const place = placeOf("workshop");
if (place) void open(place);
