import {
  planCarOf,
  type Round,
  roundStartsAt,
  runBegunAt,
  type SheetRow,
  stages,
} from "@rollbook/lib";
import { reader, spell } from "@rollbook/page";
import { toDoInWords, warningInWords } from "../../../say/plan.js";
import { logNow } from "../../../store/log.js";
import { List } from "../../../ui/list.js";
import { carTitle } from "../day/car-names.js";
import type { Draft } from "../day/draft.js";
import { filedDay } from "../day/reporter.js";
import { roundsOn } from "../day/worked.js";
import { timeOf } from "../log/time.js";
import { roundInWords } from "../plan/rotation-table.js";
import { clock } from "../run/state.js";
import { words } from "../words.js";
import { Blank, type CarRun, carsIn, type OfDay, Paper } from "./paper.js";

const { sheets: said } = words;

const MOST_LANES = 4; // more columns than that do not stand side by side on a page

/** The whole day on a page: when, what, how long, who. */
export function RunSheet({ day, rows, sheets }: OfDay) {
  const { car, venue, minutes, cars, drivers } = day;
  const last = rows.at(-1);
  const lanes = lanesOf(day, sheets);
  return (
    <Paper day={day} title={`${said.runSheet}: ${day.name}`}>
      <p>{said.facts(car.name, venue.name, words.hours(minutes), cars, drivers.length)}</p>
      <DayLines />
      <table class={lanes.length > 0 ? "run-sheet lanes" : "run-sheet"}>
        <thead>
          <tr>
            {headsOf(lanes).map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) =>
            lanes.length > 0 ? (
              <LanesRow key={row.run} day={day} row={row} lanes={lanes} />
            ) : (
              <RunRow key={row.run} day={day} row={row} cars={carsIn(sheets, row.run)} />
            ),
          )}
        </tbody>
      </table>
      <p>{last && said.over(words.hours(last.startsAt + last.lasts))}</p>
      {drivers.length > 1 && <EachDriver day={day} rows={rows} />}
    </Paper>
  );
}

/** Date and time are known once the day has begun; before, and the weather always, are for a pen. */
function DayLines() {
  const { begun } = clock.now.value;
  const [date, hour] = begun === undefined ? [] : timeOf(new Date(begun).toISOString()).split(" ");
  return (
    <div class="head-lines">
      <Blank label={said.date} filled={date} />
      <Blank label={said.begunAt} filled={hour} />
      <Blank label={said.conditions} />
    </div>
  );
}

/** A car of the day with a column of its own. */
interface Lane {
  /** 1 is the first car of the day. */
  readonly carNumber: number;
  readonly title: string;
  readonly rows: readonly SheetRow[];
}

/** None where there is one car, or more than a page has columns for. */
function lanesOf(day: Draft, sheets: OfDay["sheets"]): Lane[] {
  if (day.cars < 2 || day.cars > MOST_LANES) return [];
  return Array.from({ length: day.cars }, (_, i) => {
    const planned = planCarOf(day, i + 1);
    const { rows = [] } = sheets.find(({ car }) => car === planned) ?? {};
    const name = day.others?.find(({ carNumber }) => carNumber === i + 1)?.car.name;
    const title = words.happen.carTitle(i + 1, name ?? day.car.name);
    return { carNumber: i + 1, title, rows };
  });
}

function headsOf(lanes: readonly Lane[]): readonly string[] {
  const { start, run, minutes } = said.columns;
  if (lanes.length === 0) return Object.values(said.columns);
  return [start, run, ...lanes.map(({ title }) => title), minutes];
}

function RunRow({
  day,
  row,
  cars,
}: {
  readonly day: Draft;
  readonly row: SheetRow;
  readonly cars: readonly CarRun[];
}) {
  return (
    <tr>
      <td class="start">
        {words.hours(row.startsAt)}
        <PlannedAt minutes={row.startsAt} />
        {day.cars === 1 ? <ReallyAt run={row.run} carNumber={1} /> : <Blank label={said.really} />}
      </td>
      <td>{row.run}</td>
      <td>
        {cars.map((one) => (
          <CarInRun key={one.car} row={one.row} whose={carTitle(day, one.car)} />
        ))}
      </td>
      <td>{minutesInWords(row)}</td>
      <td>
        <ol class="plain">
          {roundsOn(day, row.run).map((round, i) => (
            <li key={i}>{roundInWords({ ...round, waiting: [] })}</li>
          ))}
        </ol>
      </td>
      <td class="box">☐</td>
    </tr>
  );
}

