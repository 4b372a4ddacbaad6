import { type Signal, useSignal } from "@preact/signals";
import {
  confidences,
  driverInputs,
  driverReports,
  type Practice,
  phaseNames,
  type Report,
  whatIsMissing,
} from "@rollbook/lib";
import { balanceText } from "../../../say/balance.js";
import { words } from "../../../say/practice/words.js";
import { questionFor } from "../../../say/report.js";
import { report as said } from "../../../say/workshop/report.js";
import { BalanceScale } from "../../../ui/balance-scale.js";
import { Button } from "../../../ui/button.js";
import { Chips, plainChips } from "../../../ui/chips.js";
import { List } from "../../../ui/list.js";
import type { Round } from "../state.js";
import { Part } from "./part.js";

/** The report of the changed car, asked in the terms of the workshop. */
export function ReportPart({
  round,
  file,
}: {
  readonly round: Round;
  readonly file: (report: Report) => void;
}) {
  const { practice, puzzle } = round;
  const report = useSignal<Report>({ corner: practice.corner.name });
  const open = useSignal<readonly string[]>([]);
  const send = () => {
    const missing = whatIsMissing(report.value).filter(({ needed }) => needed);
    open.value = missing.map(({ field }) => questionFor(field));
    if (missing.length === 0) file(report.value);
  };
  return (
    <Part id="report" heading={words.report} done={round.report !== undefined} lead={false}>
      <p>{words.reportIntro(practice.corner.name)}</p>
      {puzzle.level !== 2 && <DriverSays practice={practice} />}
      <Answers report={report} />
      <div class="fault" role="alert">
        {open.value.length > 0 && (
          <>
            {words.stillAsked}
            <List texts={open.value} />
          </>
        )}
      </div>
      <Button id="file-report" large work={send}>
        {words.fileReport}
      </Button>
    </Part>
  );
}

/** Where in the corner, doing what, which end, and how sure. */
function Answers({ report }: { readonly report: Signal<Report> }) {
  const { phase, input, balance, confidence } = report.value;
  const set = (answer: Partial<Report>) => {
    report.value = { ...report.value, ...answer };
  };
  return (
    <>
      <Chips
        id="ask-phase"
        question={said.phase}
        choices={plainChips(phaseNames)}
        chosen={phase}
        choose={(value) => set({ phase: value })}
      />
      <Chips
        id="ask-input"
        question={said.input}
        choices={plainChips(driverInputs)}
        chosen={input}
        choose={(value) => set({ input: value })}
      />
      <BalanceScale balance={balance} choose={(value) => set({ balance: value })} />
      <Chips
        id="ask-sure"
        question={said.confidence}
        choices={plainChips(confidences)}
        chosen={confidence}
        choose={(value) => set({ confidence: value })}
      />
    </>
  );
}

/** What the driver felt, in points, part by part. */
function DriverSays({ practice }: { readonly practice: Practice }) {
  const rows = driverReports(practice).map(({ phase, balance }) =>
    words.driverRow(phase ?? "middle", balanceText(balance ?? 0)),
  );
  return (
    <>
      <p>{words.driverSays}</p>
      <List texts={rows} />
    </>
  );
}
