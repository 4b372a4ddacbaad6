import {
  type FeltCell,
  type MeasuredChange,
  measuredOfDay,
  type TakeHomeRun,
  takeHomesOf,
} from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { useMemo } from "preact/hooks";
import { balanceText } from "../../../say/balance.js";
import { changeLabel } from "../../../say/change.js";
import { signed } from "../../../say/figures.js";
import { measuredInWords } from "../../../say/workshop/measured.js";
import { takeHome as said } from "../../../say/workshop/take-home.js";
import { logNow } from "../../../store/log.js";
import { List } from "../../../ui/list.js";
import { PlaceTable } from "../../../ui/place-table.js";
import { shiftText } from "../../../ui/shift-bars.js";
import { carTitle } from "../day/car-names.js";
import { filedDay } from "../day/reporter.js";
import { type OfDay, Paper } from "./paper.js";

/** A page for each driver: what was expected, felt and predicted, and what it showed. */
export function TakeHomePages({ day }: OfDay) {
  const [log, event] = [logNow.value, filedDay()];
  const all = useMemo(() => (event === undefined ? [] : takeHomesOf(log, event)), [log, event]);
  const found = useMemo(() => (event === undefined ? [] : measuredOfDay(log, event)), [log, event]);
  if (all.length === 0)
    return (
      <Paper day={day} title={day.name}>
        <p>{said.none}</p>
      </Paper>
    );
  return all.map(({ driver, runs }) => (
    <Paper key={driver} day={day} title={said.title(driver, day.name)}>
      {runs.map((one) => (
        <OneRun
          key={one.run}
          one={one}
          whose={carTitle(day, one.car) ?? ""}
          found={found.find(({ run, car }) => run === one.run && car === one.car)}
        />
      ))}
      <p class="quiet">{said.last}</p>
    </Paper>
  ));
}

function OneRun({
  one,
  whose,
  found,
}: {
  readonly one: TakeHomeRun;
  readonly whose: string;
  /** What was measured of it, where something was. */
  readonly found: MeasuredChange | undefined;
}) {
  const { run, tested, predictions, model, showed } = one;
  const changes = tested?.changes.map((change) => changeLabel(change, tested.before, reader)) ?? [];
  return (
    <section class="take-home">
      <h4>{said.run(run, whose)}</h4>
      {changes.length > 0 && <p>{said.changed(changes.join("; "))}</p>}
      {tested !== undefined && changes.length === 0 && run > 1 && <p>{said.nothing}</p>}
      {predictions.map(({ id, expects, reason, confidence = "" }) => (
        <p key={id}>{said.expected(expects, reason, confidence)}</p>
      ))}
      {predictions.length === 0 && run > 1 && <p class="quiet">{said.expectedNothing}</p>}
      <Places one={one} />
      {model && <p>{said.model(model)}</p>}
      {found && (
        <>
          <p>{said.measured}</p>
          <List texts={measuredInWords(found, reader)} />
        </>
      )}
      <p>
        <b>{said.showedTitle}.</b> {said.showed[showed]}
      </p>
    </section>
  );
}

function Places({ one: { reports, cells } }: { readonly one: TakeHomeRun }) {
  if (reports.length === 0) return null;
  const { corner, phase, said: told, felt, model } = said.columns;
  const rows = reports.map(({ corner = "", phase = "", balance, words = "" }) => {
    const cell = cells.find((one) => one.corner === corner && one.phase === phase);
    const points = balance === undefined ? "" : balanceText(balance);
    const own = [points, words].filter((text) => text !== "").join(" ");
    return { corner, phase, cells: [own, feltText(cell), cell ? shiftText(cell.predicted) : ""] };
  });
  return <PlaceTable label={said.table} columns={[corner, phase, told, felt, model]} rows={rows} />;
}

const feltText = (cell: FeltCell | undefined): string =>
  cell?.felt === undefined ? "" : signed(cell.felt, 0);
