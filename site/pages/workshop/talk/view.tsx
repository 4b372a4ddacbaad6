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

/** Which run and whose reports, and the parts of the talk about them. */
function TalkOfDay({ log, event, runs, latest }: Runs) {
  const chosen = useSignal(latest);
  const whose = useSignal("");
  const which = useSignal(1);
  const run = runs.includes(chosen.value) ? chosen.value : latest;
  const { cars, driversOf } = reportedIn(log, event, run);
  const car = cars.includes(which.value) ? which.value : (cars[0] ?? 1);
  const drivers = driversOf(car);
  const driver = drivers.find((name) => sameName(name, whose.value));
  return (
    <>
      <Chips
        id="talk-run"
        question={said.run}
        choices={runs.map((value) => ({ value, text: String(value) }))}
        chosen={run}
        choose={(value) => {
          chosen.value = value;
          whose.value = "";
        }}
        kind="scale"
      />
      {cars.length > 1 && (
        <WhichCar
          log={log}
          event={event}
          cars={cars}
          car={car}
          choose={(value) => {
            which.value = value;
            whose.value = "";
          }}
        />
      )}
      <Whose
        drivers={drivers}
        driver={driver}
        choose={(value) => {
          whose.value = value;
        }}
      />
      <Parts log={log} event={event} run={run} car={car} driver={driver} />
    </>
  );
}

/** The cars of a run that was reported, and who of each reported it. */
function reportedIn(log: Log, event: EventEntry, run: number) {
  const told = driverRuns(log, event).filter((one) => one.run === run && one.reports.length > 0);
  const cars = [...new Set(told.map((one) => one.car))].sort((a, b) => a - b);
  const driversOf = (car: number) => told.filter((one) => one.car === car).map((one) => one.driver);
  return { cars, driversOf };
}

interface AskedOfCars {
  readonly log: Log;
  readonly event: EventEntry;
  readonly cars: readonly number[];
  readonly car: number;
  readonly choose: (car: number) => void;
}

/** Which car the talk is about. */
function WhichCar({ log, event, cars, car, choose }: AskedOfCars) {
  return (
    <Chips
      id="talk-car"
      question={said.whichCar}
      choices={cars.map((value) => ({ value, text: nameOf(log, event, value) }))}
      chosen={car}
      choose={choose}
    />
  );
}

interface AskedOfDrivers {
  readonly drivers: readonly string[];
  /** Nothing: those of the group. */
  readonly driver: string | undefined;
  readonly choose: (driver: string) => void;
}

/** Whose reports the talk is about. */
function Whose({ drivers, driver, choose }: AskedOfDrivers) {
  return (
    <Chips
      id="talk-whose"
      question={said.about}
      choices={[
        { value: "", text: said.group },
        ...drivers.map((name) => ({ value: name, text: name })),
      ]}
      chosen={driver ?? ""}
      choose={choose}
    />
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
