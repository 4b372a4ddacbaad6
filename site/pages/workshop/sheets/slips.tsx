import {
  comparisons,
  confidences,
  driverInputs,
  expectations,
  GREATEST_BALANCE,
  grades,
  howOften,
  phaseNames,
  speedClasses,
} from "@rollbook/lib";
import type { ComponentChildren } from "preact";
import { balanceText } from "../../../say/balance.js";
import type { Draft } from "../day/draft.js";
import { words } from "../words.js";
import { Blank, type OfDay, Paper, ToMark } from "./paper.js";

const { sheets: said } = words;

/** A slip to be cut out, with a name and a run. */
function Slip({
  title,
  children,
}: {
  readonly title: string;
  readonly children: ComponentChildren;
}) {
  return (
    <section class="slip">
      <h4>{title}</h4>
      <div class="who">
        <Blank label={said.name} />
        <Blank label={said.runBlank} />
      </div>
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

/** Two slips on which to report, to be cut apart. */
export function ReportSlips({ day }: OfDay) {
  return (
    <Paper day={day} title={said.kinds.report}>
      <div class="slips two">
        {[1, 2].map((slip) => (
          <ReportSlip key={slip} venue={day.venue} />
        ))}
      </div>
    </Paper>
  );
}

function ReportSlip({ venue }: Pick<Draft, "venue">) {
  return (
    <Slip title={said.reportTitle}>
      <ToMark label={said.where} choices={venue.corners.map(({ name }) => name)} />
      <div class="who">
        <Blank label={said.other} />
        <ToMark label={said.otherIs} choices={[...speedClasses, ...grades]} />
      </div>
      <ToMark label={said.when} choices={phaseNames} />
      <ToMark label={said.doing} choices={driverInputs} />
      <Scale />
      <ToMark label={said.often} choices={howOften} />
      <ToMark label={said.against} choices={comparisons} />
      <ToMark label={said.sure} choices={confidences} />
      <Blank label={said.words} kind="two" />
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
    </p>
  );
}
