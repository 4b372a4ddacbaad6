import { element } from "@rollbook/page";
import { h } from "preact";
import { theLog } from "../../../store/log.js";
import { canFile, type Draft, isFiled } from "../day/draft.js";
import { dayNow, fileDay, theDay } from "../day/open-day.js";
import { DayToPhones } from "../handing/day-to-phones.js";
import { button } from "../parts/fields.js";
import { fold } from "../parts/fold.js";
import { mounted } from "../parts/mount.js";
import { say } from "../parts/notice.js";
import { refill } from "../parts/refill.js";
import { views } from "../route.js";
import { words } from "../words.js";
import { candidates } from "./candidates.js";
import { dayChooser } from "./day-chooser.js";
import { people } from "./people.js";
import { rotationTable } from "./rotation-table.js";
import { type Sequence, sequence } from "./sequence.js";
import { venueEditor } from "./venue.js";

const { plan } = words;

/** What an instructor reads who has no day open: what the buttons give, and what the views are for. */
function firstLook(): HTMLElement[] {
  const whatFor = views.map((name) =>
    element("li", {}, element("b", {}, words.views[name]), ` ${words.about[name]}`),
  );
  return [
    element("p", {}, plan.exampleGives),
    element("p", {}, plan.newDayGives),
    element("ol", {}, ...whatFor),
  ];
}

/** Fills the plan's section; gives back what shows it anew. */
export function planView(section: HTMLElement): () => void {
  const filing = element("div", { class: "filing-plan" });
  const facts = element("p", { class: "only-print" });
  const turns = element("div", {});
  let runs: Sequence | undefined;

  function show(): void {
    const day = theDay();
    const chooser = dayChooser(show);
    runs = day && sequence();
    const parts = runs === undefined ? firstLook() : dayParts(runs);
    refill(section, element("h2", { tabindex: -1 }, words.views.plan), chooser, ...parts);
    follow();
    runs?.update("shape");
  }

  function dayParts(shown: Sequence): HTMLElement[] {
    const day = theDay();
    if (day === undefined) return [];
    const redraw = () => shown.update("shape");
    return [
      facts,
      part(plan.who, element("div", { class: "fields" }, ...people(day, redraw))),
      part(plan.venue, corners(day)),
      part(plan.sequence, shown.place, candidates(redraw)),
      part(plan.rotation, turns),
      filing,
    ];
  }

  /** What follows from any edit at once, without touching a field. */
  function follow(): void {
    const day = theDay();
    if (day === undefined) return;
    refill(turns, ...rotationTable(day));
    turns.parentElement?.toggleAttribute("hidden", turns.childElementCount === 0);
    refill(filing, ...filingLine(follow));
    facts.textContent = factsOf(day);
  }

  let before = theDay();
  dayNow.subscribe(() => {
    const day = theDay();
    const same = day?.steps === before?.steps;
    before = day;
    if (section.hidden) return;
    follow();
    if (same) runs?.update();
  });
  return show;
}

function part(title: string, ...content: HTMLElement[]): HTMLElement {
  return element("div", { class: "part" }, element("h3", {}, title), ...content);
}

/** The day in a sentence, for paper, where the fields are left out. */
const factsOf = ({ name, car, venue, minutes, cars, drivers }: Draft): string =>
  `${name}: ${words.sheets.facts(car.name, venue.name, words.hours(minutes), cars, drivers.length)}`;

/** The list of corners, folded: most days it is only read. */
function corners({ venue }: Draft): HTMLElement {
  return fold("venue", plan.cornerCount(venue.name, venue.corners.length), ...venueEditor());
}

function filingLine(filed: () => void): (HTMLElement | string)[] {
  const day = theDay();
  if (day === undefined) return [];
  if (isFiled(day, theLog()))
    return [element("p", { class: "quiet" }, plan.filed), mounted(h(DayToPhones, {}))];
  if (!canFile(day)) return [element("p", { class: "quiet" }, plan.cannotFile)];
  const file = () => {
    fileDay();
    say(plan.filed);
    filed();
  };
  return [element("p", { class: "quiet" }, plan.notFiled), button("file-plan", plan.file, file)];
}
