import { type Signal, useSignal } from "@preact/signals";
import { type HappeningEntry, roadInRun, sameName, stages } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { changeSize, leverName } from "../../../say/change.js";
import { Button } from "../../../ui/button.js";
import { Chips } from "../../../ui/chips.js";
import { ChoiceField, TextField } from "../../../ui/field.js";
import { Fold } from "../../../ui/fold.js";
import { say } from "../../../ui/notice.js";
import { happenedToday, happens, moveReports, takeBack, withdrawUndriven } from "../day/happen.js";
import { roundsOn } from "../day/worked.js";
import { timeOf } from "../log/time.js";
import { insertNext } from "../plan/steps.js";
import { words } from "../words.js";
import { holdForBreak } from "./break.js";
import { type AtHand, clock } from "./state.js";

const { happen: said } = words;

/** Buttons for what no plan knows, and what happened so far. */
export function Happenings({ at }: { readonly at: AtHand }) {
  return (
    <Fold id="happenings" title={said.title}>
      <p class="quiet">{said.help}</p>
      <People at={at} />
      <RunsAndTime at={at} />
      <SoFar />
    </Fold>
  );
}

/** One tap for rain, one for a road that is dry again. */
export function Road({ at }: { readonly at: AtHand }) {
  const { stage } = clock.now.value;
  const after = stage > stages.indexOf("drive");
  const wet = roadInRun(happenedToday(), at.row.run + (after ? 1 : 0)) === "wet";
  const turn = (road: "wet" | "dry") => () =>
    happens({ what: "weather", conditions: { road } }, said.weather(road === "wet"));
  const baseline = () => {
    const added = insertNext(
      { kind: "baseline" },
      at.cars.map(({ car }) => car),
    );
    if (added !== undefined) say(said.baselineAdded, added.takeBack);
  };
  return (
    <>
      <h3>{said.road}</h3>
      <p class="tools">
        {wet ? (
          <Button id="dry-again" work={turn("dry")}>
            {said.dry}
          </Button>
        ) : (
          <Button id="rain-now" work={turn("wet")}>
            {said.rain}
          </Button>
        )}
        <Button id="new-baseline" work={baseline}>
          {said.baseline}
        </Button>
      </p>
    </>
  );
}

const driversIn = ({ day, row }: AtHand): string[] =>
  roundsOn(day, row.run).flatMap(({ stints }) => stints.map(({ driver }) => driver));

function People({ at }: { readonly at: AtHand }) {
  return (
    <>
      <h4>{said.people}</h4>
      <LeaveOrSwap at={at} />
      <Joins at={at} />
    </>
  );
}

function LeaveOrSwap({ at }: { readonly at: AtHand }) {
  const [who, other] = [useSignal(""), useSignal("")];
  const drivers = driversIn(at);
  const leave = () => {
    const driver = who.value;
    if (driver === "") return say(said.whoFault);
    happens({ what: "driver left", driver }, said.leftNow(driver), () =>
      withdrawUndriven(driver, at.row.run),
    );
  };
  const swap = () => {
    const [one, two] = [who.value, other.value];
    if (one === "" || two === "" || one === two) return say(said.swapFault);
    happens({ what: "drivers swapped", driver: one, other: two }, said.swapped(one, two));
  };
  return (
    <>
      <div class="fields">
        <Driver id="happen-who" label={said.who} of={drivers} chosen={who} />
        <Driver id="happen-other" label={said.swapWith} of={drivers} chosen={other} />
      </div>
      <p class="tools">
        <Button id="driver-left" work={leave}>
          {said.left}
        </Button>
        <Button id="drivers-swapped" work={swap}>
          {said.swap}
        </Button>
      </p>
    </>
  );
}

/** One of the drivers of the run. */
function Driver({
  id,
  label,
  of,
  chosen,
}: {
  readonly id: string;
  readonly label: string;
  readonly of: readonly string[];
  readonly chosen: Signal<string>;
}) {
  const choose = (name: string) => {
    chosen.value = name;
  };
  const choices = [["", said.choose] as const, ...of.map((name) => [name, name] as const)];
  return (
    <ChoiceField id={id} label={label} choices={choices} value={chosen.value} choose={choose} />
  );
}

