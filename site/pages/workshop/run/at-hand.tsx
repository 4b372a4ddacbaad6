import { driverRuns, rotation, stages } from "@rollbook/lib";
import { reader, spell } from "@rollbook/page";
import { toDoInWords, warningInWords } from "../../../say/plan.js";
import { theLog } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { focusSoon } from "../../../ui/focus.js";
import { List } from "../../../ui/list.js";
import { say } from "../../../ui/notice.js";
import { beginRun, type FiledFor } from "../day/begin-run.js";
import { filedDay } from "../day/reporter.js";
import { Bewares } from "../parts/bewares.js";
import { roundInWords } from "../plan/rotation-table.js";
import { words } from "../words.js";
import { Time } from "./face.js";
import { type AtHand, clockAt } from "./state.js";

const { run: said } = words;

const toDoAt = ({ day, row, before }: AtHand): string[] =>
  toDoInWords(row, before?.car ?? day.car, reader);

/** What the instructor does at this stage, and what to beware of. */
export function ForInstructor({ at }: { readonly at: AtHand }) {
  const { step, warnings } = at.row;
  const stage = stages[clockAt(at).stage] ?? "teach";
  return (
    <>
      <h3>{said.notesTitle}</h3>
      <p class="instructor">{spell(said.notes[stage])}</p>
      {step.note !== undefined && <p class="instructor">{`${said.note}: ${step.note}`}</p>}
      <Bewares sentences={warnings.map((warning) => warningInWords(warning, reader))} />
    </>
  );
}

/** What a room sees of the step: no notes, no warnings, nothing of what is predicted. */
export function ForTheWall({ at }: { readonly at: AtHand }) {
  const { row, rows } = at;
  return (
    <div>
      <p class="wall-title">{said.title(row.run, rows.length)}</p>
      <p class="wall-step">{spell(toDoAt(at).join("; ") || said.kinds[row.step.kind])}</p>
      <Time at={at} />
      <WhoDrives at={at} />
    </div>
  );
}

/** What is done to the car before this run, and the button that files it. */
export function OnTheCar({ at, filed }: { readonly at: AtHand; readonly filed: FiledFor }) {
  const toDo = toDoAt(at);
  return (
    <>
      <h3>{said.toDo}</h3>
      {toDo.length > 0 ? (
        <List texts={toDo} kind="to-do" />
      ) : (
        <p class="quiet">{said.nothingToDo}</p>
      )}
      <Filing run={at.row.run} filed={filed} />
    </>
  );
}

/** What is filed of the run; the button that files it, unless all of it is. */
function Filing({ run, filed }: { readonly run: number; readonly filed: FiledFor }) {
  const begin = () => {
    const begun = beginRun(run);
    say(begun === undefined ? said.notBegunRun : said.begun(begun.runs));
    focusSoon("#run-is-filed");
  };
  if (filed === "as planned")
    return (
      <p id="run-is-filed" tabIndex={-1} class="quiet">
        {said.isFiled}
      </p>
    );
  return (
    <>
      {filed === "otherwise" ? (
        <p class="beware">{said.filedOtherwise}</p>
      ) : (
        <p class="quiet">{said.readyHelp}</p>
      )}
      <Button id="begin-run" large work={begin}>
        {said.ready}
      </Button>
    </>
  );
}

/** Who is out in which round, and who watches. */
export function WhoDrives({ at }: { readonly at: AtHand }) {
  const { drivers, cars } = at.day;
  return (
    <List texts={rotation(drivers, cars, at.row.run).map(roundInWords)} kind="plain" ordered />
  );
}

/** How many reports of each driver are in, and nothing of what they say. */
export function ReportsIn({ at }: { readonly at: AtHand }) {
  const event = filedDay();
  const runs = event === undefined ? [] : driverRuns(theLog(), event);
  const countOf = (driver: string) =>
    runs.find((one) => one.run === at.row.run && one.driver === driver)?.reports.length ?? 0;
  return (
    <List
      texts={at.day.drivers.map((driver) => said.reportCount(driver, countOf(driver)))}
      kind="counts"
    />
  );
}
