import { element, placeOf, refusals } from "@rollbook/page";
import { followLog, keptLast, openLog } from "../../store/log.js";
import { reopenDay } from "./day/open-day.js";
import { broughtIn, offer } from "./handing/offer.js";
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
  const offered = element("div", {});
  const shows = views.map((view, i) => makers[view](sections[i] ?? place));
  place.replaceChildren(
    element("nav", { class: "views", "aria-label": words.title }, ...links),
    notice,
    offered,
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
    offerFromLink(offered, () => shows[at]?.());
    if (!moved) return;
    scrollTo(0, 0);
    sections[at]?.querySelector("h2")?.focus({ preventScroll: true });
  }
  addEventListener("hashchange", () => show(true));
  show(false);
}

/** What a link brings is asked about once; the address then forgets it. */
function offerFromLink(offered: HTMLElement, taken: () => void): void {
  const brought = broughtIn(location.hash);
  if (brought === undefined) return;
  history.replaceState(null, "", location.hash.replace(/\?.*$/s, ""));
  void offer(brought, taken).then((made) => offered.replaceChildren(...made));
}

async function open(place: HTMLElement): Promise<void> {
  notice.textContent = words.opensOn;
  place.replaceChildren(notice);
  await openLog();
  await reopenDay();
  notice.textContent = "";
  keptLast.subscribe((kept) => {
    if (kept !== undefined) document.documentElement.dataset.kept = kept ? "yes" : "no";
  });
  refusals.subscribe((count) => {
    if (count > 0) say(words.refused(count));
  });
  start(place);
  followLog();
}

const place = placeOf("workshop");
if (place) void open(place);
