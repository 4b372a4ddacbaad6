import { driverRuns, sameName, stages } from "@rollbook/lib";
import { reader, spell } from "@rollbook/page";
import { toDoInWords, warningInWords } from "../../../say/plan.js";
import { theLog } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { focusSoon } from "../../../ui/focus.js";
import { Fold } from "../../../ui/fold.js";
import { List } from "../../../ui/list.js";
import { say } from "../../../ui/notice.js";
import { beginRun, type FiledFor, filedFor } from "../day/begin-run.js";
import { carTitle } from "../day/car-names.js";
import { happens } from "../day/happen.js";
import { filedDay } from "../day/reporter.js";
import { roundsOn } from "../day/worked.js";
import { Bewares } from "../parts/bewares.js";
import { roundInWords } from "../plan/rotation-table.js";
import { words } from "../words.js";
import { Time } from "./face.js";
import { OtherChange } from "./other-change.js";
import { type AtHand, type CarAtHand, clockAt } from "./state.js";

const { run: said, happen } = words;

const toDoOf = ({ row }: CarAtHand): string[] => toDoInWords(row, reader);

/** What the instructor does at this stage, and what to beware of. */
export function ForInstructor({ at }: { readonly at: AtHand }) {
  const { step } = at.row;
  const stage = stages[clockAt(at).stage] ?? "teach";
  const warnings = at.cars.flatMap(({ row }) => row.warnings);
  const sentences = warnings.map((warning) => warningInWords(warning, reader));
  return (
    <>
      <h3>{said.notesTitle}</h3>
      <p class="instructor">{spell(said.notes[stage])}</p>
      {step.on === "circle" && <p>{words.plan.circleOnSheet}</p>}
      {step.note !== undefined && <p class="instructor">{`${said.note}: ${step.note}`}</p>}
      <Bewares sentences={[...new Set(sentences)]} />
    </>
  );
}

/** What a room sees of the step: no notes, no warnings, nothing of what is predicted. */
export function ForTheWall({ at }: { readonly at: AtHand }) {
  const { row, rows, day, cars } = at;
  return (
    <div>
      <p class="wall-title">{said.title(row.run, rows.length)}</p>
      {cars.map((one) => {
        const title = carTitle(day, one.car);
        const toDo = toDoOf(one).join("; ") || said.kinds[one.row.step.kind];
        return (
          <p class="wall-step" key={one.car}>
            {spell(title === undefined ? toDo : `${title}: ${toDo}`)}
          </p>
        );
      })}
      <Time at={at} />
      <WhoDrives at={at} />
    </div>
  );
}

/** What is done to each car before this run, and the buttons that file it. */
export function OnTheCars({ at }: { readonly at: AtHand }) {
  return (
    <>
      <h3>{said.toDo}</h3>
      {at.cars.map((one) => (
        <OnTheCar key={one.car} at={at} one={one} />
      ))}
    </>
  );
}

function OnTheCar({ at, one }: { readonly at: AtHand; readonly one: CarAtHand }) {
  const toDo = toDoOf(one);
  const title = carTitle(at.day, one.car);
  return (
    <div class="on-the-car">
      {title !== undefined && <h4>{title}</h4>}
      {toDo.length > 0 ? (
        <List texts={toDo} kind="to-do" />
      ) : (
        <p class="quiet">{said.nothingToDo}</p>
      )}
      <Filing at={one} filed={filedFor(one.row.run, one.car)} />
    </div>
  );
}

const idOf = (name: string, car: number): string => (car === 1 ? name : `${name}-${car}`);

/** What is filed of the run; the buttons that file it, unless all of it is. */
function Filing({ at, filed }: { readonly at: CarAtHand; readonly filed: FiledFor }) {
  const { car, row } = at;
  const begin = () => {
    const begun = beginRun(row.run, car);
    say(begun === undefined ? said.notBegunRun : said.begun(begun.runs));
    focusSoon(`#${idOf("run-is-filed", car)}`);
  };
  if (filed === "as planned")
    return (
      <>
        <p id={idOf("run-is-filed", car)} tabIndex={-1} class="quiet">
          {said.isFiled}
        </p>
        <NotAsPlanned at={at} />
      </>
    );
  return (
    <>
      {filed === "otherwise" ? (
        <p class="beware">{said.filedOtherwise}</p>
      ) : (
        <p class="quiet">{said.readyHelp}</p>
      )}
      <Button id={idOf("begin-run", car)} large work={begin}>
        {said.ready}
      </Button>
      <NotAsPlanned at={at} />
    </>
  );
}

/** The change was skipped, or another one made in its place. */
function NotAsPlanned({ at }: { readonly at: CarAtHand }) {
  const { car, row } = at;
  const carNumber = car;
  const skip = () => happens({ what: "change skipped", carNumber }, happen.skipped(""));
  return (
    <>
      {row.toDo.length > 0 && (
        <p class="tools">
          <Button id={idOf("change-skipped", car)} work={skip}>
            {happen.skip}
          </Button>
        </p>
      )}
      <Fold id={idOf("other-change", car)} title={happen.otherTitle}>
        <OtherChange key={row.run} stood={row.stood} car={car} />
      </Fold>
    </>
  );
}

/** Who is out in which round, and who watches. */
export function WhoDrives({ at }: { readonly at: AtHand }) {
  return <List texts={roundsOn(at.day, at.row.run).map(roundInWords)} kind="plain" ordered />;
}

/** How many reports of each driver are in, and nothing of what they say. */
export function ReportsIn({ at }: { readonly at: AtHand }) {
  const event = filedDay();
  const runs = event === undefined ? [] : driverRuns(theLog(), event);
  const countOf = (driver: string) =>
    runs.find((one) => one.run === at.row.run && sameName(one.driver, driver))?.reports.length ?? 0;
  const drivers = roundsOn(at.day, at.row.run)
    .flatMap(({ stints }) => stints.map(({ driver }) => driver))
    .map((driver) => ({ driver, count: countOf(driver) }));
  const missing = drivers.filter(({ count }) => count === 0).map(({ driver }) => driver);
  return (
    <>
      <p id="reports-in">{said.reportsIn(drivers.length - missing.length, drivers.length)}</p>
      {missing.length > 0 && <p class="quiet">{said.missing(missing.join(", "))}</p>}
      <List
        texts={drivers.map(({ driver, count }) => said.reportCount(driver, count))}
        kind="counts"
      />
    </>
  );
}
