import {
  comparisons,
  confidences,
  driverInputs,
  expectations,
  GREATEST_BALANCE,
  howOften,
  phaseNames,
} from "@rollbook/lib";
import type { ComponentChildren } from "preact";
import { balanceText } from "../../../say/balance.js";
import type { Draft } from "../day/draft.js";
import { roundsOn } from "../day/worked.js";
import { words } from "../words.js";
import { Blank, type OfDay, Paper, ToMark } from "./paper.js";

const { sheets: said } = words;

/** A slip to be cut out, with whose it is or lines for name and run. */
function Slip({
  title,
  whose = false,
  children,
}: {
  readonly title: string;
  /** Whether the title says whose it is. */
  readonly whose?: boolean;
  readonly children: ComponentChildren;
}) {
  return (
    <section class="slip">
      <h4>{title}</h4>
      {!whose && (
        <div class="who">
          <Blank label={said.name} />
          <Blank label={said.runBlank} />
        </div>
      )}
      {children}
    </section>
  );
}

/** Four slips on which to predict, to be cut apart. */
export function PredictionSlips({ day }: OfDay) {
  return (
    <Paper day={day} title={said.kinds.predict}>
      <div class="slips four">
        {[1, 2, 3, 4].map((slip) => (
          <PredictionSlip key={slip} />
        ))}
      </div>
    </Paper>
  );
}

function PredictionSlip() {
  return (
    <Slip title={said.predictTitle}>
      <ToMark
        label={said.predictAsk}
        choices={expectations.map((one) => words.report.expects[one])}
      />
      <ToMark label={said.predictWhere} choices={phaseNames} />
      <Blank label={said.because} kind="two" />
      <ToMark label={said.sure} choices={confidences} />
    </Slip>
  );
}

const A_PAGE = 6;

/** A slip for each driver and run, filled in with name, car and run, six to a page, to be cut apart. */
export function ReportSlips({ day, rows }: OfDay) {
  const pages = rows.flatMap(({ run }) => inPages(whoDrives(day, run)));
  return (
    <Paper day={day} title={said.kinds.report}>
      <p>{said.reportTitle}</p>
      {pages.map((whose) => (
        <div class="slips six" key={whose[0]}>
          {whose.map((who) => (
            <ReportSlip key={who} venue={day.venue} who={who} />
          ))}
        </div>
      ))}
    </Paper>
  );
}

const whoDrives = (day: Draft, run: number): string[] =>
  roundsOn(day, run).flatMap(({ stints }) =>
    stints.map(({ driver, car }) => said.slipOf(driver, car, run)),
  );

const inPages = (whose: readonly string[]): string[][] =>
  Array.from({ length: Math.ceil(whose.length / A_PAGE) }, (_, i) =>
    whose.slice(i * A_PAGE, (i + 1) * A_PAGE),
  );

function ReportSlip({ venue, who }: Pick<Draft, "venue"> & { readonly who: string }) {
  return (
    <Slip title={who} whose>
      <ToMark label={said.where} choices={[...venue.corners.map(({ name }) => name), said.other]} />
      <ToMark label={said.when} choices={phaseNames} />
      <ToMark label={said.doing} choices={driverInputs} />
      <Scale />
      <p class="legend">{words.report.balanceHelp}</p>
      <ToMark label={said.often} choices={howOften} />
      <ToMark label={said.against} choices={comparisons} />
      <ToMark label={said.sure} choices={confidences} />
      <Blank label={said.words} />
    </Slip>
  );
}

/** −3 to +3, the rear at the left. */
function Scale() {
  const marks = Array.from({ length: 2 * GREATEST_BALANCE + 1 }, (_, i) =>
    balanceText(i - GREATEST_BALANCE),
  );
  return (
    <p class="to-mark paper-scale">
      <b>{said.what}</b>
      <i>{said.rear}</i>
      {marks.map((mark) => (
        <span key={mark}>{mark}</span>
      ))}
      <i>{said.front}</i>
      <span>{said.cannotTell}</span>
    </p>
  );
}