/** A run with a column for each car: what is done to it, who drives it round by round, when it went out. */
function LanesRow({
  day,
  row,
  lanes,
}: {
  readonly day: Draft;
  readonly row: SheetRow;
  readonly lanes: readonly Lane[];
}) {
  const rounds = roundsOn(day, row.run);
  return (
    <tr>
      <td class="start">
        {words.hours(row.startsAt)}
        <PlannedAt minutes={row.startsAt} />
      </td>
      <td>{row.run}</td>
      {lanes.map(({ carNumber, title, rows }) => (
        <td key={carNumber}>
          <p class="lane-name">{title}</p>
          {rows.slice(row.run - 1, row.run).map((own) => (
            <CarInRun key={own.run} row={own} whose={undefined} />
          ))}
          <ol class="plain">{driversOf(rounds, carNumber)}</ol>
          <ReallyAt run={row.run} carNumber={carNumber} />
          <p>☐ {said.columns.done}</p>
        </td>
      ))}
      <td>{minutesInWords(row)}</td>
    </tr>
  );
}

/** Who drives a car, each with the number of the round. */
const driversOf = (rounds: readonly Round[], carNumber: number) =>
  rounds.flatMap(({ stints }, i) =>
    stints
      .filter(({ car }) => car === carNumber)
      .map(({ driver }) => (
        <li key={i} value={i + 1}>
          {driver}
        </li>
      )),
  );

/** When a car went out by the log, or a line for the pen. */
function ReallyAt({ run, carNumber }: { readonly run: number; readonly carNumber: number }) {
  const event = filedDay();
  const at = event && runBegunAt(logNow.value, event, run, carNumber);
  return <Blank label={said.really} filled={at && timeOf(at).slice(-5)} />;
}

/** A row for each driver: in which car and round of each run, and when. */
function EachDriver({ day, rows }: Pick<OfDay, "day" | "rows">) {
  const places = rows.map((row) => outIn(day, row));
  const names = [...new Set([...day.drivers, ...places.flatMap((one) => [...one.keys()])])];
  return (
    <section class="each-driver">
      <h4>{said.each}</h4>
      <div class="table" role="region" tabIndex={0} aria-label={said.each}>
        <table class="by-driver">
          <thead>
            <tr>
              {[said.driver, ...rows.map(({ run }) => words.plan.run(run))].map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {names.map((name) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                {places.map((one, i) => (
                  <td key={i}>{one.get(name) ?? said.notOut}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

/** Where each driver is in a run, in words. */
function outIn(day: Draft, row: SheetRow): ReadonlyMap<string, string> {
  const { begun } = clock.now.value;
  return new Map(
    roundsOn(day, row.run).flatMap(({ stints }, i) => {
      const when = roundStartsAt(row, i + 1);
      const at = begun === undefined ? "" : hourOf(begun + when * 60e3);
      return stints.map(({ driver, car }) => [driver, said.outIn(car, i + 1, at)] as const);
    }),
  );
}

/** The time of day that a run is planned for, once the day has begun. */
function PlannedAt({ minutes }: { readonly minutes: number }) {
  const { begun } = clock.now.value;
  if (begun === undefined) return null;
  return <p>{said.planned(hourOf(begun + minutes * 60e3))}</p>;
}

/** Hour and minute of a time, ms since 1970, in the reader's own day. */
const hourOf = (time: number): string => timeOf(new Date(time).toISOString()).slice(-5);

function CarInRun({ row, whose }: { readonly row: SheetRow; readonly whose: string | undefined }) {
  return (
    <>
      {whose !== undefined && <p>{whose}</p>}
      <b>{words.run.kinds[row.step.kind]}</b>
      <List texts={toDoInWords(row, reader)} />
      {row.step.on === "circle" && <p>{words.plan.circleOnSheet}</p>}
      {row.step.note !== undefined && <p>{row.step.note}</p>}
      {cautions(row).map((text) => (
        <p key={text} class="beware">
          {spell(text)}
        </p>
      ))}
    </>
  );
}

/** What drivers may read: a first lap slowly after any change, so that it does not tell what to feel. */
function cautions({ toDo, warnings }: SheetRow): string[] {
  const others = warnings.filter(({ code }) => code !== "towards-the-rear");
  const first = toDo.length > 0 ? [said.firstSlowly] : [];
  return [...first, ...others.map((one) => warningInWords(one, reader))];
}

function minutesInWords({ minutes, rounds }: SheetRow): string {
  const each = stages
    .filter((stage) => minutes[stage] > 0)
    .map((stage) => {
      const times = stage === "drive" && rounds > 1 ? ` × ${rounds}` : "";
      return said.stageMinutes(words.stages[stage], `${minutes[stage]}${times}`);
    });
  return each.join(", ");
}
