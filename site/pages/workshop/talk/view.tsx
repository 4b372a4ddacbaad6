import { useSignal } from "@preact/signals";
import {
  driverRuns,
  type EventEntry,
  type Log,
  nowStandingFor,
  reportsOf,
  runsWithReports,
  sameName,
} from "@rollbook/lib";
import { useMemo } from "preact/hooks";
import { talk as said } from "../../../say/workshop/talk.js";
import { logNow } from "../../../store/log.js";
import { Chips } from "../../../ui/chips.js";
import { LateFold } from "../../../ui/fold.js";
import { useWhileOpen } from "../../../ui/while-open.js";
import { rootSetUp } from "../day/draft.js";
import { filedDay } from "../day/reporter.js";
import { NoDay } from "../parts/no-day.js";
import { words } from "../words.js";
import { Measured } from "./measured.js";
import { Model } from "./model.js";
import { NextChange } from "./next-change.js";
import { Predictions } from "./predictions.js";
import { ReportedByDriver, ReportedByGroup } from "./reported.js";
import type { Topic } from "./topic.js";

/** The talk after a run: own reports, then predictions, then the model, then what is next. */
export function TalkView({ open }: { readonly open: boolean }) {
  return useWhileOpen(open, () => (
    <>
      <h2 tabIndex={-1}>{words.views.talk}</h2>
      <Talk log={logNow.value} event={filedDay()} />
    </>
  ));
}

function Talk({ log, event }: { readonly log: Log; readonly event: EventEntry | undefined }) {
  const runs = useMemo(
    () => (event === undefined ? [] : runsWithReports(log, event)),
    [log, event],
  );
  const latest = runs.at(-1);
  if (event === undefined || latest === undefined)
    return <NoDay sentence={event === undefined ? undefined : said.noRuns} />;
  return <TalkOfDay log={log} event={event} runs={runs} latest={latest} />;
}

interface Runs {
  readonly log: Log;
  readonly event: EventEntry;
  readonly runs: readonly number[];
  readonly latest: number;
}

/** Which run and whose reports are chosen, and what there is to choose from. */
function useTopic({ log, event, runs, latest }: Runs) {
  const chosen = useSignal(latest);
  const whose = useSignal("");
  const which = useSignal(1);
  const run = runs.includes(chosen.value) ? chosen.value : latest;
  const told = driverRuns(log, event).filter((one) => one.run === run && one.reports.length > 0);
  const cars = [...new Set(told.map((one) => one.car))].sort((a, b) => a - b);
  const car = cars.includes(which.value) ? which.value : (cars[0] ?? 1);
  const drivers = told.filter((one) => one.car === car);
  const driver = drivers.find((one) => sameName(one.driver, whose.value))?.driver;
  const chooseRun = (value: number) => {
    chosen.value = value;
    whose.value = "";
  };
  const chooseCar = (value: number) => {
    which.value = value;
    whose.value = "";
  };
  const chooseDriver = (value: string) => {
    whose.value = value;
  };
  return { run, cars, car, drivers, driver, chooseRun, chooseCar, chooseDriver };
}

/** Which run and whose reports, and the parts of the talk about them. */
function TalkOfDay({ log, event, runs, latest }: Runs) {
  const topic = useTopic({ log, event, runs, latest });
  const { run, cars, car, drivers, driver } = topic;
  return (
    <>
      <Chips
        id="talk-run"
        question={said.run}
        choices={runs.map((value) => ({ value, text: String(value) }))}
        chosen={run}
        choose={topic.chooseRun}
        kind="scale"
      />
      {cars.length > 1 && (
        <Chips
          id="talk-car"
          question={said.whichCar}
          choices={cars.map((value) => ({ value, text: nameOf(log, event, value) }))}
          chosen={car}
          choose={topic.chooseCar}
        />
      )}
      <Chips
        id="talk-whose"
        question={said.about}
        choices={[
          { value: "", text: said.group },
          ...drivers.map((one) => ({ value: one.driver, text: one.driver })),
        ]}
        chosen={driver ?? ""}
        choose={topic.chooseDriver}
      />
      <Parts log={log} event={event} run={run} car={car} driver={driver} />
    </>
  );
}

/** A car of the plan by number and name. */
function nameOf(log: Log, event: EventEntry, car: number): string {
  const setUp = nowStandingFor(log, "set-up", rootSetUp(event, car));
  return words.happen.carTitle(car, setUp?.car.name ?? "");
}

/** Each part is filled when it is opened, so that nobody reads ahead. */
function Parts(topic: Topic) {
  const { log, event, run, car, driver } = topic;
  const reports = reportsOf(log, event, run, { driver, car });
  return (
    <>
      <LateFold id="talk-1" kind="talk-part" title={said.first}>
        <p class="quiet">{said.firstHelp}</p>
        {driver === undefined ? (
          <ReportedByGroup reports={reports} />
        ) : (
          <ReportedByDriver reports={reports} />
        )}
      </LateFold>
      <LateFold id="talk-2" kind="talk-part" title={said.second}>
        <Predictions {...topic} />
      </LateFold>
      <LateFold id="talk-3" kind="talk-part" title={said.third}>
        <Model {...topic} />
        <Measured {...topic} />
      </LateFold>
      <LateFold id="talk-4" kind="talk-part" title={said.fourth}>
        <NextChange {...topic} />
      </LateFold>
    </>
  );
}
