import { signal } from "@preact/signals";
import { openAll, placeOf, refusals } from "@rollbook/page";
import { type ComponentType, render } from "preact";
import { useRef } from "preact/hooks";
import { followLog, keptLast, openLog } from "../../store/log.js";
import { hush, Notice, say } from "../../ui/notice.js";
import { show } from "../../ui/show.js";
import { rest, typed } from "../../ui/work-at-rest.js";
import { reopenDay } from "./day/open-day.js";
import { Offer, readAddress } from "./handing/offer.js";
import { LogView } from "./log/view.js";
import { Desk } from "./paddock/desk.js";
import { Join } from "./paddock/join.js";
import { followPaddock } from "./paddock/link.js";
import { isDesk, isPhone } from "./paddock/place.js";
import { StateLine } from "./paddock/state-line.js";
import { Plan } from "./plan/view.js";
import { ReportView } from "./report/view.js";
import { otherViews, type View, viewOf, views } from "./route.js";
import { followDeviceClock } from "./run/device-clock.js";
import { watchClock } from "./run/face.js";
import { RunView } from "./run/view.js";
import { Sheets } from "./sheets/view.js";
import { TalkView } from "./talk/view.js";
import { WallView } from "./wall/view.js";
import { words } from "./words.js";

/** The views; `open` says whether somebody looks at it. */
const components: Readonly<Record<View, ComponentType<{ readonly open: boolean }>>> = {
  plan: Plan,
  sheets: Sheets,
  run: RunView,
  report: ReportView,
  talk: TalkView,
  log: LogView,
  join: Join,
  desk: Desk,
  wall: WallView,
};

const at = signal<View>(viewOf(location.hash));

/** One view: it is there from the first time it is gone to, and stays as it was left. */
function Place({ view }: { readonly view: View }) {
  const open = at.value === view;
  const opened = useRef(false);
  opened.current ||= open;
  const Content = components[view];
  return (
    <section id={view} hidden={!open} onInputCapture={typed} onChange={rest}>
      {opened.current && <Content open={open} />}
    </section>
  );
}

/** What a driver's phone needs is less, and a desk has one more. */
function viewsShown(): readonly View[] {
  if (isPhone()) return ["report", "log"];
  return isDesk() ? [...views, "desk"] : views;
}

const nameOf = (view: View): string =>
  view === "join" || view === "desk" || view === "wall" ? words.paddock.view : words.views[view];

function Workshop() {
  return (
    <>
      <nav class="views" aria-label={words.title}>
        {viewsShown().map((view) => (
          <a key={view} href={`#${view}`} aria-current={at.value === view ? "page" : undefined}>
            {nameOf(view)}
          </a>
        ))}
      </nav>
      <StateLine />
      <Notice />
      <Offer />
      {[...views, ...otherViews].map((view) => (
        <Place key={view} view={view} />
      ))}
    </>
  );
}

/** Follows the address; who came by a link within the page finds its heading under the keyboard. */
function goWhereTheAddressSays(moved: boolean): void {
  at.value = viewOf(location.hash);
  document.documentElement.dataset.view = at.value;
  void readAddress();
  if (!moved) return;
  hush();
  scrollTo(0, 0);
  requestAnimationFrame(() =>
    document.querySelector<HTMLElement>(`#${at.value} h2`)?.focus({ preventScroll: true }),
  );
}

async function open(place: HTMLElement): Promise<void> {
  show(<p class="notice">{words.opensOn}</p>, place);
  await Promise.all([openLog(), openAll("workshop/"), openAll("paddock/")]);
  reopenDay();
  keptLast.subscribe((kept) => {
    if (kept === undefined) delete document.documentElement.dataset.kept;
    else document.documentElement.dataset.kept = kept ? "yes" : "no";
  });
  let before = refusals.value;
  refusals.subscribe((count) => {
    if (count > before) say(words.refused(count - before));
    before = count;
  });
  followLog();
  followPaddock();
  watchClock();
  followDeviceClock();
  render(<Workshop />, place);
  addEventListener("hashchange", () => goWhereTheAddressSays(true));
  goWhereTheAddressSays(false);
}

const place = placeOf("workshop");
if (place) void open(place);