function Joins({ at }: { readonly at: AtHand }) {
  const name = useSignal("");
  const type = (text: string) => {
    name.value = text;
  };
  const join = () => {
    const driver = name.value.trim();
    const known = driversIn(at).some((one) => sameName(one, driver));
    if (driver === "" || known) return say(said.joinFault);
    happens({ what: "driver joined", driver }, said.joined(driver));
    type("");
  };
  return (
    <>
      <TextField id="who-joins" label={said.joins} value={name.value} type={type} />
      <p class="tools">
        <Button id="driver-joined" work={join}>
          {said.join}
        </Button>
      </p>
    </>
  );
}

const breaks = [10, 20, 30] as const;

function RunsAndTime({ at }: { readonly at: AtHand }) {
  const { run } = at.row;
  const away = () => happens({ what: "run does not count" }, said.doesNotCount(run));
  return (
    <>
      <h4>{said.runs}</h4>
      <p class="tools">
        {breaks.map((minutes) => (
          <Button
            key={minutes}
            id={`break-${minutes}`}
            work={() =>
              happens({ what: "break", minutes }, said.breakBegun(minutes), () =>
                holdForBreak(minutes),
              )
            }
          >
            {said.break(minutes)}
          </Button>
        ))}
        <Button id="run-does-not-count" work={away}>
          {said.notCount}
        </Button>
      </p>
      <Fold id="wrong-run" title={said.wrong}>
        <WrongRun at={at} />
      </Fold>
    </>
  );
}

/** Moves the reports of one driver in the run at hand to another run. */
function WrongRun({ at }: { readonly at: AtHand }) {
  const [who, to] = [useSignal(""), useSignal(Math.max(1, at.row.run - 1))];
  const move = () => {
    if (who.value === "") return say(said.whoFault);
    const [driver, from, target] = [who.value, at.row.run, to.value];
    const count = moveReports(driver, from, target);
    if (count === 0) return say(said.nothingToMove);
    say(said.moved(count, driver, target), () => moveReports(driver, target, from));
  };
  return (
    <>
      <Chips
        id="wrong-of"
        question={said.wrongOf}
        choices={driversIn(at).map((value) => ({ value, text: value }))}
        chosen={who.value}
        choose={(name) => {
          who.value = name;
        }}
      />
      <Chips
        id="wrong-to"
        question={said.wrongTo}
        choices={at.rows.map(({ run }) => ({ value: run, text: String(run) }))}
        chosen={to.value}
        choose={(run) => {
          to.value = run;
        }}
        kind="scale"
      />
      <Button id="move-reports" work={move}>
        {said.wrongMove}
      </Button>
    </>
  );
}

function SoFar() {
  const all = happenedToday();
  if (all.length === 0) return null;
  const back = (entry: HappeningEntry) => {
    takeBack(entry);
    say(said.takenBack);
  };
  return (
    <>
      <h4>{said.list}</h4>
      <ul class="filed">
        {all.map((entry, i) => (
          <li key={entry.id}>
            <span>{inWords(entry)}</span>
            <Button
              id={`take-back-${i}`}
              aria-label={`${said.takeBack}: ${inWords(entry)}`}
              work={() => back(entry)}
            >
              {said.takeBack}
            </Button>
          </li>
        ))}
      </ul>
    </>
  );
}

/** One happening in a line. */
function inWords(entry: HappeningEntry): string {
  const { at, runNumber, author, what, driver, other, minutes, conditions, change } = entry;
  const parts = [
    ...[driver, other].filter((name) => name !== undefined),
    said.told[what],
    ...(conditions?.road === undefined ? [] : [conditions.road]),
    ...(minutes === undefined ? [] : [words.minutes(minutes)]),
    ...(change === undefined ? [] : [`${leverName(change, reader)} ${changeSize(change, reader)}`]),
  ];
  return said.at(timeOf(at), runNumber, parts.join(" "), author);
}
