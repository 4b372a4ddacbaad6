import { roundStartsAt, type SheetRow, stages } from "@rollbook/lib";
import { reader, spell } from "@rollbook/page";
import { toDoInWords, warningInWords } from "../../../say/plan.js";
import { List } from "../../../ui/list.js";
import { carTitle } from "../day/car-names.js";
import type { Draft } from "../day/draft.js";
import { roundsOn } from "../day/worked.js";
import { timeOf } from "../log/time.js";
import { roundInWords } from "../plan/rotation-table.js";
import { clock } from "../run/state.js";
import { words } from "../words.js";
import { Blank, type CarRun, carsIn, type OfDay, Paper } from "./paper.js";

const { sheets: said } = words;

/** The whole day on a page: when, what, how long, who. */
export function RunSheet({ day, rows, sheets }: OfDay) {
  const { car, venue, minutes, cars, drivers } = day;
  const last = rows.at(-1);
  return (
    <Paper day={day} title={`${said.runSheet}: ${day.name}`}>
      <p>{said.facts(car.name, venue.name, words.hours(minutes), cars, drivers.length)}</p>
      <div class="head-lines">
        <Blank label={said.date} />
        <Blank label={said.begunAt} />
        <Blank label={said.conditions} />
      </div>
      <table class="run-sheet">
        <thead>
          <tr>
            {Object.values(said.columns).map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <RunRow key={row.run} day={day} row={row} cars={carsIn(sheets, row.run)} />
          ))}
        </tbody>
      </table>
      <p>{last && said.over(words.hours(last.startsAt + last.lasts))}</p>
      {drivers.length > 1 && <EachDriver day={day} rows={rows} />}
    </Paper>
  );
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
        <Blank label={said.really} />
      </td>
      <td>{row.run}</td>
      <td>
        {cars.map((one) => (
          <CarInRun key={one.car} one={one} whose={carTitle(day, one.car)} />
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

function CarInRun({
  one: { row },
  whose,
}: {
  readonly one: CarRun;
  readonly whose: string | undefined;
}) {
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
