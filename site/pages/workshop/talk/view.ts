import {
  comparedIn,
  driverRuns,
  type EventEntry,
  reportsOf,
  rootOf,
  runsWithReports,
  setUpOfRun,
  testedIn,
  triedFrom,
} from "@rollbook/lib";
import { element, reader } from "@rollbook/page";
import { changeLabel } from "../../../say/change.js";
import { theLog } from "../../../store/log.js";
import { filedDay } from "../day/reporter.js";
import { chips } from "../parts/chips.js";
import { needsDay } from "../parts/needs-day.js";
import { refill } from "../parts/refill.js";
import { words } from "../words.js";
import { nextChange } from "./next-change.js";
import { predictions } from "./predictions.js";
import { reportedByDriver, reportedByGroup } from "./reported.js";
import { driverTable, groupTable, testedLine } from "./side-by-side.js";

const { talk: said } = words;

/** Fills the talk's section: own reports, then predictions, then the model, then what is next. */
export function talkView(section: HTMLElement): () => void {
  let run: number | undefined;
  let driver: string | undefined;
  const parts = element("div", {});

  function show(): void {
    const event = filedDay();
    const runs = event === undefined ? [] : runsWithReports(theLog(), event);
    const heading = element("h2", { tabindex: -1 }, words.views.talk);
    if (event === undefined || runs.length === 0) {
      refill(section, heading, ...needsDay(event === undefined ? undefined : said.noRuns));
      return;
    }
    if (run === undefined || !runs.includes(run)) run = runs.at(-1);
    refill(section, heading, runChoice(runs), parts);
    draw(event);
  }

  const runChoice = (runs: readonly number[]) =>
    chips(
      "talk-run",
      said.run,
      runs.map((value) => ({ value, text: String(value) })),
      run,
      (value) => {
        run = value;
        driver = undefined;
        show();
      },
      "scale",
    );

  function draw(event: EventEntry): void {
    const number = run ?? 1;
    const drivers = driverRuns(theLog(), event).filter(
      (one) => one.run === number && one.reports.length > 0,
    );
    const names = [
      { value: "", text: said.group },
      ...drivers.map((one) => ({ value: one.driver, text: one.driver })),
    ];
    const whose = chips("talk-whose", said.about, names, driver ?? "", (value) => {
      driver = value === "" ? undefined : value;
      draw(event);
    });
    refill(parts, whose, ...talkParts(event, number, driver));
  }
  return show;
}

function talkParts(event: EventEntry, run: number, driver: string | undefined): HTMLElement[] {
  const log = theLog();
  const reports = reportsOf(log, event, run, driver);
  const own = driverRuns(log, event).filter((one) => one.run === run);
  const expected = own
    .filter((one) => driver === undefined || one.driver === driver)
    .flatMap((one) => one.predictions);
  return [
    part("talk-1", said.first, () => [
      element("p", { class: "quiet" }, said.firstHelp),
      driver === undefined ? reportedByGroup(reports) : reportedByDriver(reports),
    ]),
    part("talk-2", said.second, () => predictions(expected)),
    part("talk-3", said.third, () => model(event, run, driver)),
    part("talk-4", said.fourth, () => next(event, run, driver)),
  ];
}

/** A part that is filled when it is opened, so that nobody reads ahead. */
function part(id: string, title: string, content: () => HTMLElement[]): HTMLElement {
  const place = element("div", {});
  const fold = element("details", { id, class: "talk-part" }, element("summary", {}, title), place);
  fold.addEventListener("toggle", () => {
    if (fold.open && place.childElementCount === 0) place.append(...content());
  });
  return fold;
}

function model(event: EventEntry, run: number, driver: string | undefined): HTMLElement[] {
  const log = theLog();
  if (run < 2) return [element("p", {}, said.baselineRun)];
  const tested = testedIn(log, event, run);
  const compared = comparedIn(log, event, run);
  if (tested === undefined) return [element("p", { class: "beware" }, said.notComparable)];
  const labels = tested.changes.map((change) => changeLabel(change, tested.before, reader));
  const one = compared.find((each) => each.driver === driver);
  const shown =
    driver === undefined ? groupTable(compared) : one === undefined ? [] : driverTable(one);
  return [testedLine(labels), ...shown];
}

function next(event: EventEntry, run: number, driver: string | undefined): HTMLElement[] {
  const log = theLog();
  const setUp = setUpOfRun(log, event, run);
  if (setUp === undefined) return [element("p", { class: "beware" }, said.noSetUp)];
  return nextChange({
    car: setUp.car,
    measured: rootOf(log, setUp).car,
    venue: event.venue,
    reports: reportsOf(log, event, run, driver),
    tried: triedFrom(log, event, run),
  });
}
