import {
  type EventEntry,
  filedRuns,
  happeningsOf,
  minutesFor,
  minutesUntilRound,
  type PlanStep,
  planCarOf,
  type Round,
  roundsInRun,
  runsOf,
  runsOfDay,
  type StageMinutes,
  sameName,
  stages,
  stepsAsMade,
  usualMinutes,
} from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { changeSize, leverName } from "../../../say/change.js";
import { theLog } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { filedDay } from "../day/reporter.js";
import { beginReport, reporting } from "../report/state.js";
import { clock, second } from "../run/state.js";
import { words } from "../words.js";
import { isPhone } from "./place.js";

const { hand: said } = words.paddock;

/** The run at hand for one driver: what was changed, when to drive and in which car. Nothing of what is predicted. */
export function MyRun() {
  if (!isPhone()) return null;
  const event = filedDay();
  if (event === undefined) return <p class="quiet">{said.none}</p>;
  return <RunOf event={event} />;
}

function RunOf({ event }: { readonly event: EventEntry }) {
  const { driver, run: reported } = reporting.now.value;
  const { run, stage } = clock.now.value;
  const rounds = roundsOfRun(event, run);
  return (
    <div class="my-run" id="my-run">
      <h3>{said.title(run, runsOfDay(event))}</h3>
      {changedIn(event, run).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p id="my-drive">{whenIn(event, rounds, driver)}</p>
      <p class="quiet">
        {said.stage(words.stages[stages[stage] ?? "teach"])}{" "}
        {stage > 3 ? said.report : said.predict}
      </p>
      {reported !== run && (
        <Button id="to-run-at-hand" large work={() => beginReport(driver, run)}>
          {said.go(run)}
        </Button>
      )}
    </div>
  );
}

function roundsOfRun(event: EventEntry, run: number): Round[] {
  const log = theLog();
  return roundsInRun(event, happeningsOf(log, event), run, filedRuns(runsOf(log, event), run));
}

/** What is done to each car before a run, by name. */
function changedIn(event: EventEntry, run: number): string[] {
  const { steps, others = [] } = event;
  const happened = happeningsOf(theLog(), event);
  const cars = [{ carNumber: 1, steps }, ...others];
  return cars.map((car) => {
    const step = stepsAsMade(car.steps, happened, car.carNumber)[run - 1];
    return said.changed(others.length === 0 ? undefined : car.carNumber, inWords(step));
  });
}

function inWords(step: PlanStep | undefined): string {
  if (step?.kind === "change")
    return `${leverName(step.change, reader)} ${changeSize(step.change, reader)}`;
  if (step?.kind === "baseline") return said.baseline;
  return step?.kind === "return" ? said.back : said.nothing;
}

function whenIn(event: EventEntry, rounds: readonly Round[], driver: string): string {
  const at = rounds.findIndex(({ stints }) => stints.some((one) => sameName(one.driver, driver)));
  const stint = rounds[at]?.stints.find((one) => sameName(one.driver, driver));
  if (stint === undefined) return said.watch;
  const where = said.drive(stint.car, at + 1, rounds.length);
  const now = clock.now.value;
  if (now.since === undefined || now.stage > stages.indexOf("drive")) return where;
  const row = {
    minutes: minutesOf(event, now.run, stint.car),
    ...{ startsAt: 0, rounds: rounds.length, swap: event.swap ?? 0 },
  };
  const left = Math.round(minutesUntilRound(now, row, at + 1, second.value));
  if (left > 0) return `${where} ${said.in(left)}`;
  return left > -row.minutes.drive ? `${where} ${said.now}` : where;
}

/** Minutes of a run as far as a phone knows them, that has no car to work them out for. */
function minutesOf(event: EventEntry, run: number, carNumber: number): StageMinutes {
  const own = event.others?.find((other) => other.carNumber === planCarOf(event, carNumber));
  const step = (own ?? event).steps[run - 1];
  const making = step?.kind === "change" ? minutesFor([step.change]) : 0;
  const change = own?.changeMinutes ?? event.usual?.change ?? Math.max(making, usualMinutes.change);
  const idle = step?.kind !== "change" && step?.kind !== "return";
  return { ...usualMinutes, ...event.usual, change: idle ? 0 : change, ...step?.minutes };
}
